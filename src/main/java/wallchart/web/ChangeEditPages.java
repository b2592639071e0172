package wallchart.web;

import io.javalin.http.Context;
import wallchart.signoff.SignoffDesk;
import wallchart.web.request.Bodies;
import wallchart.web.request.ChangeBodies;
import wallchart.web.request.EditBodies;
import wallchart.web.request.Parameters;
import wallchart.web.request.RowInPath;

/** What the author of a change does to its rows and adjustments. Each edit is answered with what is now to be said about the chart. */
final class ChangeEditPages {

    private final SignoffDesk desk;
    private final ChangeAnswers answers;

    ChangeEditPages(SignoffDesk desk) {
        this.desk = desk;
        this.answers = new ChangeAnswers(desk);
    }

    void rename(Context ctx) {
        Parameters.none(ctx.queryString());
        var words = ChangeBodies.words(ctx);
        var seen = answers.seen(ctx);
        answers.edited(
                ctx,
                desk.rename(Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), words.title(), words.reason()));
    }

    void putRow(Context ctx) {
        Parameters.none(ctx.queryString());
        var key = RowInPath.key(ctx);
        var fields = EditBodies.row(ctx, key);
        var seen = answers.seen(ctx);
        answers.edited(
                ctx, desk.putRow(Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), key, fields));
    }

    void withdrawRow(Context ctx) {
        Parameters.none(ctx.queryString());
        var key = RowInPath.key(ctx);
        Bodies.nothing(ctx);
        var seen = answers.seen(ctx);
        answers.edited(
                ctx,
                desk.withdrawRow(Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), key));
    }

    void undoRow(Context ctx) {
        Parameters.none(ctx.queryString());
        var key = RowInPath.key(ctx);
        Bodies.nothing(ctx);
        var seen = answers.seen(ctx);
        answers.edited(
                ctx, desk.undoRow(Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), key));
    }

    void putAdjustments(Context ctx) {
        Parameters.none(ctx.queryString());
        var wanted = EditBodies.adjustments(ctx);
        var seen = answers.seen(ctx);
        answers.edited(
                ctx,
                desk.putAdjustments(
                        Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), wanted));
    }

    void undoAdjustments(Context ctx) {
        Parameters.none(ctx.queryString());
        Bodies.nothing(ctx);
        var seen = answers.seen(ctx);
        answers.edited(
                ctx,
                desk.undoAdjustments(
                        Doorkeeper.actor(ctx), seen.id(), seen.head().revision()));
    }

    void catchUp(Context ctx) {
        Parameters.none(ctx.queryString());
        Bodies.nothing(ctx);
        var seen = answers.seen(ctx);
        answers.edited(
                ctx, desk.catchUp(Doorkeeper.actor(ctx), seen.id(), seen.head().revision()));
    }
}
