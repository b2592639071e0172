package wallchart.chart;

import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wallchart.equipment.Rooms;
import wallchart.people.PeopleFixtures;
import wallchart.people.Role;
import wallchart.store.Actor;
import wallchart.store.Database;

/** A department with the invented room r1 and a lead radiographer who publishes its charts, for tests. */
public final class PublishingFixtures {

    private final Database database;
    private final Actor lead;
    private final Rooms rooms;

    private PublishingFixtures(Database database, Actor lead, Rooms rooms) {
        this.database = database;
        this.lead = lead;
        this.rooms = rooms;
    }

    /** In a database without people and rooms yet. */
    public static PublishingFixtures aDepartmentIn(Database database) {
        var lead = PeopleFixtures.aPerson(PeopleFixtures.peopleOf(database), "lead", Role.LEAD)
                .asActor();
        var rooms = new Rooms(database);
        rooms.install(lead, aRoom().document());
        return new PublishingFixtures(database, lead, rooms);
    }

    /** The same department after its database was closed and opened again. */
    public PublishingFixtures reopenedIn(Database again) {
        return new PublishingFixtures(again, lead, new Rooms(again));
    }

    public Actor lead() {
        return lead;
    }

    public Rooms rooms() {
        return rooms;
    }

    /** Charts that have read nothing yet. */
    public Charts charts() {
        return new Charts(database, rooms, ChartRules.adultsOnly());
    }

    /** Publishes that content for r1 on that base, in force at once; fails with the findings where it is refused. */
    public ChartVersion publish(int base, ChartContent content) {
        var publication = charts().publish(lead, draft(base, content));
        if (publication instanceof Publication.Published published) {
            return published.version();
        }
        throw new IllegalStateException("not published: " + publication);
    }

    /** A draft for r1 with everything around its content in order, in force at once. */
    public static Draft draft(int base, ChartContent content) {
        return draft(base, content, Optional.empty());
    }

    /** The same, in force from an instant. */
    public static Draft draft(int base, ChartContent content, Optional<Instant> inForceFrom) {
        return new Draft(
                "r1",
                base,
                content,
                "A title",
                "because it was measured",
                "approved for use",
                inForceFrom,
                LocalDate.parse("2027-03-02"));
    }
}
