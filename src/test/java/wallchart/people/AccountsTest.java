package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.PASSWORD;
import static wallchart.people.PeopleFixtures.aRadiographer;
import static wallchart.people.PeopleFixtures.disable;
import static wallchart.people.PeopleFixtures.peopleOf;

import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.people.Registration.Reason;
import wallchart.people.Registration.Refused;
import wallchart.people.Registration.Registered;
import wallchart.store.OnEveryDatabase;

class AccountsTest extends OnEveryDatabase {

    private People people;

    @BeforeEach
    void nobody_yet() {
        people = peopleOf(database());
    }

    @Test
    void a_person_is_found_by_name_and_by_id_and_in_the_list() {
        var added = people.add(ADMINISTRATOR, new NewPerson(" Maija ", "Maija Example", Role.LEAD, PASSWORD));
        assertThat(added).isInstanceOfSatisfying(Registered.class, registered -> {
            var person = registered.person();
            assertThat(person.name()).isEqualTo("maija");
            assertThat(person.printedName()).isEqualTo("Maija Example");
            assertThat(person.role()).isEqualTo(Role.LEAD);
            assertThat(person.isDisabled()).isFalse();
            assertThat(person.asActor().role()).isEqualTo("lead");
            assertThat(people.findByName("maija")).contains(person);
            assertThat(people.find(person.id())).contains(person);
            assertThat(people.list()).containsExactly(person);
        });
    }

    @Test
    void a_name_nobody_has_or_could_have_is_not_found() {
        assertThat(people.findByName("nobody")).isEmpty();
        assertThat(people.findByName("no\0body")).isEmpty();
        assertThat(people.find(4711)).isEmpty();
    }

    @Test
    void a_name_is_taken_once_even_by_somebody_disabled() {
        var first = aRadiographer(people, "aino");
        disable(people, first);
        assertRefused(new NewPerson("Aino", "Another Aino", Role.LEAD, PASSWORD), Reason.NAME_TAKEN);
        assertThat(people.list()).hasSize(1);
    }

    @Test
    void an_id_is_never_given_again() {
        long before = aRadiographer(people, "first").id();
        assertRefused(new NewPerson("first", "Again", Role.LEAD, PASSWORD), Reason.NAME_TAKEN);
        assertThat(aRadiographer(people, "second").id()).isGreaterThan(before);
    }

    @Test
    void names_and_roles_that_cannot_stand_in_the_record_are_refused() {
        for (var name : List.of("", "x", "two words", "a'; DROP", "ä-umlaut", "a\0b", "x".repeat(41))) {
            assertRefused(new NewPerson(name, "Somebody", Role.LEAD, PASSWORD), Reason.NAME_UNUSABLE);
        }
        for (var printed : List.of(" ", "two\nlines", "half a letter \ud800", "x".repeat(121))) {
            assertRefused(new NewPerson("somebody", printed, Role.LEAD, PASSWORD), Reason.PRINTED_NAME_UNUSABLE);
        }
        assertRefused(new NewPerson("r1", "Room one", Role.WORKSTATION, PASSWORD), Reason.ROLE_NOT_FOR_PEOPLE);
    }

    @Test
    void a_password_that_breaks_the_rules_adds_nobody() {
        assertRefused(new NewPerson("short", "Short", Role.LEAD, "fourteen chars"), Reason.PASSWORD_TOO_SHORT);
        assertThat(people.list()).isEmpty();
    }

    @Test
    void the_database_keeps_an_argon2id_hash_and_not_the_password() {
        aRadiographer(people, "aino");
        var kept = database().<String>read(tx -> tx.handle()
                .createQuery("SELECT password_hash FROM person")
                .mapTo(String.class)
                .one());
        assertThat(kept).startsWith("$argon2id$v=19$m=19456,t=2,p=1$").doesNotContain("Deich");
        assertThat(new NewPerson("a", "b", Role.LEAD, PASSWORD).toString()).doesNotContain("Deich");
    }

    @Test
    void who_added_somebody_and_when_is_kept() {
        aRadiographer(people, "aino");
        database().run(ADMINISTRATOR, tx -> assertThat(tx.handle()
                        .createQuery("SELECT COUNT(*) FROM person WHERE created_by = :by AND created_at = :at")
                        .bind("by", ADMINISTRATOR.name())
                        .bind("at", clock().instant())
                        .mapTo(Integer.class)
                        .one())
                .isOne());
    }

    private void assertRefused(NewPerson person, Reason reason) {
        assertThat(people.add(ADMINISTRATOR, person))
                .isInstanceOfSatisfying(
                        Refused.class, refused -> assertThat(refused.reason()).isEqualTo(reason));
    }
}
