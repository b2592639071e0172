package wallchart.audit;

import static java.nio.file.StandardCopyOption.REPLACE_EXISTING;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.store.StoreFixtures.asOwner;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.audit.Verification.Doubtful;
import wallchart.audit.Verification.Sound;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;
import wallchart.store.ReadTx;
import wallchart.store.Sha256;
import wallchart.store.TestDatabases;

/** A physicist goes on with a ledger in doubt: the doubt stays on record, and nothing can be changed unseen from then on. */
class ResumedLedgerTest extends OnEveryDatabase {

    private static final Actor PHYSICIST = Actor.person(3, "physicist", "physicist");
    private static final String REASON = "Compared with the backup of Monday; event 2 was repaired by hand";

    @TempDir
    private Path folder;

    private AuditTrail trail;
    private LedgerKeeper keeper;

    @BeforeEach
    void three_events_with_checkpoints() {
        trail = new AuditTrail(database(), new Checkpoints(folder), List.of());
        keeper = restarted();
        for (int i = 1; i <= 3; i++) {
            append(i);
            keeper.keep();
        }
        asOwner(
                database(),
                kind() == TestDatabases.Kind.H2
                        ? "DROP TRIGGER audit_event_append_only"
                        : "DROP TRIGGER audit_event_append_only ON audit_event");
    }

    private void append(int number) {
        var act = Act.of("act-done", "thing/" + number, "Reason", Map.of());
        database().run(Actor.system("test"), tx -> new Ledger().append(tx, act));
    }

    /** The keeper of a service that was started again. */
    private LedgerKeeper restarted() {
        return new LedgerKeeper(database(), new CheckpointWatch(new Checkpoints(folder)));
    }

    /** While the service does not run; a new keeper comes with its next start. */
    private void stoppedBy(String... tampering) {
        keeper = restarted();
        asOwner(database(), tampering);
        database().run(Actor.system("test"), tx -> new Ledger().stop(tx, "found by the keeper"));
        assertThatThrownBy(() -> append(9)).isInstanceOf(LedgerStopped.class);
    }

    private Event resumed() {
        return ((Reopening.Reopened) trail.resume(PHYSICIST, REASON)).event();
    }

    private List<Path> putAside() throws IOException {
        try (var files = Files.list(folder)) {
            return files.filter(file -> file.getFileName().toString().matches("checkpoints-[0-9a-f]{64}\\.ndjson"))
                    .toList();
        }
    }

    private Sound sound() {
        assertThat(trail.verify()).isInstanceOf(Sound.class);
        return (Sound) trail.verify();
    }

