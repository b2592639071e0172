package wallchart.web;

import io.javalin.http.Context;
import wallchart.signoff.SignoffDesk;
import wallchart.web.request.Bodies;
import wallchart.web.request.ChangeBodies;
import wallchart.web.request.Parameters;

/** Steps of a change that need no password: its author hands it in or takes it back, reviewers say no. */
final class ChangeStepPages {

    private final SignoffDesk desk;
    private final ChangeAnswers answers;

    ChangeStepPages(SignoffDesk desk) {
        this.desk = desk;
        this.answers = new ChangeAnswers(desk);
    }

    void submit(Context ctx) {
        Parameters.none(ctx.queryString());
        Bodies.nothing(ctx);
        var seen = answers.seen(ctx);
        answers.stepped(
                ctx, desk.submit(Doorkeeper.actor(ctx), seen.id(), seen.head().revision()));
    }

    void withdraw(Context ctx) {
        Parameters.none(ctx.queryString());
        Bodies.nothing(ctx);
        var seen = answers.seen(ctx);
        answers.stepped(
                ctx, desk.withdraw(Doorkeeper.actor(ctx), seen.id(), seen.head().revision()));
    }

    void giveBack(Context ctx) {
        Parameters.none(ctx.queryString());
        var reason = ChangeBodies.reason(ctx);
        var seen = answers.seen(ctx);
        answers.stepped(
                ctx, desk.giveBack(Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), reason));
    }

    void decline(Context ctx) {
        Parameters.none(ctx.queryString());
        var reason = ChangeBodies.reason(ctx);
        var seen = answers.seen(ctx);
        answers.stepped(
                ctx, desk.decline(Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), reason));
    }
}
