package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.aPerson;
import static wallchart.people.PeopleFixtures.aRadiographer;
import static wallchart.people.PeopleFixtures.disable;
import static wallchart.people.PeopleFixtures.enable;
import static wallchart.people.PeopleFixtures.peopleOf;
import static wallchart.store.StoreFixtures.asOwner;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.audit.Act;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.Ledger;
import wallchart.audit.Verification;
import wallchart.store.Actor;
import wallchart.store.Mode;
import wallchart.store.OnEveryDatabase;

/** Accounts and room tokens are what their events say; what the owner of the tables changed by hand is found. */
class AccountRecordsTest extends OnEveryDatabase {

    @TempDir
    private Path folder;

    @BeforeEach
    void accounts_and_tokens_with_a_history() {
        var people = peopleOf(database());
        var aino = aRadiographer(people, "aino");
        var berit = aPerson(people, "berit", Role.LEAD);
        people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.PHYSICIST);
        people.setPassword(ADMINISTRATOR, aino.id(), 2, "another long password");
        disable(people, aino);
        enable(people, aino);
        disable(people, berit);
        people.issueRoomToken(ADMINISTRATOR, "r1", "by the door");
        var second = people.issueRoomToken(ADMINISTRATOR, "r2", "by the window");
        people.revokeRoomToken(ADMINISTRATOR, second.token().id());
    }

    private Verification verify() {
        return new AuditTrail(database(), new Checkpoints(folder), People.records()).verify();
    }

    @Test
    void an_untouched_history_is_sound() {
        assertThat(verify()).isInstanceOf(Verification.Sound.class);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            UPDATE person SET role = 'lead' WHERE id = 1              | person/1 has another role than its events say
            UPDATE person SET name = 'other' WHERE id = 1             | person/1 has another name than its events say
            UPDATE person SET printed_name = 'Other' WHERE id = 1     | person/1 has another printed_name than its events say
            UPDATE person SET password_hash = '$argon2id$x' WHERE id = 1 | person/1 has another hashDigest than its events say
            UPDATE person SET password_hash = (SELECT password_hash FROM person WHERE id = 2) WHERE id = 1 | person/1 has another hashDigest than its events say
            UPDATE person SET created_by = 'x' WHERE id = 1           | person/1 has another created_by than its events say
            UPDATE person SET disabled_at = NULL WHERE id = 2         | person/2 has another disabled_at than its events say
            UPDATE person SET revision = revision + 1 WHERE id = 1    | person/1 has another revision than its events say
            DELETE FROM person WHERE id = 2                           | person/2 is not stored
            INSERT INTO person (name, printed_name, role, password_hash, created_at, created_by) SELECT 'x1', 'X', 'lead', password_hash, created_at, created_by FROM person WHERE id = 1 | person/3 is stored, but the ledger has no event of it
            UPDATE room_token SET room = 'r2' WHERE id = 1            | room-token/1 has another room than its events say
            UPDATE room_token SET label = 'x' WHERE id = 1            | room-token/1 has another label than its events say
            UPDATE room_token SET token_hash = REPEAT('a', 64) WHERE id = 1 | room-token/1 has another hashDigest than its events say
            UPDATE room_token SET revoked_at = NULL, revoked_by = NULL WHERE id = 2 | room-token/2 has another revoked_at than its events say
            DELETE FROM room_token WHERE id = 1                       | room-token/1 is not stored
            """)
    void what_was_changed_by_hand_is_found(String tampering, String complaint) {
        asOwner(database(), tampering);
        assertThat(verify()).isEqualTo(new Verification.Doubtful(0, complaint));
    }

    @Test
    void the_accounts_and_tokens_of_a_demonstration_are_sound_too() {
        var demo = database(Mode.DEMO);
        var people = peopleOf(demo);
        people.addDemonstrationPerson(ADMINISTRATOR, "lead", "Lead", Role.LEAD);
        people.issueDemonstrationToken(ADMINISTRATOR, "r1");
        var trail = new AuditTrail(demo, new Checkpoints(folder), People.records());
        assertThat(trail.verify()).isInstanceOf(Verification.Sound.class);
        asOwner(demo, "UPDATE person SET role = 'physicist'");
        assertThat(trail.verify()).isInstanceOf(Verification.Doubtful.class);
    }

    /** Events told by somebody who may append to the table of events, but was not careful enough. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            account-added   | person/1     | aino         | person/1 has a second account-added
            role-changed    | person/1     | aino         | person/1 had another role before its role-changed
            role-changed    | person/7     | aino         | person/7 has a role-changed before its first event
            password-set    | person/1     | aino         | person/1 has a password-set without hashDigest, though an earlier event has one
            account-enabled | person/2     | aino         | person/2 had another name before its account-enabled
            room-token-issued | room-token/9 | x          | room-token/9 has a room-token-issued without hashDigest, though an earlier event has one
            """)
    void an_event_that_does_not_follow_from_those_before_is_named(
            String action, String object, String name, String complaint) {
        var details = Map.of("name", name, "from", "lead", "to", "lead", "printedName", "X", "role", "lead");
        database().run(Actor.system("forger"), tx -> new Ledger().append(tx, Act.of(action, object, "", details)));
        assertThat(verify()).isInstanceOfSatisfying(Verification.Doubtful.class, doubt -> {
            assertThat(doubt.seq()).isEqualTo(11);
            assertThat(doubt.what()).endsWith(complaint);
        });
    }

    @Test
    void accounts_older_than_the_digest_are_held_against_all_the_rest() {
        var old = database(Mode.SITE);
        old.run(ADMINISTRATOR, tx -> {
            tx.handle()
                    .createUpdate("INSERT INTO person (name, printed_name, role, password_hash, created_at, created_by)"
                            + " VALUES ('old', 'Old', 'lead', '$argon2id$x', :at, 'office')")
                    .bind("at", tx.at())
                    .execute();
            var details = Map.of("name", "old", "printedName", "Old", "role", "lead");
            new Ledger().append(tx, Act.of("account-added", "person/1", "", details));
        });
        aRadiographer(peopleOf(old), "newer");
        var trail = new AuditTrail(old, new Checkpoints(folder), People.records());
        assertThat(trail.verify()).isInstanceOf(Verification.Sound.class);
        asOwner(old, "UPDATE person SET printed_name = 'Other' WHERE id = 1");
        assertThat(trail.verify()).isInstanceOf(Verification.Doubtful.class);
    }
}
