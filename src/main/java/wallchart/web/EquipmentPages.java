package wallchart.web;

import io.javalin.http.Context;
import java.util.List;
import wallchart.equipment.RevisionHistory;
import wallchart.equipment.RoomRevision;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;
import wallchart.web.request.PathParameters;
import wallchart.web.view.CalibrationView;
import wallchart.web.view.EffectsView;
import wallchart.web.view.EquipmentView;

/** A room's equipment and its history, for people. A revision never changes. */
final class EquipmentPages {

    private static final String ASK_AGAIN = "private, no-cache";
    private static final String FOR_EVER = "private, max-age=31536000, immutable";

    private final Services services;

    EquipmentPages(Services services) {
        this.services = services;
    }

    void inForce(Context ctx) {
        Parameters.none(ctx.queryString());
        answer(ctx, newest(ctx, services), ASK_AGAIN);
    }

    void revision(Context ctx) {
        Parameters.none(ctx.queryString());
        answer(ctx, inPath(ctx), FOR_EVER);
    }

    private void answer(Context ctx, RoomRevision revision, String keeping) {
        if (!Answers.isKnown(ctx, EquipmentTags.of(revision), keeping)) {
            var room = revision.room().id();
            var told = history(room).get(revision.number() - 1);
            var document = services.rooms().findDocument(room, revision.number());
            Answers.json(ctx, EquipmentView.of(told, document.orElseThrow()));
        }
    }

    void revisions(Context ctx) {
        Parameters.none(ctx.queryString());
        var newest = newest(ctx, services);
        if (!Answers.isKnown(ctx, EquipmentTags.of(newest), ASK_AGAIN)) {
            var room = newest.room().id();
            Answers.json(ctx, EquipmentView.History.of(room, history(room)));
        }
    }

    void effects(Context ctx) {
        Parameters.none(ctx.queryString());
        var revision = inPath(ctx);
        var report = services.upkeep()
                .effects(revision)
                .orElseThrow(() -> new RequestRefused(
                        ProblemCode.UNKNOWN_REVISION,
                        "revision 1 is the first of room " + revision.room().id()
                                + ": there is none before it to compare it with"));
        var before = services.rooms().revisions(revision.room().id()).get(revision.number() - 2);
        Answers.json(ctx, EffectsView.of(before, report));
    }

    void calibration(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, CalibrationView.of(services.upkeep().calibration(newest(ctx, services))));
    }

    /** The revision in force of the room that the address names, or the end of the request. */
    static RoomRevision newest(Context ctx, Services services) {
        var revisions = services.rooms().revisions(RoomInPath.id(ctx, services.rooms()));
        return revisions.get(revisions.size() - 1);
    }

    /** Revisions have no gaps and begin at 1. */
    private RoomRevision inPath(Context ctx) {
        var room = RoomInPath.id(ctx, services.rooms());
        int number = PathParameters.version(ctx);
        var revisions = services.rooms().revisions(room);
        if (number > revisions.size()) {
            throw new RequestRefused(
                    ProblemCode.UNKNOWN_REVISION,
                    "the equipment of room " + room + " has no revision " + number + ": see GET /api/v1/rooms/" + room
                            + "/equipment/revisions");
        }
        return revisions.get(number - 1);
    }

    private List<RevisionHistory> history(String room) {
        return services.rooms().history(room);
    }
}
