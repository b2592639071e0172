package wallchart.equipment;

import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.audit.Event;
import wallchart.audit.Ledger;
import wallchart.audit.RecordCheck;
import wallchart.store.Actor;
import wallchart.store.CanonicalJson;
import wallchart.store.ConstraintViolated;
import wallchart.store.Database;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/**
 * The rooms of the department and every state their equipment has been in.
 *
 * <p>Safe for many threads. Everything but installing is answered from memory: revisions never change, so they are read once;
 * {@link #refresh} picks up what another node installed.
 */
public final class Rooms {

    private static final int MOST_CHARACTERS = 1_000_000;

    private final Database database;
    private final Ledger ledger = new Ledger();
    private final EquipmentStore store = new EquipmentStore();
    private final ConcurrentMap<String, List<RoomRevision>> revisions;

    public Rooms(Database database) {
        this(database, new ConcurrentHashMap<>());
        refresh();
    }

    private Rooms(Database database, ConcurrentMap<String, List<RoomRevision>> revisions) {
        this.database = database;
        this.revisions = revisions;
    }

    /** How the ledger's check holds equipment against its events. */
    public static RecordCheck records() {
        return new RevisionRecords();
    }

    /** The same rooms, installing at the instants of another clock: for a history that is told afterwards. */
    public Rooms at(Clock other) {
        return new Rooms(database.at(other), revisions);
    }

    /** Reads all revisions anew. */
    public void refresh() {
        database.<List<String>>read(store::rooms).forEach(this::refresh);
    }

    /** Reads one room's revisions anew. One at a time: an older reading must not replace a newer one. */
    private synchronized void refresh(String room) {
        revisions.put(room.intern(), database.<List<RoomRevision>>read(tx -> store.list(tx, room)));
    }

    /** Reads what came after the revisions that are known: a revision never changes. As {@link #refresh(String)}, one at a time. */
    private synchronized void readOn(String room) {
        var known = revisions(room);
        int newest = known.isEmpty() ? 0 : known.get(known.size() - 1).number();
        var added = database.<List<RoomRevision>>read(tx -> store.listAfter(tx, room, newest));
        if (!added.isEmpty()) {
            revisions.put(
                    room.intern(), Stream.concat(known.stream(), added.stream()).toList());
        }
    }

    /** Puts equipment in force from now on, as a new revision; a document equal to the one in force changes nothing. */
    public Installation install(Actor by, EquipmentDocument document) {
        return install(by, document, "");
    }

    /** As {@link #install(Actor, EquipmentDocument)}, saying why, or where the document comes from. */
    public Installation install(Actor by, EquipmentDocument document, String reason) {
        return install(by, document, reason, (tx, revision) -> {});
    }

    /**
     * As {@link #install(Actor, EquipmentDocument, String)}; what is to be written in the same transaction is written by {@code
     * alongside}, which is called only for a new revision.
     */
    Installation install(Actor by, EquipmentDocument document, String reason, BiConsumer<Tx, RoomRevision> alongside) {
        if (EquipmentReader.read(document) instanceof EquipmentReading.Refused refused) {
            return new Installation.Refused(refused.problems());
        }
        var canonical = EquipmentEncoding.canonical(document);
        if (canonical.text().length() > MOST_CHARACTERS) {
            return new Installation.Refused(List.of(new EquipmentReading.Problem(
                    "",
                    "has " + canonical.text().length() + " characters, at most " + MOST_CHARACTERS
                            + " are kept: shorten it")));
        }
        var room = document.room();
        var installed = retried(() -> database.<RoomRevision>write(by, tx -> {
            var newest = store.findNewest(tx, room);
            return newest.filter(revision -> revision.digest().equals(canonical.digest()))
                    .orElseGet(() -> {
                        var added = add(tx, room, newest, canonical);
                        alongside.accept(tx, added);
                        ledger.append(tx, RevisionEvent.of(room, added, reason, Map.of()));
                        return added;
                    });
        }));
        readOn(room);
        return new Installation.Installed(installed);
    }

