package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallchart.chart.PatientGroup;
import wallchart.equipment.Room;
import wallchart.print.ListedSheets;
import wallchart.print.PrintedSheet;
import wallchart.print.Printout;
import wallchart.print.WallSheets;
import wallchart.store.Actor;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;
import wallchart.web.request.SheetRequest;
import wallchart.web.request.Syntaxes;
import wallchart.web.view.SheetView;

/** Wall sheets: printed, listed, asked about by whoever stands before one, taken down. */
final class SheetPages {

    private static final String PDF = "application/pdf";
    private static final String PAGES = "Sheet-Pages";

    private final Services services;
    private final WallSheets sheets;
    private final boolean overTls;

    /** @param overTls whether browsers reach the service over TLS, by a proxy in front */
    SheetPages(Services services, boolean overTls) {
        this.services = services;
        this.sheets = services.sheets();
        this.overTls = overTls;
    }

    /** The PDF. Whoever only asks for its head prints nothing, so nothing is entered in the register. */
    void print(Context ctx) {
        var asked = SheetRequest.read(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms());
        ctx.res().setCharacterEncoding((String) null); // letters are the file's own affair
        ctx.res().setContentType(PDF);
        ctx.header("Accept-Ranges", "none"); // each GET is another sheet: there are no parts of one to fetch
        var wanted = wanted(ctx, room, asked);
        var printout = ctx.method() == HandlerType.HEAD ? sheets.foresee(wanted) : sheets.print(wanted);
        if (printout instanceof Printout.Foreseen foreseen) {
            head(ctx, foreseen.pages());
        } else if (printout instanceof Printout.Printed printed) {
            file(ctx, printed);
        } else {
            throw printout instanceof Printout.NoChart ? noChart(room) : nothing(room, asked);
        }
    }

    private WallSheets.Wanted wanted(Context ctx, Room room, SheetRequest asked) {
        var caller = Doorkeeper.caller(ctx);
        return new WallSheets.Wanted(
                actor(ctx, caller), name(caller), room.id(), asked.selection(), asked.paper(), ownAddress(ctx));
    }

    /** Says nothing of a length: a sheet that was not made has none. What was sent already cannot get a length of nothing. */
    private static void head(Context ctx, int pages) {
        ctx.header(PAGES, String.valueOf(pages));
        try {
            ctx.res().flushBuffer();
        } catch (IOException gone) {
            throw new UncheckedIOException("whoever asked for the head went away", gone);
        }
    }

    /** To be kept, not shown in place: a viewer in the browser asks again when it is reloaded, and each GET prints. */
    private static void file(Context ctx, Printout.Printed printed) {
        ctx.header(PAGES, String.valueOf(printed.pages()));
        ctx.header("Content-Disposition", "attachment; filename=\"" + fileName(printed.sheet()) + "\"");
        ctx.result(printed.file());
    }

    private static Actor actor(Context ctx, Caller caller) {
        return caller instanceof Caller.Workstation own
                ? Actor.workstation(own.room()).during(Standing.id(ctx.req()))
                : Doorkeeper.actor(ctx);
    }

    private static String name(Caller caller) {
        return caller instanceof Caller.Member member
                ? member.session().person().printedName()
                : "the workstation of room " + ((Caller.Workstation) caller).room();
    }

    /**
     * Where this service took the request: of the connection, not of a Host header, which whoever asks may forge. Behind a proxy that
     * speaks TLS it is no address for phones.
     */
    private Optional<String> ownAddress(Context ctx) {
        var ip = ctx.req().getLocalAddr().replaceAll("%.*", "");
        var host = ip.contains(":") && !ip.startsWith("[") ? "[" + ip + "]" : ip;
        return overTls
                ? Optional.empty()
                : Optional.of("http://" + host + ":" + ctx.req().getLocalPort());
    }

    private static String fileName(PrintedSheet sheet) {
        return "chart-" + sheet.room() + "-version-" + sheet.version() + "-"
                + sheet.paper().slug() + "-" + sheet.number().text() + ".pdf";
    }

    private static RequestRefused noChart(Room room) {
        return new RequestRefused(
                ProblemCode.NO_CHART_IN_FORCE,
                "room " + room.id()
                        + " has no chart in force, so there is nothing to print: ask the lead radiographer to sign one");
    }

    private static RequestRefused nothing(Room room, SheetRequest asked) {
        var wanted = asked.selection().patientGroup().isPresent() ? "patientGroup" : "region";
        return new RequestRefused(Problem.wrongFields(
                ProblemCode.INVALID_PARAMETER,
                List.of(new FieldError(
                        wanted,
                        null,
                        null,
                        "the chart of room " + room.id() + " has no row there: choose another group or region"))));
    }

    void list(Context ctx) {
        var parameters = Parameters.of(ctx.queryString(), Set.of("room"), Set.of());
        var room = parameters.find("room", Syntaxes.SLUG);
        parameters.refuseMistakes();
        answer(ctx, room.map(sheets::listed).orElseGet(sheets::listed));
    }

    void ofRoom(Context ctx) {
        Parameters.none(ctx.queryString());
        answer(ctx, sheets.listed(RoomInPath.id(ctx, services.rooms())));
    }

    private void answer(Context ctx, ListedSheets listed) {
        Answers.json(
                ctx,
                new SheetView.Register(
                        lines(listed.toTakeDown()),
                        listed.moreToTakeDown(),
                        lines(listed.newest()),
                        listed.moreSheets()));
    }

    private List<SheetView.Line> lines(List<PrintedSheet> printed) {
        return printed.stream()
                .map(sheet -> SheetView.Line.of(sheet, sheets.standing(sheet)))
                .toList();
    }

    /** For anybody: who stands before a sheet has its number, and nobody else guesses it. */
    void sheet(Context ctx) {
        Parameters.none(ctx.queryString());
        var sheet = find(ctx);
        ctx.header("ETag", "\"" + tag(sheet) + "\"");
        answer(ctx, sheet);
    }

    void takeDown(Context ctx) {
        Parameters.none(ctx.queryString());
        var seen = find(ctx);
        IfMatch.require(ctx, tag(seen));
        var now = sheets.takeDown(Doorkeeper.actor(ctx), seen.number()).orElseThrow();
        ctx.header("ETag", "\"" + tag(now) + "\"");
        answer(ctx, now);
    }

    private void answer(Context ctx, PrintedSheet sheet) {
        var group = sheet.selection().patientGroup().map(this::groupLabel).orElse(null);
        var roomName = services.rooms().find(sheet.room()).map(Room::name).orElse(sheet.room());
        Answers.json(
                ctx, SheetView.of(sheet, sheets.standing(sheet), services.site().name(), roomName, group));
    }

    private String groupLabel(String id) {
        return services.site().patientGroups().stream()
                .filter(group -> group.id().equals(id))
                .findFirst()
                .map(PatientGroup::label)
                .orElse(id);
    }

    private PrintedSheet find(Context ctx) {
        var number = SheetRequest.number(ctx);
        return sheets.find(number)
                .orElseThrow(() -> new RequestRefused(
                        ProblemCode.UNKNOWN_SHEET,
                        "no sheet " + number.grouped()
                                + " was printed here: compare the number with the one on the sheet; a sheet that is not in "
                                + "the register is no sheet of this department, take it down"));
    }

    private static String tag(PrintedSheet sheet) {
        return "sheet-" + sheet.number().text() + (sheet.takenDown().isPresent() ? "-taken-down" : "-printed");
    }
}
