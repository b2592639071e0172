package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.people.PeopleFixtures.ADDRESS;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.peopleOf;

import java.util.Map;
import org.junit.jupiter.api.Test;
import wallchart.people.Registration.Reason;
import wallchart.people.Registration.Refused;
import wallchart.people.Registration.Registered;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.OnEveryDatabase;

/** Secrets known to everybody open a demonstration and nothing else. */
class DemonstrationSecretsTest extends OnEveryDatabase {

    private static final Map<String, Role> FOUR = Map.of(
            "lead", Role.LEAD,
            "radiographer", Role.RADIOGRAPHER,
            "physicist", Role.PHYSICIST,
            "admin", Role.ADMINISTRATOR);

    @Test
    void in_a_demonstration_the_four_sign_in_and_the_rooms_open() {
        var people = peopleOf(database(Mode.DEMO));
        FOUR.forEach((name, role) -> {
            assertThat(people.addDemonstrationPerson(ADMINISTRATOR, name, "Demo " + name, role))
                    .isInstanceOf(Registered.class);
            assertThat(people.signIn(name, "demo-" + name, ADDRESS)).isInstanceOf(SignIn.SignedIn.class);
        });
        for (var room : new String[] {"r1", "r2", "r3"}) {
            assertThat(people.issueDemonstrationToken(ADMINISTRATOR, room).secret())
                    .isEqualTo("demo-" + room);
            assertThat(people.roomOf("demo-" + room)).map(RoomToken::room).contains(room);
        }
    }

    @Test
    void at_a_site_they_are_not_even_made() {
        var people = peopleOf(database());
        assertThatThrownBy(() -> people.addDemonstrationPerson(ADMINISTRATOR, "lead", "Lead", Role.LEAD))
                .hasMessageContaining("only for");
        assertThatThrownBy(() -> people.issueDemonstrationToken(ADMINISTRATOR, "r1"))
                .hasMessageContaining("only in a demonstration");
        assertThat(people.list()).isEmpty();
        assertThat(people.roomTokens()).isEmpty();
    }

    @Test
    void at_a_site_they_are_refused_even_if_they_stood_in_the_database() {
        plant(database(), "site");
        var people = peopleOf(database());
        assertThat(people.signIn("lead", "demo-lead", ADDRESS)).isEqualTo(new SignIn.Refused());
        assertThat(people.confirm(people.findByName("lead").orElseThrow(), "demo-lead", ADDRESS))
                .isEqualTo(new Confirmation.Refused());
        assertThat(people.roomOf("demo-r1")).isEmpty();
    }

    /** Shows that what the sentence above plants would open a door if nobody looked at how it begins. */
    @Test
    void the_same_rows_open_a_demonstration() {
        var demonstration = database(Mode.DEMO);
        plant(demonstration, "demo");
        var people = peopleOf(demonstration);
        assertThat(people.signIn("lead", "demo-lead", ADDRESS)).isInstanceOf(SignIn.SignedIn.class);
        assertThat(people.roomOf("demo-r1")).isPresent();
    }

    @Test
    void nobody_else_gets_such_a_password_in_any_mode() {
        for (var mode : Mode.values()) {
            var people = peopleOf(database(mode));
            assertThat(people.add(ADMINISTRATOR, new NewPerson("new", "New", Role.LEAD, "demo-but-quite-long-enough")))
                    .isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.reason())
                            .isEqualTo(Reason.PASSWORD_FOR_DEMONSTRATION));
            assertThatThrownBy(() -> people.addDemonstrationPerson(ADMINISTRATOR, "other", "Other", Role.LEAD))
                    .isInstanceOf(IllegalStateException.class);
        }
    }

    private static void plant(Database database, String label) {
        var lead = new NewPerson("lead", "Planted lead", Role.LEAD, "demo-lead");
        database.run(ADMINISTRATOR, tx -> {
            new PersonStore().add(tx, lead, PasswordHashes.of(lead.password()));
            new RoomTokenStore().add(tx, "r1", label, Secrets.hash("demo-r1"));
        });
    }
}
