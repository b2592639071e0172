package wallchart.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import wallchart.audit.Ledger;
import wallchart.people.Registration.Reason;
import wallchart.people.Registration.Refused;
import wallchart.people.Registration.Registered;
import wallchart.store.Actor;
import wallchart.store.ConstraintViolated;
import wallchart.store.Database;
import wallchart.store.Mode;

/** The part of {@link People} that gives people accounts and finds them. */
final class Accounts {

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9._-]{1,39}");
    private static final int LONGEST_PRINTED_NAME = 120;
    private static final Set<String> DEMONSTRATION_NAMES = Set.of("lead", "radiographer", "physicist", "admin");

    private final Database database;
    private final PersonStore people = new PersonStore();
    private final Ledger ledger = new Ledger();

    Accounts(Database database) {
        this.database = database;
    }

    Registration add(Actor by, NewPerson person) {
        return checkNames(person)
                .or(() -> PasswordRules.check(person.password(), person.name()))
                .<Registration>map(refused -> refused)
                .orElseGet(() -> insert(by, person));
    }

    Registration addForDemonstration(Actor by, String name, String printedName, Role role) {
        if (database.mode() != Mode.DEMO || !DEMONSTRATION_NAMES.contains(name)) {
            throw new IllegalStateException("account \"" + name + "\" with a password known to everybody: only for "
                    + DEMONSTRATION_NAMES + " in a demonstration");
        }
        var person = new NewPerson(name, printedName, role, Secrets.DEMONSTRATION + name);
        return checkNames(person).<Registration>map(refused -> refused).orElseGet(() -> insert(by, person));
    }

    Optional<Person> find(long id) {
        return database.read(tx -> people.find(tx, id));
    }

    Optional<Person> findByName(String name) {
        return isName(name) ? database.read(tx -> people.findByName(tx, name)) : Optional.empty();
    }

    List<Person> list() {
        return database.read(people::list);
    }

    /** Whether anybody could have that name; what could not be a name is never looked up. */
    static boolean isName(String name) {
        return NAME.matcher(name).matches();
    }

    private static Optional<Refused> checkNames(NewPerson person) {
        if (!isName(person.name())) {
            return Optional.of(new Refused(
                    Reason.NAME_UNUSABLE,
                    "name \"" + person.name() + "\" must be 2 to 40 letters a-z, digits, dots, - or _"));
        }
        if (!Lines.isLine(person.printedName(), LONGEST_PRINTED_NAME)) {
            return Optional.of(new Refused(
                    Reason.PRINTED_NAME_UNUSABLE,
                    "printed name must be one line of 1 to 120 characters: it stands beside signatures"));
        }
        if (person.role() == Role.WORKSTATION) {
            return Optional.of(notForPeople());
        }
        return Optional.empty();
    }

    static Refused notForPeople() {
        return new Refused(
                Reason.ROLE_NOT_FOR_PEOPLE, "role workstation is not for people: issue a room token instead");
    }

    private Registration insert(Actor by, NewPerson person) {
        var hash = PasswordHashes.of(person.password());
        try {
            return new Registered(database.<Person>write(by, tx -> {
                var added = people.add(tx, person, hash);
                ledger.append(tx, AccountEvents.added(added, hash));
                return added;
            }));
        } catch (ConstraintViolated refused) {
            if (!refused.constraint().equals("person_name_unique")) {
                throw refused;
            }
            return new Refused(
                    Reason.NAME_TAKEN,
                    "name \"" + person.name() + "\" is taken, perhaps by a disabled account: add a digit");
        }
    }
}
