package wallchart.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.store.Database;
import wallchart.store.DatabaseSettings;
import wallchart.store.Mode;

/**
 * Ledgers of any length in an H2 file: well-formed events of a large department, one every 13 seconds since 2020, chained and
 * hashed as the ledger does it. What is frequent and what is rare among them is meant to be filtered by.
 */
final class ManyEvents {

    static final Instant FIRST = Instant.parse("2020-01-01T00:00:00Z");
    static final int SECONDS_APART = 13;

    /** A fifth of all events concerns this room, a third is done by this person, two in five are this act. */
    static final String BUSY_ROOM = "busy";

    static final String BUSY_ACTOR = "lead";
    static final String FREQUENT_ACTION = "version-signed";

    /** One event in this many concerns the rare room, is done by the rare person, is the rare act. */
    static final int RARE_EVERY = 997;

    static final String RARE_ROOM = "attic";
    static final String RARE_ACTOR = "visitor";
    static final String RARE_ACTION = "audit-reviewed";

    private static final String OWNER = "bench";

    private Event last;

    private ManyEvents() {}

    /** Opens a ledger of that many events under {@code target/bench}; fills it at the first time. */
    static Database open(int events) throws IOException, SQLException {
        var folder = Files.createDirectories(Path.of("target", "bench"));
        var name = "ledger-" + events;
        if (!Files.exists(folder.resolve(name + ".mv.db"))) {
            var unfinished = folder.resolve(name + "-unfinished");
            Files.deleteIfExists(Path.of(unfinished + ".mv.db"));
            openFile(unfinished).close();
            new ManyEvents().fill(unfinished, events);
            Files.move(Path.of(unfinished + ".mv.db"), folder.resolve(name + ".mv.db"));
        }
        return openFile(folder.resolve(name));
    }

    private static Database openFile(Path file) {
        return Database.open(new DatabaseSettings(url(file), OWNER, OWNER, 4), Mode.SITE, Clock.systemUTC());
    }

    private static String url(Path file) {
        return "jdbc:h2:file:" + file.toAbsolutePath();
    }

    /** As the owner, without the unique indexes of the hashes meanwhile: their scattered pages would be written again and again. */
    private void fill(Path file, int events) throws SQLException {
        try (var owner = DriverManager.getConnection(url(file) + ";RETENTION_TIME=0", OWNER, OWNER);
                var statement = owner.createStatement()) {
            statement.execute("ALTER TABLE audit_event DROP CONSTRAINT audit_event_hash_unique");
            statement.execute("ALTER TABLE audit_event DROP CONSTRAINT audit_event_prev_unique");
            insert(owner, events);
            statement.execute("ALTER TABLE audit_event ADD CONSTRAINT audit_event_hash_unique UNIQUE (hash)");
            statement.execute("ALTER TABLE audit_event ADD CONSTRAINT audit_event_prev_unique UNIQUE (prev)");
            statement.execute("SHUTDOWN COMPACT");
        }
    }

    private void insert(Connection owner, int events) throws SQLException {
        try (var insert = owner.prepareStatement("INSERT INTO audit_event (seq, at, actor, role, action, object, room,"
                + " reason, details, request_id, prev, hash) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")) {
            for (int i = 0; i < events; i++) {
                last = event(i);
                bind(insert, last);
                insert.executeUpdate();
            }
        }
    }

    private static void bind(PreparedStatement insert, Event event) throws SQLException {
        insert.setLong(1, event.seq());
        insert.setObject(2, event.at().atOffset(ZoneOffset.UTC));
        int column = 3;
        for (var text : List.of(
                event.actor(),
                event.role(),
                event.action(),
                event.object(),
                event.room().orElseThrow(),
                event.reason(),
                event.details(),
                event.requestId().orElseThrow(),
                event.prev(),
                event.hash())) {
            insert.setString(column++, text);
        }
    }

    private Event event(int index) {
        var unhashed = new Event(
                index + 1L,
                FIRST.plusSeconds((long) index * SECONDS_APART),
                actor(index),
                "lead",
                action(index),
                room(index) + "/version/" + (1 + index / 100),
                Optional.of(room(index)),
                "Rows of the knee measured again after service " + index,
                LedgerEncoding.details(details(index)),
                Optional.of("request-" + index),
                last == null ? Event.NONE_BEFORE : last.hash(),
                "");
        return unhashed.withHash(LedgerEncoding.hash(unhashed));
    }

    private static String room(int index) {
        if (index % RARE_EVERY == 1) {
            return RARE_ROOM;
        }
        return index % 5 == 0 ? BUSY_ROOM : "room-" + index % 199;
    }

    private static String actor(int index) {
        if (index % RARE_EVERY == 2) {
            return RARE_ACTOR;
        }
        return index % 3 == 0 ? BUSY_ACTOR : "person-" + index % 41;
    }

    private static String action(int index) {
        if (index % RARE_EVERY == 3) {
            return RARE_ACTION;
        }
        return index % 5 < 2
                ? FREQUENT_ACTION
                : List.of("change-submitted", "password-set").get(index % 2);
    }

    private static Map<String, ?> details(int index) {
        return Map.of(
                "number", 1 + index / 100,
                "digest", "sha256:68585045a9f547700a01f8281ba0a8d022d6f917e4107000bb66852c8ef8d7e9",
                "title", "Version " + (1 + index / 100),
                "inForceFrom", "2026-10-15T11:16:29.392779Z",
                "reviewDue", "2027-10-15",
                "signedBy", index % 41,
                "printedName", "Wren Alderby, lead radiographer (invented)",
                "role", "lead",
                "signedAt", "2026-10-15T11:16:29.392779Z",
                "meaning", "Approved for use in this room");
    }
}
