package wallchart.chart;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import wallchart.audit.Event;
import wallchart.audit.RecordWalk;
import wallchart.store.ReadTx;

/**
 * One walk along the signatures: each version's head is held against its event, its rows against the digest that was signed, and
 * what it wrote, column by column, against the digest that its event has of that.
 *
 * <p>The tables are read once for the department, and once for each room; what is kept is a few digests for each version.
 */
final class VersionWalk implements RecordWalk {

    private final VersionStore versions = new VersionStore();
    private final ContentStore contents = new ContentStore(new RowStore(new SharedRows()), new AdjustmentStore());
    private final RecordsDigestStore recordsDigests = new RecordsDigestStore();
    private final ReadTx tx;
    private final Map<String, StoredRoom> rooms = new HashMap<>();
    private final Set<String> seen = new HashSet<>();

    /** Rooms in which an event has the digest of what its version wrote: every later one has it too. */
    private final Set<String> digested = new HashSet<>();

    private Optional<Map<VersionNumber, String>> written = Optional.empty();

    /** What is stored of a room's versions, by their number. */
    private record StoredRoom(Map<Integer, VersionHead> heads, Map<Integer, String> contentDigests) {}

    VersionWalk(ReadTx tx) {
        this.tx = tx;
    }

    @Override
    public Optional<String> difference(Event event) {
        var room = event.room().orElse("");
        var version = new VersionNumber(room, event.objectNumber());
        if (!seen.add(event.object())) {
            return Optional.of(event.object() + " has a second " + VersionEvent.ACTION);
        }
        var stored = rooms.computeIfAbsent(room, this::read);
        return Optional.ofNullable(stored.heads().get(version.number()))
                .filter(head -> version.object().equals(event.object()))
                .map(head -> head(head, event)
                        .or(() -> content(head, stored.contentDigests().get(version.number())))
                        .or(() -> records(version, event)))
                .orElseGet(() -> Optional.of(event.object() + " is not stored"));
    }

    private StoredRoom read(String room) {
        var heads = versions.list(tx, room).stream()
                .collect(Collectors.toMap(VersionHead::number, head -> head)); // a number that stands twice is refused
        return new StoredRoom(heads, contents.digests(tx, room, heads.keySet()));
    }

    private static Optional<String> head(VersionHead head, Event event) {
        boolean same =
                head.reason().equals(event.reason()) && head.signature().at().equals(event.at());
        return same
                ? event.findDifference(VersionEvent.details(head))
                : Optional.of(event.object() + " has another reason or instant");
    }

    private static Optional<String> content(VersionHead head, String contentDigest) {
        return head.digest().equals(contentDigest)
                ? Optional.empty()
                : Optional.of(VersionEvent.object(head) + " has rows that do not match its digest");
    }

    private Optional<String> records(VersionNumber version, Event event) {
        var said = event.detail(VersionEvent.RECORDS_DIGEST);
        if (said.isEmpty()) {
            return digested.contains(version.room())
                    ? Optional.of(version.object() + " has no " + VersionEvent.RECORDS_DIGEST
                            + ", though an earlier version of the room has one")
                    : Optional.empty();
        }
        digested.add(version.room());
        return said.get().equals(written().getOrDefault(version, RecordsDigestStore.OF_NOTHING))
                ? Optional.empty()
                : Optional.of(version.object() + " did not write the rows that are stored as its own: a column of them,"
                        + " such as an id or an order number, is another");
    }

    private Map<VersionNumber, String> written() {
        if (written.isEmpty()) {
            written = Optional.of(recordsDigests.all(tx));
        }
        return written.get();
    }

    @Override
    public Optional<String> unrecorded() {
        var stored = new TreeSet<String>();
        written().keySet().forEach(version -> stored.add(version.object()));
        versions.numbers(tx).forEach(version -> stored.add(version.object()));
        stored.removeAll(seen);
        return stored.stream()
                .findFirst()
                .map(object -> object + " is stored, but the ledger has no event of its signature");
    }
}
