package wallchart;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Period;
import java.util.concurrent.CompletableFuture;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.LedgerKeeper;
import wallchart.audit.PackSeal;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.grading.ChartPhysics;
import wallchart.people.People;
import wallchart.people.SignInSettings;
import wallchart.physics.BeamPhysics;
import wallchart.planning.ChartPlanner;
import wallchart.print.SheetSite;
import wallchart.print.WallSheets;
import wallchart.signoff.ImpactCalculation;
import wallchart.signoff.SignoffDesk;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.technique.TechniqueRules;
import wallchart.upkeep.EquipmentDesk;
import wallchart.upkeep.OutputDue;
import wallchart.web.Services;
import wallchart.web.SiteFacts;
import wallchart.web.WebServer;
import wallchart.web.WebSettings;

/**
 * The running service: everything is built here, in order, and closed in reverse. A newcomer reads {@link #start} once and knows
 * the program; a test starts the very same one on port 0.
 */
public final class Application implements AutoCloseable {

    private final Database database;
    private final LedgerKeeper keeper;
    private final WebServer server;

    private Application(Database database, LedgerKeeper keeper, WebServer server) {
        this.database = database;
        this.keeper = keeper;
        this.server = server;
    }

    /**
     * Starts the service on an open database, which it closes with itself.
     *
     * @param ledgerFolder where the ledger's checkpoints and their key are kept; of this database alone
     * @throws RuntimeException with one line for people if it cannot; the database is closed then
     */
    public static Application start(Settings settings, Database database, Path ledgerFolder, Clock clock) {
        var physics = CompletableFuture.supplyAsync(BeamPhysics::load); // while the charts are read
        return start(settings, database, ledgerFolder, clock, physics);
    }

    /** The same with a beam model that somebody has begun to read already. */
    static Application start(
            Settings settings,
            Database database,
            Path ledgerFolder,
            Clock clock,
            CompletableFuture<BeamPhysics> physics) {
        try {
            var rooms = new Rooms(database);
            var charts = new Charts(database, rooms, settings.chartRules());
            var people = people(settings, database);
            var technique = new TechniqueRules(physics.join(), settings.referenceLevels());
            var grading = new ChartPhysics(physics.join(), settings.referenceLevels(), settings.physicsLimits());
            var desk = desk(settings, database, rooms, charts, physics.join(), grading);
            var checkpoints = new Checkpoints(ledgerFolder);
            var audit = new AuditTrail(database, checkpoints, LedgerRecords.all());
            var sheets = new WallSheets(database, rooms, charts, audit, sheetSite(settings));
            var upkeep = new EquipmentDesk(rooms, charts, physics.join(), database.clock());
            var planner = new ChartPlanner(rooms, charts, settings.chartRules(), physics.join(), desk);
            var due = new OutputDue(Period.ofMonths(settings.equipment().outputDueMonths()));
            var services = new Services(
                    facts(settings, database),
                    rooms,
                    charts,
                    people,
                    technique,
                    grading,
                    desk,
                    upkeep,
                    due,
                    planner,
                    audit,
                    new PackSeal(ledgerFolder),
                    sheets,
                    clock);
            var server = WebServer.start(webSettings(settings), services);
            return new Application(database, LedgerKeeper.start(database, checkpoints), server);
        } catch (RuntimeException failed) {
            database.close();
            throw failed;
        }
    }

    static People people(Settings settings, Database database) {
        var standard = SignInSettings.DEFAULTS;
        return new People(
                database,
                new SignInSettings(
                        settings.session().idle(),
                        settings.session().absolute(),
                        standard.wrongPasswords(),
                        standard.window()));
    }

    static SignoffDesk desk(
            Settings settings,
            Database database,
            Rooms rooms,
            Charts charts,
            BeamPhysics physics,
            ChartPhysics grading) {
        return new SignoffDesk(
                database,
                rooms,
                charts,
                settings.chartRules(),
                new ImpactCalculation(physics, settings.reviewLimits()),
                grading,
                Period.ofMonths(settings.chart().reviewAfterMonths()));
    }

    private static SiteFacts facts(Settings settings, Database database) {
        return new SiteFacts(
                settings.site().name(),
                settings.site().lengthUnit(),
                settings.patientGroups(),
                database.mode() == Mode.DEMO);
    }

    private static SheetSite sheetSite(Settings settings) {
        return new SheetSite(
                settings.site().name(),
                settings.site().lengthUnit(),
                settings.chartRules(),
                settings.site().address());
    }

    private static WebSettings webSettings(Settings settings) {
        return new WebSettings(
                settings.server().host(),
                settings.server().port(),
                settings.server().secureCookies());
    }

    /** The port it listens on. */
    public int port() {
        return server.port();
    }

    /** Finishes the requests under way, then closes the database. */
    @Override
    public void close() {
        server.close();
        keeper.close();
        database.close();
    }
}
