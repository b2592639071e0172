package wallchart.web;

import io.javalin.http.Context;
import java.util.Set;
import wallchart.signoff.ChangeFilter;
import wallchart.signoff.SignoffDesk;
import wallchart.web.request.ChangeBodies;
import wallchart.web.request.ChangeSyntaxes;
import wallchart.web.request.Parameters;
import wallchart.web.request.PathParameters;
import wallchart.web.request.Syntaxes;
import wallchart.web.view.ChangeHistoryView;
import wallchart.web.view.ChangeView;
import wallchart.web.view.FindingView;
import wallchart.web.view.ImpactView;

/** Proposed changes: opened, listed and looked at. */
final class ChangePages {

    private static final int USUAL_PAGE = 100;
    private static final Set<String> FILTERS = Set.of("state", "room", "before", "limit");

    private final Services services;
    private final SignoffDesk desk;
    private final ChangeAnswers answers;

    ChangePages(Services services) {
        this.services = services;
        this.desk = services.desk();
        this.answers = new ChangeAnswers(desk);
    }

    void open(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var asked = ChangeBodies.opening(ctx);
        answers.created(
                ctx,
                desk.open(
                        Doorkeeper.actor(ctx), room, asked.title(), asked.reason(), asked.baseVersion(), asked.kind()));
    }

    void revert(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var asked = ChangeBodies.revert(ctx);
        answers.created(ctx, desk.revertTo(Doorkeeper.actor(ctx), room, asked.version(), asked.reason()));
    }

    void list(Context ctx) {
        var asked = Parameters.of(ctx.queryString(), FILTERS, Set.of());
        int limit = asked.find("limit", ChangeSyntaxes.PAGE).orElse(USUAL_PAGE);
        var filter = new ChangeFilter(
                asked.find("state", ChangeSyntaxes.STATE),
                asked.find("room", Syntaxes.SLUG),
                asked.find("before", ChangeSyntaxes.CHANGE),
                limit);
        asked.refuseMistakes();
        Answers.json(ctx, ChangeView.Page.of(desk.list(filter), limit));
    }

    void change(Context ctx) {
        Parameters.none(ctx.queryString());
        ChangeAnswers.answer(ctx, answers.proposal(ctx));
    }

    void history(Context ctx) {
        Parameters.none(ctx.queryString());
        long id = PathParameters.id(ctx);
        var events = desk.history(id).orElseThrow(() -> ChangeAnswers.unknown(id));
        Answers.json(ctx, ChangeHistoryView.of(events, services.people()));
    }

    void findings(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, FindingView.All.of(answers.assessment(ctx).findings()));
    }

    void impact(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, ImpactView.of(answers.judged(ctx)));
    }
}
