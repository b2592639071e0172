package wallchart.web;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.PackSeal;
import wallchart.audit.RecordCheck;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartFixtures;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.chart.Draft;
import wallchart.chart.Publication;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.Installation;
import wallchart.equipment.RoomBuilder;
import wallchart.equipment.Rooms;
import wallchart.equipment.SupportKind;
import wallchart.grading.ChartPhysics;
import wallchart.grading.PhysicsLimits;
import wallchart.people.NewPerson;
import wallchart.people.People;
import wallchart.people.Registration;
import wallchart.people.Role;
import wallchart.people.SignInSettings;
import wallchart.physics.BeamPhysics;
import wallchart.planning.ChartPlanner;
import wallchart.print.SheetRegister;
import wallchart.print.SheetSite;
import wallchart.print.WallSheets;
import wallchart.quantity.LengthUnit;
import wallchart.signoff.ImpactCalculation;
import wallchart.signoff.ReviewLimits;
import wallchart.signoff.SignoffDesk;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.SettableClock;
import wallchart.technique.LevelUnit;
import wallchart.technique.ReferenceLevel;
import wallchart.technique.TechniqueRules;
import wallchart.upkeep.EquipmentDesk;
import wallchart.upkeep.OutputDue;

/**
 * An invented department: room r1 with two versions of a chart, room r2 with equipment and no chart.
 *
 * <p>r1 since 2026-01-05: lumbar spine AP of 18 to 24 cm. Since 2026-02-02 also of 24 to 30 cm under AEC, the knee AP of 10 to 13
 * cm at tabletop and table bucky, and the adjustments {@code plaster} (+6 kV) and {@code lytic} (mAs x 0.75).
 */
final class Department {

    static final String FIRST_VERSION_FROM = "2026-01-05T07:00:00Z";
    static final String SECOND_VERSION_FROM = "2026-02-02T07:00:00Z";
    static final LocalDate REVIEW_DUE = LocalDate.parse("2027-02-02");

    private static final Actor PROGRAM = Actor.system("test");
    private static final BeamPhysics PHYSICS = BeamPhysics.load();
    private static final ReferenceLevel LUMBAR_SPINE = new ReferenceLevel(
            "LSPINE",
            "ap",
            "adult",
            ReferenceLevel.Quantity.ENTRANCE_SURFACE_AIR_KERMA,
            new BigDecimal("10"),
            LevelUnit.MILLIGRAY,
            1996,
            "IAEA Safety Series 115, Schedule III");

    private static final ChartPhysics GRADING =
            new ChartPhysics(PHYSICS, List.of(LUMBAR_SPINE), PhysicsLimits.DEFAULTS);

    private static final SheetSite SHEETS =
            new SheetSite("Test department", LengthUnit.CENTIMETRE, ChartRules.adultsOnly(), Optional.empty());

    private Department() {}

    /** Everything in that database; the clock then stands at the second version's first instant. */
    static Services found(Database database, SettableClock clock) {
        var people = new People(database, SignInSettings.DEFAULTS);
        var rooms = new Rooms(database);
        var charts = new Charts(database, rooms, ChartRules.adultsOnly());
        clock.set(FIRST_VERSION_FROM);
        install(rooms, EquipmentFixtures.aRoom());
        install(
                rooms,
                EquipmentFixtures.aRoom()
                        .withId("r2")
                        .withName("Room 2")
                        .uncalibrated()
                        .withoutAec());
        var lead = person(people, "first-lead", Role.LEAD);
        publish(charts, lead, 0, ChartFixtures.aChart().withBand(18, 24).content());
        clock.set(SECOND_VERSION_FROM);
        publish(charts, lead, 1, secondVersion());
        var desk = new SignoffDesk(
                database,
                rooms,
                charts,
                ChartRules.adultsOnly(),
                new ImpactCalculation(PHYSICS, ReviewLimits.DEFAULTS),
                GRADING,
                Period.ofYears(1));
        var audit = new AuditTrail(database, new Checkpoints(ledgerFolder()), records());
        return new Services(
                new SiteFacts(
                        "Test department",
                        LengthUnit.CENTIMETRE,
                        ChartRules.adultsOnly().patientGroups(),
                        false),
                rooms,
                charts,
                people,
                new TechniqueRules(PHYSICS, List.of(LUMBAR_SPINE)),
                GRADING,
                desk,
                new EquipmentDesk(rooms, charts, PHYSICS, clock),
                new OutputDue(Period.ofYears(1)),
                new ChartPlanner(rooms, charts, ChartRules.adultsOnly(), PHYSICS, desk),
                audit,
                new PackSeal(ledgerFolder()),
                new WallSheets(database, rooms, charts, audit, SHEETS),
                clock);
    }

    private static List<RecordCheck> records() {
        return Stream.concat(
                        Stream.of(Charts.records(), Rooms.records(), SheetRegister.records()),
                        People.records().stream())
                .toList();
    }

    /** Of its own for each department; in the build folder. */
    private static Path ledgerFolder() {
        return Path.of("target", "test-ledgers", UUID.randomUUID().toString());
    }

    private static ChartContent secondVersion() {
        return ChartFixtures.aChart()
                .with(ChartFixtures.aRow().withBand(18, 24).withMAs("20"))
                .with(ChartFixtures.aRow().withBand(24, 30).withAec(0, "125", Chamber.LEFT, Chamber.RIGHT))
                .with(aKnee().at(SupportKind.TABLETOP).withGrid("none").withMAs("3.2"))
                .with(aKnee().at(SupportKind.TABLE_BUCKY).withMAs("10"))
                .with(ChartFixtures.addingKV("plaster", "6"))
                .with(ChartFixtures.timesMAs("lytic", "0.75"))
                .content();
    }

    private static RowBuilder aKnee() {
        return ChartFixtures.aRow()
                .of("KNEE", "ap")
                .withBand(10, 13)
                .withKV("63")
                .with(FocalSpotName.SMALL)
                .withSid("100")
                .withReceptor("dr1", "24x30")
                .withMeasureAt("patella")
                .withCentring("1 cm below the apex of the patella")
                .withBreathing("");
    }

    static Actor person(People people, String name, Role role) {
        var added = people.add(PROGRAM, new NewPerson(name, "Pat " + name, role, password(name)));
        return ((Registration.Registered) added).person().asActor();
    }

    /** Long enough, and not the name. */
    static String password(String name) {
        return "three blue lamps and " + name.length() + " chairs";
    }

    private static void install(Rooms rooms, RoomBuilder room) {
        if (rooms.install(PROGRAM, room.document()) instanceof Installation.Refused refused) {
            throw new IllegalStateException("impossible room: " + refused.problems());
        }
    }

    private static void publish(Charts charts, Actor lead, int base, ChartContent content) {
        var draft = new Draft(
                "r1",
                base,
                content,
                "Chart " + (base + 1),
                "made for the tests of this service",
                "approved for use",
                Optional.empty(),
                REVIEW_DUE);
        var publication = charts.publish(lead, draft);
        if (!(publication instanceof Publication.Published)) {
            throw new IllegalStateException("not published: " + publication);
        }
    }
}
