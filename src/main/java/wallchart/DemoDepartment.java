package wallchart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import wallchart.Refusals.Refused;
import wallchart.grading.ChartPhysics;
import wallchart.people.People;
import wallchart.people.Person;
import wallchart.people.Registration;
import wallchart.people.Role;
import wallchart.physics.BeamPhysics;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.DatabaseSettings;
import wallchart.store.Mode;
import wallchart.upkeep.EquipmentDesk;

/**
 * The invented department: people and room tokens that everybody knows, rooms and versions loaded through the services, a database
 * file of its own that no site can be served from.
 */
final class DemoDepartment {

    /** The demo's database holds nothing secret; H2 wants some password. */
    private static final String OWNER = "demo";

    private static final String FILE_NAME = "wallchart-demo";
    private static final String LEDGER = FILE_NAME + ".ledger";
    private static final int POOL_SIZE = 5;

    /** Before the oldest version of the files; people are added while those are still being read. */
    private static final int ACCOUNTS_SINCE_DAYS = 400;

    private static final Actor BY = Actor.system("demo");

    private final Path data;
    private final Path folder;
    private final boolean keep;
    private final Settings settings;

    /**
     * @param data the department's files
     * @param folder where the database file goes
     * @param port 0 for any free one
     * @param keep go on with an earlier demo's database
     */
    DemoDepartment(Path data, Path folder, int port, boolean keep) {
        this.data = data;
        this.folder = folder;
        this.keep = keep;
        var site = SettingsFile.read(data.resolve("site.yaml"));
        this.settings = new Settings(
                new Settings.Server("127.0.0.1", port, false),
                site.database(),
                site.site(),
                site.patientGroups(),
                site.chart(),
                site.referenceLevels(),
                site.session(),
                site.ledger(),
                site.reviewLimits(),
                site.physicsLimits(),
                site.equipment());
    }

    Settings settings() {
        return settings;
    }

    Application start(Clock clock) {
        makeFolder();
        if (!keep) {
            removeOldDatabase();
        }
        var physics = CompletableFuture.supplyAsync(BeamPhysics::load);
        var url = "jdbc:h2:file:" + folder.toAbsolutePath().resolve(FILE_NAME);
        var database = Database.open(new DatabaseSettings(url, OWNER, OWNER, POOL_SIZE), Mode.DEMO, clock);
        var people = Application.people(settings, database);
        if (people.list().isEmpty()) {
            fill(database, people, physics);
        }
        return Application.start(settings, database, folder.resolve(LEDGER), clock, physics);
    }

    private void makeFolder() {
        try {
            Files.createDirectories(folder);
        } catch (IOException failed) {
            throw new Refused(folder + " cannot be made: " + failed.getMessage());
        }
    }

    private void removeOldDatabase() {
        for (var ending : List.of(
                ".mv.db", ".trace.db", ".ledger/checkpoints.ndjson", ".ledger/ledger.key", ".ledger/ledger.pub")) {
            try {
                Files.deleteIfExists(folder.resolve(FILE_NAME + ending));
            } catch (IOException failed) {
                throw new Refused("the last demo's database cannot be removed: " + failed.getMessage());
            }
        }
    }

    private void fill(Database database, People people, CompletableFuture<BeamPhysics> physics) {
        try {
            var files = new DepartmentFolder(data);
            var reading = CompletableFuture.supplyAsync(files::rooms);
            var now = database.clock().instant();
            var before = DemoHistory.daysBefore(now, ACCOUNTS_SINCE_DAYS);
            var byName = addPeople(Application.people(settings, database.at(before)), files.people());
            var loader = new DepartmentLoader(database, settings.chartRules(), line -> {});
            var rooms = reading.join();
            var grading = new ChartPhysics(physics.join(), settings.referenceLevels(), settings.physicsLimits());
            var desk = Application.desk(settings, database, loader.rooms(), loader.charts(), physics.join(), grading);
            var upkeep = new EquipmentDesk(loader.rooms(), loader.charts(), physics.join(), database.clock());
            new DemoHistory(now, loader, byName)
                    .with(rooms)
                    .with(new DemoMeasurements(upkeep, loader.rooms(), files.measurements()))
                    .with(new DemoChanges(desk, files.changes()))
                    .tell();
            rooms.forEach(room -> people.issueDemonstrationToken(BY, room.room()));
        } catch (RuntimeException failed) {
            database.close();
            throw failed;
        }
    }

    private static Map<String, Person> addPeople(People people, List<DepartmentDocument.PersonPart> parts) {
        var byName = new HashMap<String, Person>();
        for (var part : parts) {
            var registration =
                    people.addDemonstrationPerson(BY, part.name(), part.printedName(), Role.ofSlug(part.role()));
            if (!(registration instanceof Registration.Registered registered)) {
                throw new Refused("demo person " + part.name() + ": " + registration);
            }
            byName.put(part.name(), registered.person());
        }
        return byName;
    }
}
