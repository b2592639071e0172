package wallchart.signoff;

import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.time.Period;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.chart.PublishingFixtures;
import wallchart.chart.Row;
import wallchart.chart.RowBuilder;
import wallchart.chart.RowFields;
import wallchart.equipment.Rooms;
import wallchart.people.People;
import wallchart.people.PeopleFixtures;
import wallchart.people.Role;
import wallchart.store.Actor;
import wallchart.store.Database;

/**
 * A department whose room r1 has a signed version 1 of three rows: LSPINE ap 12-18, 18-24, 24-30 cm; and everybody who takes part in a
 * change of it.
 */
final class DeskFixtures {

    static final String REASON = "images of thick patients are too noisy";
    static final String MEANING = "approved for use";

    final Database database;
    final People people;
    final Rooms rooms;
    final Charts charts;
    final SignoffDesk desk;
    final Actor author;
    final Actor colleague;
    final Actor lead;
    final Actor deputy;
    final Actor physicist;

    private DeskFixtures(Database database) {
        this.database = database;
        people = PeopleFixtures.peopleOf(database);
        author = somebody("author", Role.RADIOGRAPHER);
        colleague = somebody("colleague", Role.RADIOGRAPHER);
        lead = somebody("lead", Role.LEAD);
        deputy = somebody("deputy", Role.LEAD);
        physicist = somebody("physicist", Role.PHYSICIST);
        rooms = new Rooms(database);
        rooms.install(physicist, aRoom().document());
        charts = new Charts(database, rooms, ChartRules.adultsOnly());
        var chart = aChart().with(row(12, 18)).with(row(18, 24)).with(row(24, 30));
        charts.publish(lead, PublishingFixtures.draft(0, chart.content()));
        desk = new SignoffDesk(
                database,
                rooms,
                charts,
                ChartRules.adultsOnly(),
                SignoffFixtures.CALCULATION,
                SignoffFixtures.GRADING,
                Period.ofYears(1));
    }

    /** In a database without people and rooms yet. */
    static DeskFixtures aDeskIn(Database database) {
        return new DeskFixtures(database);
    }

    private Actor somebody(String name, Role role) {
        return PeopleFixtures.aPerson(people, name, role).asActor();
    }

    /** A row of the examination that the chart has. */
    static RowBuilder row(int from, int to) {
        return aRow().withBand(from, to);
    }

    static Map<String, String> fields(RowBuilder row) {
        return RowFields.of(row.row());
    }

    /** What must have come of a step. */
    static Change done(Outcome outcome) {
        if (outcome instanceof Outcome.Done done) {
            return done.change();
        }
        throw new AssertionError("refused: " + outcome);
    }

    /** An ordinary change on that version, by the author. */
    Change opened(int base) {
        return done(desk.open(author, "r1", "Thick patients", REASON, base, ChangeKind.ORDINARY));
    }

    Change fastTrack(int base) {
        return done(desk.open(author, "r1", "Too bright", REASON, base, ChangeKind.FAST_TRACK));
    }

    /** The author puts a row. */
    Change put(Change change, RowBuilder builder) {
        Row row = builder.row();
        return done(desk.putRow(author, change.id(), revision(change), row.key(), RowFields.of(row)));
    }

    Change submitted(Change change) {
        return done(desk.submit(author, change.id(), revision(change)));
    }

    /** A small change of the middle row, within the limits, handed in: 27 instead of 25 mAs unless said otherwise. */
    Change submittedSmall(int base, String mAs) {
        return submitted(put(opened(base), row(18, 24).withMAs(mAs)));
    }

    Outcome sign(Actor by, Change change) {
        return desk.sign(
                by, change.id(), revision(change), MEANING, Optional.empty(), impact(change), Optional.empty());
    }

    String impact(Change change) {
        return desk.assessment(change.id()).orElseThrow().impact().digest();
    }

    static int revision(Change change) {
        return change.head().revision();
    }
}
