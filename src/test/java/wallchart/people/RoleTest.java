package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import wallchart.people.Registration.Registered;
import wallchart.store.OnEveryDatabase;

class RoleTest extends OnEveryDatabase {

    /** The words stand in databases and in programs of others: they never change. */
    @Test
    void the_slugs_are_the_words_everybody_relies_on() {
        assertThat(Arrays.stream(Role.values()).map(Role::slug))
                .containsExactly("workstation", "radiographer", "lead", "physicist", "administrator");
        for (var role : Role.values()) {
            assertThat(Role.ofSlug(role.slug())).isEqualTo(role);
        }
    }

    @Test
    void an_unknown_word_is_named_beside_the_known_ones() {
        assertThatThrownBy(() -> Role.ofSlug("boss"))
                .hasMessageContaining("boss")
                .hasMessageContaining("physicist");
    }

    @Test
    void the_database_takes_every_role_of_people() {
        var people = PeopleFixtures.peopleOf(database());
        Arrays.stream(Role.values()).filter(role -> role != Role.WORKSTATION).forEach(role -> {
            var person = new NewPerson("p-" + role.slug(), "Somebody", role, PeopleFixtures.PASSWORD);
            assertThat(people.add(PeopleFixtures.ADMINISTRATOR, person)).isInstanceOf(Registered.class);
        });
    }
}
