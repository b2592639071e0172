package wallchart.people;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import wallchart.people.Registration.Reason;
import wallchart.people.Registration.Refused;
import wallchart.people.Registration.Registered;
import wallchart.store.Actor;
import wallchart.store.ConstraintViolated;
import wallchart.store.Database;
import wallchart.store.Mode;

/** The part of {@link People} that keeps accounts. */
final class Accounts {

    private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9._-]{1,39}");
    private static final Pattern PRINTED_NAME = Pattern.compile("\\P{Cc}{1,120}");
    private static final Set<String> DEMONSTRATION_NAMES = Set.of("lead", "radiographer", "physicist", "admin");

    private final Database database;
    private final PersonStore people = new PersonStore();
    private final SessionStore sessions = new SessionStore();

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

    Registration setPassword(Actor by, long id, String password) {
        var person = database.<Optional<Person>>read(tx -> people.find(tx, id));
        if (person.isEmpty()) {
            return new Refused(Reason.UNKNOWN_PERSON, "person " + id + " is unknown: look at the list of people");
        }
        var refused = PasswordRules.check(password, person.get().name());
        if (refused.isPresent()) {
            return refused.get();
        }
        var hash = PasswordHashes.of(password);
        return database.<Registration>write(by, tx -> {
            people.setPasswordHash(tx, id, hash);
            sessions.endAllOf(tx, id);
            return new Registered(people.find(tx, id).orElseThrow());
        });
    }

    Optional<Person> disable(Actor by, long id) {
        return database.write(by, tx -> {
            people.disable(tx, id);
            sessions.endAllOf(tx, id);
            return people.find(tx, id);
        });
    }

    Optional<Person> enable(Actor by, long id) {
        return database.write(by, tx -> {
            people.enable(tx, id);
            return people.find(tx, id);
        });
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
        if (!PRINTED_NAME.matcher(person.printedName()).matches()) {
            return Optional.of(new Refused(
                    Reason.PRINTED_NAME_UNUSABLE,
                    "printed name must be one line of 1 to 120 characters: it stands beside signatures"));
        }
        if (person.role() == Role.WORKSTATION) {
            return Optional.of(new Refused(
                    Reason.ROLE_NOT_FOR_PEOPLE, "role workstation is not for people: issue a room token instead"));
        }
        return Optional.empty();
    }

    private Registration insert(Actor by, NewPerson person) {
        var hash = PasswordHashes.of(person.password());
        try {
            return new Registered(database.<Person>write(by, tx -> people.add(tx, person, hash)));
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
