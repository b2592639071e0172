package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.store.StoreFixtures.asOwner;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;
import wallchart.store.TestDatabases;

/**
 * Whoever has the owner's password can change the events; the chain and its signed head show it. A thousand tamperings at random on
 * each of two databases.
 */
class TamperedEventsTest extends OnEveryDatabase {

    private static final int EVENTS = 20;
    private static final int TAMPERINGS = 1_000; // on each of two databases
    private static final List<String> TEXTS =
            List.of("actor", "role", "action", "object", "room", "reason", "details", "request_id", "prev", "hash");

    @TempDir
    private Path folder;

    private final Ledger ledger = new Ledger();
    private final Random random = new Random(20_261_125);
    private AuditTrail trail;

    @BeforeEach
    void twenty_events_stand_there() {
        var checkpoints = new Checkpoints(folder.resolve("ledger"));
        trail = new AuditTrail(database(), checkpoints, List.of());
        for (int i = 1; i <= EVENTS; i++) {
            var act = Act.inRoom("r" + i % 3, "version-signed", "r1/version/" + i, "Reason " + i, Map.of("number", i));
            database().run(Actor.person(7, "lead", "lead").during("req-" + i), tx -> ledger.append(tx, act));
        }
        checkpoints.add(EVENTS, trail.find(EVENTS).orElseThrow().hash(), clock().instant());
    }

    @Test
    void two_hundred_untouched_ledgers_are_sound() {
        for (int i = 0; i < 100; i++) { // on each of two databases
            assertThat(trail.verify()).isInstanceOf(Verification.Sound.class);
            var act = Act.inRoom("r1", "version-signed", "r1/version/" + (EVENTS + i), "Reason", Map.of("number", i));
            database().run(Actor.person(7, "lead", "lead"), tx -> ledger.append(tx, act));
        }
    }

    @Test
    void the_first_bad_event_is_named() {
        unlock();
        asOwner(database(), "UPDATE audit_event SET reason = 'Other' WHERE seq = 7");
        assertThat(doubt().seq()).isEqualTo(7);
        asOwner(database(), "DELETE FROM audit_event WHERE seq = 4");
        assertThat(doubt().seq()).isEqualTo(4);
    }

    private Verification.Doubtful doubt() {
        return (Verification.Doubtful) trail.verify();
    }

    @Test
    void every_random_tampering_is_found() {
        unlock();
        asOwner(database(), "CREATE TABLE kept AS SELECT * FROM audit_event");
        for (int i = 0; i < TAMPERINGS; i++) {
            var tampering = tampering();
            asOwner(database(), tampering);
            assertThat(trail.verify()).as(String.join("; ", tampering)).isInstanceOf(Verification.Doubtful.class);
            asOwner(database(), "DELETE FROM audit_event", "INSERT INTO audit_event SELECT * FROM kept");
        }
        assertThat(trail.verify()).isInstanceOf(Verification.Sound.class);
    }

    private String[] tampering() {
        int seq = 1 + random.nextInt(EVENTS - 1);
        int other = seq + 1;
        return switch (random.nextInt(8)) {
            case 0 -> one("DELETE FROM audit_event WHERE seq = " + seq);
            case 1 ->
                one("UPDATE audit_event SET at = at - INTERVAL '" + (1 + random.nextInt(600)) + "' MINUTE WHERE seq = "
                        + seq);
            case 2 ->
                new String[] {
                    "UPDATE audit_event SET seq = 1000 WHERE seq = " + seq,
                    "UPDATE audit_event SET seq = " + seq + " WHERE seq = " + other,
                    "UPDATE audit_event SET seq = " + other + " WHERE seq = 1000"
                };
            case 3 ->
                one("INSERT INTO audit_event SELECT " + (EVENTS + 1)
                        + ", at, actor, role, action, object, room, reason,"
                        + " details, request_id, prev, hash FROM audit_event WHERE seq = " + seq);
            case 4 ->
                one("UPDATE audit_event SET seq = seq + " + (EVENTS + random.nextInt(100)) + " WHERE seq = " + seq);
            case 5 -> one("DELETE FROM audit_event WHERE seq > " + seq);
            case 6 -> rewrittenFrom(seq);
            default -> one(flipped(TEXTS.get(random.nextInt(TEXTS.size())), seq));
        };
    }

    private static String[] one(String statement) {
        return new String[] {statement};
    }

    /** Another reason, and every hash from there on worked out anew: a sound chain, but not the one that was signed for. */
    private String[] rewrittenFrom(int seq) {
        var statements = new ArrayList<String>();
        var prev = trail.find(seq).orElseThrow().prev();
        for (var event : trail.page(EventFilter.ALL, seq - 1, EVENTS)) {
            var reason = event.seq() == seq ? "Rewritten " + random.nextInt() : event.reason();
            var rewritten = new Event(
                    event.seq(),
                    event.at(),
                    event.actor(),
                    event.role(),
                    event.action(),
                    event.object(),
                    event.room(),
                    reason,
                    event.details(),
                    event.requestId(),
                    prev,
                    "");
            var hash = LedgerEncoding.hash(rewritten);
            statements.add("UPDATE audit_event SET reason = '" + reason + "', prev = '" + prev + "', hash = '" + hash
                    + "' WHERE seq = " + event.seq());
            prev = hash;
        }
        return statements.toArray(String[]::new);
    }

    /** One bit of one character of a text becomes another. */
    private String flipped(String column, int seq) {
        var text = database().<String>read(tx -> tx.handle()
                .createQuery("SELECT " + column + " FROM audit_event WHERE seq = " + seq)
                .mapTo(String.class)
                .one());
        var characters = text.toCharArray();
        int at = random.nextInt(characters.length);
        do {
            characters[at] = (char) (text.charAt(at) ^ 1 << random.nextInt(5));
        } while (characters[at] < ' ' || characters[at] == '\'');
        return "UPDATE audit_event SET " + column + " = '" + new String(characters) + "' WHERE seq = " + seq;
    }

    /** Takes away what the database itself does against it. */
    private void unlock() {
        asOwner(
                database(),
                kind() == TestDatabases.Kind.H2
                        ? "DROP TRIGGER audit_event_append_only"
                        : "DROP TRIGGER audit_event_append_only ON audit_event",
                "ALTER TABLE audit_event DROP CONSTRAINT audit_event_prev_unique",
                "ALTER TABLE audit_event DROP CONSTRAINT audit_event_hash_unique");
    }
}
