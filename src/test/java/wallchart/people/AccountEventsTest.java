package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.PASSWORD;
import static wallchart.people.PeopleFixtures.aRadiographer;
import static wallchart.people.PeopleFixtures.disable;
import static wallchart.people.PeopleFixtures.enable;
import static wallchart.people.PeopleFixtures.peopleOf;
import static wallchart.people.PeopleFixtures.signedIn;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.audit.Ledger;
import wallchart.audit.LedgerStopped;
import wallchart.store.OnEveryDatabase;
import wallchart.store.Sha256;

/** Every act on accounts and room tokens leaves its event in the ledger, and nothing else does. */
class AccountEventsTest extends OnEveryDatabase {

    private static final String ANOTHER = "another long password";

    private People people;
    private Person aino;

    @BeforeEach
    void aino_has_an_account() {
        people = peopleOf(database());
        aino = aRadiographer(people, "aino");
    }

    @Test
    void an_account_is_entered_with_its_name_and_role() {
        assertThat(events())
                .containsExactly("office administrator account-added person/" + aino.id() + " null []"
                        + " {\"hashDigest\":\"" + digestOfStoredHash() + "\",\"name\":\"aino\","
                        + "\"printedName\":\"Printed aino\",\"role\":\"radiographer\"}");
    }

    @Test
    void every_change_of_an_account_is_entered() {
        people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.LEAD);
        people.setPassword(ADMINISTRATOR, aino.id(), 2, ANOTHER);
        disable(people, aino);
        enable(people, aino);
        var object = " person/" + aino.id() + " null ";
        var office = "office administrator ";
        assertThat(events().stream().skip(1))
                .containsExactly(
                        office + "role-changed" + object
                                + "[] {\"from\":\"radiographer\",\"name\":\"aino\",\"to\":\"lead\"}",
                        office + "password-set" + object + "[] {\"hashDigest\":\"" + digestOfStoredHash()
                                + "\",\"name\":\"aino\",\"own\":false}",
                        office + "account-disabled" + object + "[left the department] {\"name\":\"aino\"}",
                        office + "account-enabled" + object + "[came back] {\"name\":\"aino\"}");
    }

    @Test
    void ones_own_password_is_entered_as_ones_own_act() {
        var session = people.session(signedIn(people, aino).sessionToken()).orElseThrow();
        people.setOwnPassword(aino.asActor(), session, ANOTHER);
        assertThat(events().get(1))
                .isEqualTo("aino radiographer password-set person/" + aino.id()
                        + " null [] {\"hashDigest\":\"" + digestOfStoredHash()
                        + "\",\"name\":\"aino\",\"own\":true}");
    }

    @Test
    void a_room_token_is_entered_for_its_room_when_issued_and_once_when_revoked() {
        var issued = people.issueRoomToken(ADMINISTRATOR, "r1", "by the door");
        var token = issued.token();
        people.revokeRoomToken(ADMINISTRATOR, token.id());
        people.revokeRoomToken(ADMINISTRATOR, token.id());
        people.revokeRoomToken(ADMINISTRATOR, 4711);
        var rest = " room-token/" + token.id() + " r1 [] {";
        var digest = "\"hashDigest\":\"sha256:" + Sha256.hex(Secrets.hash(issued.secret())) + "\",";
        assertThat(events().stream().skip(1))
                .containsExactly(
                        "office administrator room-token-issued" + rest + digest + "\"label\":\"by the door\"}",
                        "office administrator room-token-revoked" + rest + "\"label\":\"by the door\"}");
    }

    @Test
    void what_is_refused_or_so_already_leaves_no_event() {
        people.add(ADMINISTRATOR, new NewPerson("aino", "Again", Role.LEAD, PASSWORD));
        people.setPassword(ADMINISTRATOR, aino.id(), 1, "short");
        people.disable(ADMINISTRATOR, aino.id(), 7, "stale");
        people.enable(ADMINISTRATOR, aino.id(), 1, "is enabled");
        people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.RADIOGRAPHER);
        signedIn(people, aino);
        assertThat(events()).hasSize(1);
    }

    @Test
    void no_password_and_no_secret_stands_in_the_ledger() {
        people.setPassword(ADMINISTRATOR, aino.id(), 1, ANOTHER);
        var issued = people.issueRoomToken(ADMINISTRATOR, "r1", "by the door");
        assertThat(String.join("\n", events()))
                .doesNotContain(PASSWORD, ANOTHER, issued.secret(), Secrets.hash(issued.secret()), "argon2");
    }

    @Test
    void while_the_ledger_is_stopped_nobody_is_given_an_account_and_no_account_changes() {
        database().run(ADMINISTRATOR, tx -> new Ledger().stop(tx, "a doubt"));
        assertThatThrownBy(() -> people.changeRole(ADMINISTRATOR, aino.id(), 1, Role.LEAD))
                .isInstanceOf(LedgerStopped.class);
        assertThatThrownBy(() -> aRadiographer(people, "other")).isInstanceOf(LedgerStopped.class);
        assertThat(people.list()).containsExactly(aino);
    }

    private String digestOfStoredHash() {
        return database().read(tx -> tx.handle()
                .createQuery("SELECT password_hash FROM person WHERE id = :id")
                .bind("id", aino.id())
                .mapTo(String.class)
                .map(hash -> "sha256:" + Sha256.hex(hash))
                .one());
    }

    private List<String> events() {
        return database().read(tx -> tx.handle()
                .createQuery("SELECT actor || ' ' || role || ' ' || action || ' ' || object || ' '"
                        + " || COALESCE(room, 'null') || ' [' || reason || '] ' || details"
                        + " FROM audit_event ORDER BY seq")
                .mapTo(String.class)
                .list());
    }
}
