package wallchart.web;

import static wallchart.web.Access.ADMINISTRATOR;
import static wallchart.web.Access.ANYBODY;
import static wallchart.web.Access.LEAD;
import static wallchart.web.Access.PHYSICIST;
import static wallchart.web.Access.RADIOGRAPHER;
import static wallchart.web.Access.WORKSTATION;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Handler;

/** Every address of the service with its method, its handler and who may use it. */
final class Routes {

    private static final Access[] PEOPLE = {RADIOGRAPHER, LEAD, PHYSICIST, ADMINISTRATOR};
    private static final Access[] SUPERVISORS = {LEAD, PHYSICIST, ADMINISTRATOR};
    private static final Access[] ALL = {WORKSTATION, RADIOGRAPHER, LEAD, PHYSICIST, ADMINISTRATOR};

    private static final Access[] PROPOSERS = {RADIOGRAPHER, LEAD, PHYSICIST};
    private static final Access[] REVIEWERS = {LEAD, PHYSICIST};

    private static final String EQUIPMENT = "/api/v1/rooms/{room}/equipment";
    private static final String CHANGE = "/api/v1/changes/{id}";
    private static final String ROW = "/{bodyPart}/{projection}/{patientGroup}/{support}/{band}";

    private final RoutesConfig routes;
    private final CostlyTurns costly;

    private Routes(RoutesConfig routes) {
        this.routes = routes;
        this.costly = new CostlyTurns();
    }

    static void declare(RoutesConfig routes, Pages pages) {
        new Routes(routes).declare(pages);
    }

    private void declare(Pages pages) {
        // first, because routes are matched in this order and nothing is asked more often
        get("/api/v1/rooms/{room}/technique", pages.rooms()::technique, ALL);

        declareScreens(pages.screens());
        get("/docs", pages.documents()::docs, ANYBODY);
        get("/docs/{file}", pages.documents()::file, ANYBODY);
        get("/openapi.json", pages.documents()::openApi, ANYBODY);
        get("/problems/{code}", pages.documents()::problem, ANYBODY);

        get("/api/v1/health/live", pages.health()::live, ANYBODY);
        get("/api/v1/health/ready", pages.health()::ready, ANYBODY);

        routes.post("/api/v1/session", pages.session()::signIn, ANYBODY);
        get("/api/v1/session", pages.session()::whoAmI, PEOPLE);
        routes.delete("/api/v1/session", pages.session()::signOut, PEOPLE);

        routes.put("/api/v1/session/password", pages.session()::changePassword, PEOPLE);

        get("/api/v1/people", pages.people()::list, SUPERVISORS);
        routes.post("/api/v1/people", pages.people()::add, ADMINISTRATOR);
        get("/api/v1/people/{id}", pages.people()::person, SUPERVISORS);
        routes.put("/api/v1/people/{id}/role", pages.people()::changeRole, ADMINISTRATOR);
        routes.put("/api/v1/people/{id}/password", pages.people()::setPassword, ADMINISTRATOR);
        routes.post("/api/v1/people/{id}/disable", pages.people()::disable, ADMINISTRATOR);
        routes.post("/api/v1/people/{id}/enable", pages.people()::enable, ADMINISTRATOR);

        get("/api/v1/room-tokens", pages.roomTokens()::list, SUPERVISORS);
        routes.post("/api/v1/room-tokens", pages.roomTokens()::issue, ADMINISTRATOR);
        get("/api/v1/room-tokens/{id}", pages.roomTokens()::token, SUPERVISORS);
        routes.post("/api/v1/room-tokens/{id}/revoke", pages.roomTokens()::revoke, ADMINISTRATOR);

        get("/api/v1/site", pages.site()::site, ALL);
        get("/api/v1/rooms", pages.rooms()::list, ALL);
        get("/api/v1/rooms/{room}", pages.rooms()::room, ALL);
        get("/api/v1/rooms/{room}/pack", costly.unless(pages.packs()::isReady, pages.packs()::pack), ALL);

        get("/api/v1/charts/{room}/versions", pages.charts()::versions, PEOPLE);
        get("/api/v1/charts/{room}/versions/{number}", pages.charts()::version, PEOPLE);
        get("/api/v1/charts/{room}/versions/{number}/rows", pages.charts()::rows, PEOPLE);
        get("/api/v1/charts/{room}/versions/{number}/physics", costly.of(pages.chartPhysics()::physics), PEOPLE);
        get("/api/v1/charts/{room}/versions/{number}/courses", pages.chartPhysics()::courses, PEOPLE);
        get("/api/v1/charts/{room}/versions/{number}/findings", pages.charts()::findings, PEOPLE);
        get("/api/v1/charts/{room}/compare", pages.charts()::compare, PEOPLE);

        declareEquipment(pages);
        declareChanges(pages);
        declareSheets(pages.sheets());

        get("/api/v1/audit/events", pages.audit()::events, REVIEWERS);
        get("/api/v1/audit/events/{seq}", pages.audit()::event, REVIEWERS);
        get("/api/v1/audit/verification", pages.audit()::verification, REVIEWERS);
        routes.post("/api/v1/audit/reviews", pages.audit()::review, PHYSICIST);
        get("/api/v1/audit/export", pages.audit()::export, REVIEWERS);
    }

