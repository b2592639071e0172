package wallchart.web;

import io.javalin.http.Context;
import wallchart.planning.ChartPlanner;
import wallchart.planning.Planned;
import wallchart.web.problem.Failures;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;
import wallchart.web.request.PlanBodies;
import wallchart.web.request.TransferBodies;
import wallchart.web.view.DraftedView;

/** Charts drafted by the beam model: to look at, or as a change. */
final class PlanningPages {

    private final Services services;
    private final ChartPlanner planner;
    private final ChangeAnswers answers;

    PlanningPages(Services services) {
        this.services = services;
        this.planner = services.planner();
        this.answers = new ChangeAnswers(services.desk());
    }

    void previewPlan(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        answer(ctx, planner.preview(room, PlanBodies.plan(ctx)));
    }

    void openPlan(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var asked = PlanBodies.opening(ctx);
        answer(ctx, planner.open(Doorkeeper.actor(ctx), room, asked.title(), asked.reason(), asked.plan()));
    }

    void previewTransfer(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var asked = TransferBodies.transfer(ctx);
        answer(ctx, planner.preview(room, asked.baseVersion(), asked.transfer()));
    }

    void openTransfer(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var asked = TransferBodies.opening(ctx);
        answer(
                ctx,
                planner.open(
                        Doorkeeper.actor(ctx),
                        room,
                        asked.title(),
                        asked.reason(),
                        asked.baseVersion(),
                        asked.transfer()));
    }

    private void answer(Context ctx, Planned planned) {
        if (planned instanceof Planned.Refused refused) {
            throw new RequestRefused(Failures.of(refused.why(), ProblemCode.UNKNOWN_VERSION));
        }
        if (planned instanceof Planned.Opened opened) {
            answers.created(ctx, opened.change(), change -> DraftedView.of(change, opened.proposal()));
        } else {
            Answers.json(ctx, DraftedView.of(((Planned.Drawn) planned).proposal()));
        }
    }
}