    /**
     * Puts equipment in force in place of a revision that somebody saw, if that one is still the newest: of two who saw the same,
     * one wins.
     *
     * @param document a possible room; names the room
     * @param known what the event says beside reason and revision
     * @return the new revision; empty where another one came first, which can then be asked for
     */
    public Optional<RoomRevision> replace(
            Actor by, int seen, EquipmentDocument document, String reason, Map<String, ?> known) {
        var room = document.room();
        var replaced = retried(() -> database.<Optional<RoomRevision>>write(by, tx -> {
            var newest = store.findNewest(tx, room).filter(revision -> revision.number() == seen);
            return newest.map(before -> {
                var added = add(tx, room, newest, EquipmentEncoding.canonical(document));
                ledger.append(tx, RevisionEvent.of(room, added, reason, known));
                return added;
            });
        }));
        readOn(room);
        return replaced;
    }

    /** Where somebody took the number meanwhile, there is another newest revision to look at. */
    private static <T> T retried(Supplier<T> write) {
        try {
            return write.get();
        } catch (ConstraintViolated rival) {
            return write.get();
        }
    }

    private RoomRevision add(Tx tx, String room, Optional<RoomRevision> newest, CanonicalJson canonical) {
        store.add(tx, room, newest.map(RoomRevision::number).orElse(0) + 1, canonical);
        return store.findNewest(tx, room).orElseThrow();
    }

    /** The document of a revision as it was written, every number as it was given. */
    public Optional<EquipmentDocument> findDocument(String room, int revision) {
        return database.read(tx -> store.findDocument(tx, room, revision));
    }

    /** The room's revisions with what their events say, oldest first. */
    public List<RevisionHistory> history(String room) {
        var known = revisions(room);
        var events = database.<List<Event>>read(tx -> ledger.list(tx, room, RevisionEvent.ACTION)).stream()
                .collect(Collectors.toMap(Event::objectNumber, Function.identity(), (first, again) -> first));
        return known.stream()
                .map(revision -> new RevisionHistory(revision, Optional.ofNullable(events.get(revision.number()))))
                .toList();
    }

    /** All rooms as they are now, by ascending id. */
    public List<Room> list() {
        return revisions.values().stream()
                .map(Rooms::newest)
                .map(RoomRevision::room)
                .sorted(Comparator.comparing(Room::id))
                .toList();
    }

    /** The room as it is now. */
    public Optional<Room> find(String id) {
        return findRevision(id).map(RoomRevision::room);
    }

    /** The state of the room's equipment now. */
    public Optional<RoomRevision> findRevision(String id) {
        return Optional.ofNullable(revisions.get(id)).map(Rooms::newest);
    }

    /** The room as it was at an instant; empty before its first equipment. */
    public Optional<Room> inForce(String id, Instant at) {
        return revisionInForce(id, at).map(RoomRevision::room);
    }

    /** The state of the room's equipment at an instant; empty before the first. */
    public Optional<RoomRevision> revisionInForce(String id, Instant at) {
        var ofRoom = revisions(id);
        for (int i = ofRoom.size() - 1; i >= 0; i--) {
            if (!ofRoom.get(i).inForceFrom().isAfter(at)) {
                return Optional.of(ofRoom.get(i));
            }
        }
        return Optional.empty();
    }

    /** As {@link #inForce(String, Instant)}, as the given transaction sees it. */
    public Optional<Room> inForce(ReadTx tx, String id, Instant at) {
        return revisionInForce(tx, id, at).map(RoomRevision::room);
    }

    /** As {@link #revisionInForce(String, Instant)}, as the given transaction sees it. */
    public Optional<RoomRevision> revisionInForce(ReadTx tx, String id, Instant at) {
        return store.findInForce(tx, id, at);
    }

    /** Every state of the room's equipment, oldest first; none for an unknown room. */
    public List<RoomRevision> revisions(String id) {
        return revisions.getOrDefault(id, List.of());
    }

    private static RoomRevision newest(List<RoomRevision> ofOneRoom) {
        return ofOneRoom.get(ofOneRoom.size() - 1);
    }
}