    private void declareScreens(Screens screens) {
        get("/", screens.home(), ANYBODY);
        get("/room-worker.js", screens.roomWorker(), ANYBODY);
        get("/rooms/{room}", screens.screen("room.html"), ANYBODY);
        get("/charts/{room}", screens.screen("chart.html"), ANYBODY);
        get("/changes", screens.screen("changes.html"), ANYBODY);
        get("/changes/{id}", screens.screen("change.html"), ANYBODY);
        get("/equipment/{room}", screens.screen("equipment.html"), ANYBODY);
        get("/audit", screens.screen("audit.html"), ANYBODY);
        get("/sheets", screens.screen("sheets.html"), ANYBODY);
        get("/sheets/{id}", screens.screen("sheet.html"), ANYBODY);
        get("/pages/{file}", screens.files()::file, ANYBODY);
        get("/pages/{folder}/{file}", screens.files()::file, ANYBODY);
    }

    private void declareSheets(SheetPages sheets) {
        get("/api/v1/rooms/{room}/sheet.pdf", costly.of(sheets::print), ALL);
        get("/api/v1/rooms/{room}/sheets", sheets::ofRoom, PEOPLE);
        get("/api/v1/sheets", sheets::list, PEOPLE);
        get("/api/v1/sheets/{id}", sheets::sheet, ANYBODY);
        routes.post("/api/v1/sheets/{id}/taken-down", sheets::takeDown, PEOPLE);
    }

    private void declareEquipment(Pages pages) {
        get(EQUIPMENT, pages.equipment()::inForce, PEOPLE);
        get(EQUIPMENT + "/calibration", pages.equipment()::calibration, PEOPLE);
        get(EQUIPMENT + "/revisions", pages.equipment()::revisions, PEOPLE);
        get(EQUIPMENT + "/revisions/{number}", pages.equipment()::revision, PEOPLE);
        get(EQUIPMENT + "/revisions/{number}/effects", costly.of(pages.equipment()::effects), PEOPLE);

        routes.put(EQUIPMENT, pages.equipmentEntries()::putWhole, PHYSICIST);
        routes.put(EQUIPMENT + "/tube/output", pages.equipmentEntries()::putOutput, PHYSICIST);
        routes.put(EQUIPMENT + "/grids/{grid}", pages.equipmentEntries()::putGrid, PHYSICIST);
        routes.post(EQUIPMENT + "/effects", costly.of(pages.equipmentEntries()::tryWhole), REVIEWERS);
        routes.post(EQUIPMENT + "/tube/output/effects", costly.of(pages.equipmentEntries()::tryOutput), REVIEWERS);
    }

    private void declareChanges(Pages pages) {
        routes.post("/api/v1/charts/{room}/changes", pages.changes()::open, PROPOSERS);
        routes.post("/api/v1/charts/{room}/reverts", pages.changes()::revert, PROPOSERS);
        routes.post("/api/v1/charts/{room}/plans", costly.of(pages.planning()::openPlan), PROPOSERS);
        routes.post("/api/v1/charts/{room}/plans/preview", costly.of(pages.planning()::previewPlan), PROPOSERS);
        routes.post("/api/v1/charts/{room}/transfers", costly.of(pages.planning()::openTransfer), PROPOSERS);
        routes.post("/api/v1/charts/{room}/transfers/preview", costly.of(pages.planning()::previewTransfer), PROPOSERS);
        get("/api/v1/changes", pages.changes()::list, PEOPLE);
        get(CHANGE, pages.changes()::change, PEOPLE);
        get(CHANGE + "/history", pages.changes()::history, PEOPLE);
        get(CHANGE + "/findings", pages.changes()::findings, PEOPLE);
        get(CHANGE + "/impact", pages.changes()::impact, PEOPLE);

        routes.put(CHANGE, pages.changeEdits()::rename, PROPOSERS);
        routes.put(CHANGE + "/rows" + ROW, pages.changeEdits()::putRow, PROPOSERS);
        routes.delete(CHANGE + "/rows" + ROW, pages.changeEdits()::withdrawRow, PROPOSERS);
        routes.delete(CHANGE + "/edits" + ROW, pages.changeEdits()::undoRow, PROPOSERS);
        routes.put(CHANGE + "/adjustments", pages.changeEdits()::putAdjustments, PROPOSERS);
        routes.delete(CHANGE + "/adjustments", pages.changeEdits()::undoAdjustments, PROPOSERS);
        routes.post(CHANGE + "/catch-up", pages.changeEdits()::catchUp, PROPOSERS);

        routes.post(CHANGE + "/submit", pages.changeSteps()::submit, PROPOSERS);
        routes.post(CHANGE + "/withdraw", pages.changeSteps()::withdraw, PROPOSERS);
        routes.post(CHANGE + "/return", pages.changeSteps()::giveBack, REVIEWERS);
        routes.post(CHANGE + "/decline", pages.changeSteps()::decline, LEAD);

        routes.post(CHANGE + "/concur", pages.signatures()::concur, PHYSICIST);
        routes.post(CHANGE + "/sign", pages.signatures()::sign, LEAD);
        routes.post(CHANGE + "/second-review", pages.signatures()::secondReview, PHYSICIST);
        get("/api/v1/second-reviews", pages.signatures()::secondReviews, PEOPLE);
    }

    /** GET, and HEAD with the same headers, handler and roles (RFC 9110 section 9.3.2). */
    private void get(String path, Handler handler, Access... roles) {
        routes.get(path, handler, roles);
        routes.head(path, handler, roles);
    }
}
