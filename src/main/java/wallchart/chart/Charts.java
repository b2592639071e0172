package wallchart.chart;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import wallchart.equipment.Rooms;
import wallchart.store.Actor;
import wallchart.store.ConstraintViolated;
import wallchart.store.Database;
import wallchart.store.StoreException;
import wallchart.store.Tx;

/**
 * The charts of the department: publishes versions and finds them again.
 *
 * <p>Safe for many threads. Which version is in force is answered from memory; a version's rows are read once and then kept, since
 * a version never changes. {@link #refresh} picks up what another node published.
 */
public final class Charts {

    /** About this many rows of versions stay in memory. */
    private static final int MOST_ROWS_KEPT = 200_000;

    private final Database database;
    private final Publishing publishing;
    private final Cache<Numbered, ChartVersion> versions = Caffeine.newBuilder()
            .maximumWeight(MOST_ROWS_KEPT)
            .weigher((Numbered key, ChartVersion version) ->
                    1 + version.content().rows().size())
            .build();
    private volatile Map<String, List<VersionHead>> heads = Map.of();

    private record Numbered(String room, int number) {}

    /** The charts of these rooms under these rules; what is published is checked against both. */
    public Charts(Database database, Rooms rooms, ChartRules rules) {
        this.database = database;
        this.publishing = new Publishing(rooms, rules);
        refresh();
    }

    /** Reads the heads of all versions anew. One at a time: an older reading must not replace a newer one. */
    public synchronized void refresh() {
        var read = new HashMap<String, List<VersionHead>>();
        database.<List<VersionHead>>read(publishing::heads)
                .forEach(head -> read.computeIfAbsent(head.room(), room -> new ArrayList<>())
                        .add(head));
        read.replaceAll((room, list) -> List.copyOf(list));
        heads = Collections.unmodifiableMap(read);
    }

    /** Publishes the next version of a room's chart, signed by {@code by}. */
    public Publication publish(Actor by, Draft draft) {
        return publish(by, draft, (tx, version) -> {});
    }

    /**
     * As {@link #publish(Actor, Draft)}; what is to be written in the same transaction, such as the audit event, is written by
     * {@code alongside}, which is called only when a version was written. If it throws, nothing is published.
     */
    public Publication publish(Actor by, Draft draft, BiConsumer<Tx, ChartVersion> alongside) {
        try {
            var publication = database.<Publication>write(by, tx -> {
                var made = publishing.publish(tx, draft);
                if (made instanceof Publication.Published published) {
                    alongside.accept(tx, published.version());
                }
                return made;
            });
            if (publication instanceof Publication.Published) {
                refresh();
            }
            return publication;
        } catch (StoreException lost) {
            return outdated(draft, lost);
        }
    }

    /** A rival took the number while this one was being written; anything else is no answer but a fault. */
    private Publication outdated(Draft draft, StoreException lost) {
        boolean numberTaken = lost instanceof ConstraintViolated refused
                && refused.constraint().equals(VersionStore.NUMBER_TAKEN);
        if (!numberTaken && lost.kind() != StoreException.Kind.CONFLICT) {
            throw lost;
        }
        int current = database.read(tx -> publishing.newest(tx, draft.room()));
        if (current == draft.baseVersion()) {
            throw lost;
        }
        refresh();
        return new Publication.Outdated(current);
    }

    /** Heads of the room's versions, newest first; none for a room without a chart. */
    public List<VersionHead> versions(String room) {
        var newestFirst = new ArrayList<>(heads.getOrDefault(room, List.of()));
        Collections.reverse(newestFirst);
        return List.copyOf(newestFirst);
    }

    /** A version by its number. */
    public Optional<ChartVersion> version(String room, int number) {
        var key = new Numbered(room, number);
        var kept = versions.getIfPresent(key);
        if (kept != null) {
            return Optional.of(kept);
        }
        var read = database.<Optional<ChartVersion>>read(tx -> publishing.version(tx, room, number));
        read.ifPresent(version -> versions.put(key, version));
        return read;
    }

    /** The version that answers at an instant; empty before the first comes into force. */
    public Optional<ChartVersion> inForce(String room, Instant at) {
        var ofRoom = heads.getOrDefault(room, List.of());
        for (int i = ofRoom.size() - 1; i >= 0; i--) {
            if (!ofRoom.get(i).inForceFrom().isAfter(at)) {
                return version(room, ofRoom.get(i).number());
            }
        }
        return Optional.empty();
    }

    /** What differs between two versions of a room; empty where one of them does not exist. */
    public Optional<Comparison> compare(String room, int from, int to) {
        return version(room, from)
                .flatMap(earlier -> version(room, to).map(later -> Comparison.of(earlier.content(), later.content())));
    }
}