    private Doubtful doubt() {
        assertThat(trail.verify()).isInstanceOf(Doubtful.class);
        return (Doubtful) trail.verify();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE audit_event SET reason = 'Other' WHERE seq = 2",
                "UPDATE audit_event SET details = 'no JSON' WHERE seq = 3",
                "UPDATE audit_event SET seq = 9 WHERE seq = 3",
                "DELETE FROM audit_event WHERE seq = 2",
                "DELETE FROM audit_event WHERE seq = 3",
                "DELETE FROM audit_event",
            })
    void whatever_was_changed_the_ledger_goes_on_and_says_so_in_every_check(String tampering) {
        stoppedBy(tampering);
        var first = doubt();
        assertThat(resumed().detail("doubt")).hasValue(first.what());
        append(10);
        keeper.keep();
        assertThat(sound().notes())
                .singleElement()
                .asString()
                .contains("in doubt was that " + first.what(), "physicist (physicist) resumed the ledger", REASON);
        assertThat(sound().checkpoint()).isPresent();
    }

    @Test
    void the_event_keeps_who_why_what_was_wrong_and_a_digest_of_everything_before() {
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        var event = resumed();
        assertThat(event.seq()).isEqualTo(4);
        assertThat(event.action()).isEqualTo("ledger-resumed");
        assertThat(event.actor()).isEqualTo("physicist");
        assertThat(event.reason()).isEqualTo(REASON);
        assertThat(event.object()).isEqualTo("ledger/3");
        assertThat(event.detail("events")).hasValue("3");
        assertThat(event.detail("doubt").orElseThrow()).contains("event 2 is not what was written");
    }

    @Test
    void the_digest_is_that_of_the_lines_of_an_export() {
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        var event = resumed();
        var lines = new StringBuilder();
        trail.export(line -> lines.append(line.contains("\"seq\":4") ? "" : line + "\n"));
        assertThat(event.detail("digest")).hasValue(Sha256.hex(lines.toString()));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE audit_event SET reason = 'Yet another' WHERE seq = 2",
                "UPDATE audit_event SET reason = 'Reason' WHERE seq = 2",
                "UPDATE audit_event SET reason = 'Other' WHERE seq = 1",
                "UPDATE audit_event SET actor = 'nobody' WHERE seq = 4",
                "UPDATE audit_event SET reason = 'Other' WHERE seq = 5",
                "DELETE FROM audit_event WHERE seq = 1",
                "DELETE FROM audit_event WHERE seq = 5",
            })
    void what_is_changed_afterwards_is_found_before_and_after_that_event(String tampering) {
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        resumed();
        append(10);
        keeper.keep();
        sound();
        asOwner(database(), tampering);
        doubt();
    }

    @Test
    void it_can_be_resumed_once_more_and_both_doubts_are_named() {
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        resumed();
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 1");
        resumed();
        assertThat(sound().notes()).hasSize(2).allSatisfy(note -> assertThat(note)
                .contains(REASON));
    }

    @Test
    void who_has_no_key_cannot_acknowledge_what_they_changed() {
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        asOwner(database(), "UPDATE audit_turn SET stopped = NULL");
        database().run(PHYSICIST, tx -> {
            var act = Resumption.act(REASON, "nothing", Standing.of(tx), Optional.empty());
            new Ledger().append(tx, act);
        });
        assertThat(doubt().seq()).isEqualTo(2);
    }

    @ParameterizedTest
    @ValueSource(strings = {"changed", "removed", "shortened and no more"})
    void checkpoints_that_were_changed_are_kept_aside_and_others_begun(String how) throws IOException {
        var file = folder.resolve("checkpoints.ndjson");
        var before = Files.readString(file);
        if (how.equals("removed")) {
            Files.delete(file);
        } else {
            Files.writeString(file, how.equals("changed") ? before.replace("2026", "2025") : before.substring(9));
        }
        keeper.keep();
        assertThatThrownBy(() -> append(9)).isInstanceOf(LedgerStopped.class);
        resumed();
        keeper = restarted();
        append(10);
        keeper.keep();
        assertThat(sound().checkpoint().orElseThrow().seq()).isEqualTo(sound().events());
        assertThat(putAside()).hasSize(how.equals("removed") ? 0 : 1);
    }

    @Test
    void the_old_checkpoints_are_put_aside_beside_their_key_byte_for_byte_and_the_event_names_them()
            throws IOException {
        stoppedBy("DELETE FROM audit_event WHERE seq = 3");
        var before = Files.readAllBytes(folder.resolve("checkpoints.ndjson"));
        var event = resumed();
        assertThat(putAside()).singleElement().satisfies(file -> {
            assertThat(file).hasBinaryContent(before);
            assertThat(event.details())
                    .contains("\"file\":\"" + file.getFileName() + "\"", "\"digest\":\"" + Sha256.hex(before) + "\"");
        });
        assertThat(Files.readAllLines(folder.resolve("checkpoints.ndjson")))
                .singleElement()
                .satisfies(line -> assertThat(Checkpoint.ofLine(line).hash()).isEqualTo(event.hash()));
    }

    @Test
    void a_ledger_in_which_everything_fits_again_goes_on_and_names_why_it_was_stopped() {
        stoppedBy();
        resumed();
        append(10);
        keeper.keep();
        assertThat(sound().notes()).singleElement().asString().contains("in doubt was that found by the keeper");
    }

    @Test
    void a_record_that_differs_is_never_acknowledged() throws IOException {
        trail = withRecords(new Things("thing/1"));
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        assertThat(trail.resume(PHYSICIST, REASON))
                .isInstanceOfSatisfying(Reopening.Refused.class, refused -> assertThat(refused.text())
                        .contains("thing/1 has another weight", "restore it"));
        nothingHappened();
    }

    @Test
    void the_records_of_all_events_are_checked_afterwards_too() {
        trail = withRecords(new Things("none"));
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        resumed();
        sound();
        trail = withRecords(new Things("thing/1"));
        assertThat(doubt().what()).contains("thing/1 has another weight");
    }

    private AuditTrail withRecords(RecordCheck records) {
        return new AuditTrail(database(), new Checkpoints(folder), List.of(records));
    }

    /** Things, one of which is not as its event says. */
    private record Things(String changed) implements OneEventEach {
        @Override
        public String action() {
            return "act-done";
        }

        @Override
        public Optional<String> difference(ReadTx tx, Event event) {
            return event.object().equals(changed) ? Optional.of(changed + " has another weight") : Optional.empty();
        }

        @Override
        public Optional<String> unrecorded(ReadTx tx, Set<String> objects) {
            return Optional.empty();
        }
    }

    private void nothingHappened() throws IOException {
        assertThat(trail.find(4)).isEmpty();
        assertThat(putAside()).isEmpty();
        assertThat(trail.findStop()).hasValue("found by the keeper");
    }

    @Test
    void a_ledger_that_is_neither_stopped_nor_in_doubt_is_not_resumed() {
        assertThat(trail.resume(PHYSICIST, REASON))
                .isEqualTo(new Reopening.Refused(
                        "the ledger is neither stopped nor in doubt: there is nothing to resume"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "all right", "a     b      c      d", "half a character: \ud83d"})
    void without_a_reason_that_says_something_it_stays_stopped(String reason) {
        stoppedBy();
        assertThat(trail.resume(PHYSICIST, reason)).isInstanceOf(Reopening.Refused.class);
        assertThatThrownBy(() -> append(9)).isInstanceOf(LedgerStopped.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"the private key is away", "both are away", "the public key is another"})
    void without_the_key_it_stays_stopped_and_nothing_is_entered(String how) throws IOException {
        stoppedBy("UPDATE audit_event SET reason = 'Other' WHERE seq = 2");
        if (how.startsWith("the public")) {
            LedgerKey.findOrMake(Files.createDirectory(folder.resolve("other")));
            Files.move(folder.resolve("other/ledger.pub"), folder.resolve("ledger.pub"), REPLACE_EXISTING);
        } else {
            Files.delete(folder.resolve("ledger.key"));
            Files.deleteIfExists(folder.resolve(how.startsWith("both") ? "ledger.pub" : "none"));
        }
        assertThat(trail.resume(PHYSICIST, REASON)).isInstanceOf(Reopening.Refused.class);
        nothingHappened();
    }
}
