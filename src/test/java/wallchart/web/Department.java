package wallchart.web;

import java.time.Clock;
import java.util.List;
import wallchart.chart.ChartFixtures;
import wallchart.chart.ChartContent;
import wallchart.chart.Charts;
import wallchart.equipment.Chamber;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.Rooms;
import wallchart.equipment.SupportKind;
import wallchart.people.People;
import wallchart.physics.BeamPhysics;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.SettableClock;
import wallchart.technique.TechniqueRules;

/**
 * An invented department: room r1 with two versions of a chart, room r2 with equipment and no chart.
 *
 * <p>r1, version 2, adults: lumbar spine AP at the table bucky (18-24 cm manual, 24-30 cm AEC), knee AP at tabletop and table
 * bucky (10-13 cm), pelvis AP of one thickness that the console cannot reach; adjustments {@code plaster} and {@code lytic}.
 */
final class Department {

    private static final BeamPhysics PHYSICS = BeamPhysics.load();

    private Department() {}

    static Services found(Database database, People people, SettableClock clock, Actor by) {
        var rooms = new Rooms(database);
        rooms.put(EquipmentFixtures.aRoom().room());
        rooms.put(EquipmentFixtures.aRoom().withId("r2").withName("Room 2").room());
        var charts = new Charts(database);
        charts.put(ChartFixtures.aChart().withBand(18, 24).version());
        var rules = new TechniqueRules(PHYSICS, List.of());
        return new Services(rooms, charts, people, rules, clock);
    }
}
