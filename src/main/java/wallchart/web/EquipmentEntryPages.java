package wallchart.web;

import io.javalin.http.Context;
import java.util.Set;
import java.util.function.UnaryOperator;
import wallchart.upkeep.EquipmentDesk;
import wallchart.upkeep.EquipmentEntry;
import wallchart.upkeep.EquipmentOutcome;
import wallchart.upkeep.EquipmentOutcome.Entered;
import wallchart.upkeep.EquipmentOutcome.Possible;
import wallchart.upkeep.EquipmentOutcome.Refused;
import wallchart.upkeep.EquipmentOutcome.Stale;
import wallchart.web.problem.EquipmentFailures;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.EquipmentBodies;
import wallchart.web.request.Parameters;
import wallchart.web.view.EffectsView;
import wallchart.web.view.EquipmentView;

/** What the medical physicist enters about a room: all of its equipment, or a part that was measured. */
final class EquipmentEntryPages {

    /** Members beside the document; all else is wrong within it. */
    private static final Set<String> BESIDE = Set.of("/reason", "/confirmed", "/replacesMeasuredOn");

    private final Services services;
    private final EquipmentDesk desk;

    EquipmentEntryPages(Services services) {
        this.services = services;
        this.desk = services.upkeep();
    }

    void putWhole(Context ctx) {
        Parameters.none(ctx.queryString());
        enter(ctx, EquipmentBodies.whole(ctx), EquipmentEntryPages::inDocument);
    }

    void putOutput(Context ctx) {
        Parameters.none(ctx.queryString());
        enter(ctx, EquipmentBodies.output(ctx), UnaryOperator.identity());
    }

    void putGrid(Context ctx) {
        Parameters.none(ctx.queryString());
        enter(ctx, EquipmentBodies.grid(ctx), UnaryOperator.identity());
    }

    void tryWhole(Context ctx) {
        Parameters.none(ctx.queryString());
        tryOut(ctx, EquipmentBodies.whole(ctx), EquipmentEntryPages::inDocument);
    }

    void tryOutput(Context ctx) {
        Parameters.none(ctx.queryString());
        tryOut(ctx, EquipmentBodies.output(ctx), UnaryOperator.identity());
    }

    private static String inDocument(String field) {
        return BESIDE.contains(field) ? field : "/document" + field;
    }

    private void enter(Context ctx, EquipmentEntry entry, UnaryOperator<String> pointer) {
        var seen = EquipmentPages.newest(ctx, services);
        IfMatch.require(ctx, EquipmentTags.of(seen));
        var outcome = desk.enter(Doorkeeper.actor(ctx), seen.room().id(), seen.number(), entry);
        if (outcome instanceof Entered entered) {
            ctx.header("ETag", EquipmentTags.header(entered.after()));
            Answers.json(ctx, EquipmentView.EnteredView.of(entered));
            return;
        }
        throw refused(outcome, pointer);
    }

    private void tryOut(Context ctx, EquipmentEntry entry, UnaryOperator<String> pointer) {
        var outcome = desk.tryOut(RoomInPath.id(ctx, services.rooms()), entry);
        if (outcome instanceof Possible possible) {
            ctx.header("ETag", EquipmentTags.header(possible.before()));
            Answers.json(ctx, EffectsView.of(possible.before(), possible.effects()));
            return;
        }
        throw refused(outcome, pointer);
    }

    private static RequestRefused refused(EquipmentOutcome outcome, UnaryOperator<String> pointer) {
        var problem = EquipmentFailures.of((Refused) outcome, pointer);
        return new RequestRefused(
                outcome instanceof Stale stale
                        ? problem.withHeader("ETag", EquipmentTags.header(stale.newest()))
                        : problem);
    }
}
