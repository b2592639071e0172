package wallchart.web;

import io.javalin.http.Context;
import java.util.Set;
import wallchart.people.People;
import wallchart.signoff.SignoffDesk;
import wallchart.web.request.ChangeBodies;
import wallchart.web.request.ChangeSyntaxes;
import wallchart.web.request.Parameters;
import wallchart.web.view.ChangeView;

/** Steps of a change that somebody answers for by name: their password is asked again, before anything else is done. */
final class SignaturePages {

    private final SignoffDesk desk;
    private final People people;
    private final ChangeAnswers answers;

    SignaturePages(SignoffDesk desk, People people) {
        this.desk = desk;
        this.people = people;
        this.answers = new ChangeAnswers(desk);
    }

    void concur(Context ctx) {
        Parameters.none(ctx.queryString());
        var given = ChangeBodies.concurrence(ctx);
        var seen = answers.seen(ctx);
        PasswordAgain.require(ctx, people, given.password());
        answers.stepped(
                ctx, desk.concur(Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), given.impactDigest()));
    }

    void sign(Context ctx) {
        Parameters.none(ctx.queryString());
        var given = ChangeBodies.signature(ctx);
        var seen = answers.seen(ctx);
        PasswordAgain.require(ctx, people, given.password());
        answers.stepped(
                ctx,
                desk.sign(
                        Doorkeeper.actor(ctx),
                        seen.id(),
                        seen.head().revision(),
                        given.meaning(),
                        given.inForceFrom(),
                        given.impactDigest(),
                        given.reviewDue()));
    }

    void secondReview(Context ctx) {
        Parameters.none(ctx.queryString());
        var given = ChangeBodies.secondReview(ctx);
        var seen = answers.seen(ctx);
        PasswordAgain.require(ctx, people, given.password());
        answers.stepped(
                ctx,
                desk.recordSecondReview(
                        Doorkeeper.actor(ctx), seen.id(), seen.head().revision(), given.findings()));
    }

    void secondReviews(Context ctx) {
        var asked = Parameters.of(ctx.queryString(), Set.of("open"), Set.of());
        boolean open = asked.find("open", ChangeSyntaxes.TRUTH).orElse(true);
        asked.refuseMistakes();
        Answers.json(ctx, ChangeView.SecondReviews.of(desk.secondReviews(open)));
    }
}
