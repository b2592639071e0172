package wallchart.chart;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.BiConsumer;
import wallchart.audit.RecordCheck;
import wallchart.equipment.Room;
import wallchart.equipment.Rooms;
import wallchart.store.Actor;
import wallchart.store.ConstraintViolated;
import wallchart.store.Database;
import wallchart.store.ReadTx;
import wallchart.store.StoreException;
import wallchart.store.Tx;

/**
 * The charts of the department: publishes versions and finds them again.
 *
 * <p>Safe for many threads. Which version is in force is answered from memory; a version's rows are read once and then kept, since
 * a version never changes. {@link #refresh} picks up what another node published.
 */
public final class Charts {

    /** About this many rows of past versions stay in memory; what answers now or later always does. */
    private static final int MOST_PAST_ROWS_KEPT = 100_000;

    /** The unique constraint that lets one of two rival signatures win. */
    public static final String NUMBER_TAKEN = VersionStore.NUMBER_TAKEN;

    /** The action of the event of every version. */
    public static final String SIGNED = VersionEvent.ACTION;

    private final Database database;
    private final Publishing publishing;
    private final Cache<VersionNumber, ChartVersion> past;
    private final ConcurrentMap<String, RoomHistory> histories;

    /** The charts of these rooms under these rules; what is published is checked against both. */
    public Charts(Database database, Rooms rooms, ChartRules rules) {
        this(database, new Publishing(rooms, rules), keepingPast(), new ConcurrentHashMap<>());
        refresh();
    }

    private Charts(
            Database database,
            Publishing publishing,
            Cache<VersionNumber, ChartVersion> past,
            ConcurrentMap<String, RoomHistory> histories) {
        this.database = database;
        this.publishing = publishing;
        this.past = past;
        this.histories = histories;
    }

    /** How the ledger's check holds versions against their events. */
    public static RecordCheck records() {
        return new VersionRecords();
    }

    private static Cache<VersionNumber, ChartVersion> keepingPast() {
        return Caffeine.newBuilder()
                .maximumWeight(MOST_PAST_ROWS_KEPT)
                .weigher((VersionNumber key, ChartVersion version) ->
                        1 + version.content().rows().size())
                .build();
    }

    /** The same charts, publishing at the instants of another clock: for a history that is told afterwards. */
    public Charts at(Clock other) {
        return new Charts(database.at(other), publishing, past, histories);
    }

    /** Reads the heads of all versions, and what answers now or later, anew. */
    public void refresh() {
        database.<List<String>>read(publishing::rooms).forEach(this::refresh);
    }

    /** Reads one room's heads anew, and what answers there now or later. */
    public void refresh(String room) {
        refresh(room, Optional.empty());
    }

    /**
     * Reads one room's heads, and what answers there now or later. One at a time: an older reading must not replace a newer one.
     *
     * @param written a version that need not be read, because this process has just written it
     */
    private synchronized void refresh(String room, Optional<ChartVersion> written) {
        var known = histories.getOrDefault(room, RoomHistory.NONE);
        histories.put(
                room.intern(),
                database.<RoomHistory>read(tx -> RoomHistory.of(
                        publishing.heads(tx, room), database.clock().instant(), head -> known.findAnswering(
                                        head.number())
                                .or(() ->
                                        written.filter(version -> version.head().equals(head)))
                                .orElseGet(() -> publishing.version(tx, head)))));
    }

    /** Reads a room's heads anew after {@link #publish(Tx, Draft, Map)} was kept; the version it wrote is not read again. */
    public void refresh(ChartVersion written) {
        refresh(written.head().room(), Optional.of(written));
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
                var made = publishing.publish(tx, draft, Map.of());
                if (made instanceof Publication.Published published) {
                    alongside.accept(tx, published.version());
                }
                return made;
            });
            if (publication instanceof Publication.Published published) {
                refresh(draft.room(), Optional.of(published.version()));
            }
            return publication;
        } catch (StoreException lost) {
            return outdated(draft, lost);
        }
    }

    /**
     * Publishes inside a business act that does more, such as signing a change. Where that act is kept, call {@link
     * #refresh(ChartVersion)} after it; a rival's victory is thrown as {@link ConstraintViolated} of {@link #NUMBER_TAKEN}.
     *
     * @param evidence what led to the signature, for the event's details
     */
    public Publication publish(Tx tx, Draft draft, Map<String, ?> evidence) {
        return publishing.publish(tx, draft, evidence);
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
        refresh(draft.room());
        return new Publication.Outdated(current);
    }

    /** Heads of the room's versions, newest first; none for a room without a chart. */
    public List<VersionHead> versions(String room) {
        return history(room).newestFirst();
    }

    /** A version by its number. */
    public Optional<ChartVersion> version(String room, int number) {
        var history = history(room);
        return history.findAnswering(number).or(() -> history.find(number)
                .map(head -> past.get(new VersionNumber(room, number), key -> read(head))));
    }

    /** A version by its number, inside a transaction that does more. */
    public Optional<ChartVersion> version(ReadTx tx, String room, int number) {
        var kept = history(room)
                .findAnswering(number)
                .or(() -> Optional.ofNullable(past.getIfPresent(new VersionNumber(room, number))));
        return kept.isPresent() ? kept : publishing.find(tx, room, number).map(head -> publishing.version(tx, head));
    }

    /** Number of the newest version there is, in force or not yet, as the transaction sees it; 0 of a room without a chart. */
    public int newest(ReadTx tx, String room) {
        return publishing.newest(tx, room);
    }

    /**
     * The name that is printed beside a signature of theirs; empty for whoever has no account, or by now another role or a disabled one.
     * Their account stays as it is until the commit.
     */
    public Optional<String> findPrintedName(Tx tx, Actor actor) {
        return publishing.findPrintedName(tx, actor);
    }

    private ChartVersion read(VersionHead head) {
        return database.<ChartVersion>read(tx -> publishing.version(tx, head));
    }

    /** The version that answers at an instant; empty before the first comes into force. */
    public Optional<ChartVersion> inForce(String room, Instant at) {
        var history = history(room);
        return history.findAnswering(at)
                .or(() -> history.findInForce(at).flatMap(head -> version(room, head.number())));
    }

    private RoomHistory history(String room) {
        return histories.getOrDefault(room, RoomHistory.NONE);
    }

    /** What the checks that publishing makes say of a version now, in the room as it is equipped and under the rules of today. */
    public List<Finding> check(ChartVersion version, Room room) {
        return publishing.check(version.content(), room);
    }

    /** What differs between two versions of a room; empty where one of them does not exist. */
    public Optional<Comparison> compare(String room, int from, int to) {
        return version(room, from)
                .flatMap(earlier -> version(room, to).map(later -> Comparison.of(earlier.content(), later.content())));
    }
}
