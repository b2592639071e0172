package wallchart.web.view;

import java.time.Instant;
import java.util.List;
import wallchart.people.Person;

/** An account; {@code disabledAt} is null while the person may sign in. */
public record PersonView(long id, String name, String printedName, String role, Instant disabledAt) {

    /** Everybody, by name. */
    public record All(List<PersonView> people) {
        public static All of(List<Person> people) {
            return new All(people.stream().map(PersonView::of).toList());
        }
    }

    public static PersonView of(Person person) {
        return new PersonView(
                person.id(),
                person.name(),
                person.printedName(),
                person.role().slug(),
                person.disabledAt().orElse(null));
    }
}
