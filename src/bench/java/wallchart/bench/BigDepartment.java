package wallchart.bench;

import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.chart.Draft;
import wallchart.chart.Publication;
import wallchart.equipment.Rooms;
import wallchart.people.PeopleFixtures;
import wallchart.people.Role;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.DatabaseSettings;
import wallchart.store.Mode;

/** Departments of any size, all alike: 400 rows a room (40 examinations of 10 bands), 10 rows changed by each further version. */
final class BigDepartment {

    static final int ROWS = 400;
    static final int CHANGED_ROWS = 10;
    private static final int BANDS = 10;
    private static final List<String> PARTS = List.of(
            "HAND",
            "WRIST",
            "FOREARM",
            "ELBOW",
            "HUMERUS",
            "SHOULDER",
            "FOOT",
            "ANKLE",
            "LOWERLEG",
            "KNEE",
            "FEMUR",
            "HIP",
            "PELVIS",
            "SKULL",
            "CSPINE",
            "TSPINE",
            "LSPINE",
            "CHEST",
            "ABDOMEN",
            "SCAPULA");
    private static final List<String> PROJECTIONS = List.of("ap", "lateral");

    private BigDepartment() {}

    static String roomId(int room) {
        return "room-" + room;
    }

    /**
     * A department in a file under {@code target/bench}, filled at the first time (minutes for 500 rooms of 50 versions) and opened
     * again afterwards.
     */
    static Database open(int rooms, int versions) throws IOException {
        var folder = Files.createDirectories(Path.of("target", "bench"));
        var name = "department-" + rooms + "x" + versions;
        if (!Files.exists(folder.resolve(name + ".mv.db"))) {
            var unfinished = name + "-unfinished";
            Files.deleteIfExists(folder.resolve(unfinished + ".mv.db"));
            try (var database = open(folder.resolve(unfinished))) {
                fill(database, rooms, versions);
            }
            Files.move(folder.resolve(unfinished + ".mv.db"), folder.resolve(name + ".mv.db"));
        }
        return open(folder.resolve(name));
    }

    static Database open(Path file) {
        var url = "jdbc:h2:file:" + file.toAbsolutePath();
        return Database.open(new DatabaseSettings(url, "bench", "bench", 4), Mode.SITE, Clock.systemUTC());
    }

    /** Installs rooms and publishes their versions through the services. */
    static Charts fill(Database database, int rooms, int versions) {
        var lead = PeopleFixtures.aPerson(PeopleFixtures.peopleOf(database), "lead", Role.LEAD)
                .asActor();
        var installed = new Rooms(database);
        var charts = new Charts(database, installed, ChartRules.adultsOnly());
        for (int room = 0; room < rooms; room++) {
            installed.install(lead, aRoom().withId(roomId(room)).document());
            for (int version = 1; version <= versions; version++) {
                publish(charts, database, lead, roomId(room), version);
            }
        }
        return charts;
    }

    private static void publish(Charts charts, Database database, Actor lead, String room, int version) {
        var today = LocalDate.ofInstant(database.clock().instant(), ZoneOffset.UTC);
        var draft = new Draft(
                room,
                version - 1,
                content(version),
                "Version " + version,
                "Rows changed for the benchmark",
                "Approved for use in this room",
                Optional.empty(),
                today.plusYears(1));
        if (!(charts.publish(lead, draft) instanceof Publication.Published)) {
            throw new IllegalStateException("version " + version + " of " + room + " was not published");
        }
    }

    /** Version n differs from version n-1 in ten rows. */
    private static ChartContent content(int version) {
        var chart = aChart();
        for (int row = 0; row < ROWS; row++) {
            int from = 3 + 2 * (row % BANDS);
            var examination = row / BANDS;
            chart.with(aRow().of(PARTS.get(examination % PARTS.size()), PROJECTIONS.get(examination / PARTS.size()))
                    .withBand(from, from + 2)
                    .withKV(String.valueOf(60 + changes(row, version) % 20)));
        }
        return chart.content();
    }

    /** How often a row has been changed up to a version: versions change ten rows each, in turn. */
    private static int changes(int row, int version) {
        int turn = ROWS / CHANGED_ROWS;
        int group = row / CHANGED_ROWS;
        return (version - 1 + turn - group) / turn;
    }

    /** The path of one technique query; queries go through rooms, examinations and thicknesses in a fixed pseudo-random order. */
    static String technique(int request, int rooms) {
        int scattered = Math.floorMod(request * 0x9E3779B1, Integer.MAX_VALUE);
        int examination = scattered / 7 % (PARTS.size() * PROJECTIONS.size());
        int room = scattered / 3 % rooms;
        return "/api/v1/rooms/" + roomId(room) + "/technique?bodyPart=" + PARTS.get(examination % PARTS.size())
                + "&projection=" + PROJECTIONS.get(examination / PARTS.size()) + "&thicknessCm=" + (4 + scattered % 17)
                + ".4&sidCm=112";
    }
}
