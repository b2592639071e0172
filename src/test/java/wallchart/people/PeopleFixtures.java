package wallchart.people;

import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Clock;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import wallchart.people.Registration.Registered;
import wallchart.store.Actor;
import wallchart.store.Database;

/** People for tests. */
public final class PeopleFixtures {

    public static final Actor ADMINISTRATOR = Actor.person(1, "office", "administrator");
    public static final String PASSWORD = "sieben graue Gänse am Deich";
    public static final String ADDRESS = "10.0.0.7";

    private PeopleFixtures() {}

    /** The people of that database, for whom a second passes when the database's clock is moved. */
    public static People peopleOf(Database database) {
        return new People(database, SignInSettings.DEFAULTS, tickerOf(database.clock()));
    }

    /** A radiographer of that name with {@link #PASSWORD}, already in the database. */
    public static Person aRadiographer(People people, String name) {
        return aPerson(people, name, Role.RADIOGRAPHER);
    }

    /** Somebody of that name and role with {@link #PASSWORD}, already in the database. */
    public static Person aPerson(People people, String name, Role role) {
        var registration = people.add(ADMINISTRATOR, new NewPerson(name, "Printed " + name, role, PASSWORD));
        return ((Registered) registration).person();
    }

    /** Disables an account as it is now. */
    public static Person disable(People people, Person person) {
        int revision = people.find(person.id()).orElseThrow().revision();
        return done(people.disable(ADMINISTRATOR, person.id(), revision, "left the department"));
    }

    /** Enables an account as it is now. */
    public static Person enable(People people, Person person) {
        int revision = people.find(person.id()).orElseThrow().revision();
        return done(people.enable(ADMINISTRATOR, person.id(), revision, "came back"));
    }

    /** The account that must have come of it. */
    static Person done(Registration registration) {
        return ((Registered) registration).person();
    }

    /** Signs in with {@link #PASSWORD}, which must succeed. */
    public static SignIn.SignedIn signedIn(People people, Person person) {
        return (SignIn.SignedIn) people.signIn(person.name(), PASSWORD, ADDRESS);
    }

    static Ticker tickerOf(Clock clock) {
        return () -> ChronoUnit.NANOS.between(Instant.EPOCH, clock.instant());
    }
}
