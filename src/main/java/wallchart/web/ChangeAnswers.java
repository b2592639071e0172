package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.function.Function;
import wallchart.signoff.Assessment;
import wallchart.signoff.Change;
import wallchart.signoff.Outcome;
import wallchart.signoff.Proposal;
import wallchart.signoff.SignoffDesk;
import wallchart.web.problem.Failures;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.PathParameters;
import wallchart.web.view.ProposalView;

/**
 * How the pages about changes find one, hold a caller to what they saw, and answer.
 *
 * <p>The entity tag names the revision: what a step is conditional on. A change is read anew each time, never answered with 304,
 * since what it makes of the chart also moves with the versions of others.
 */
final class ChangeAnswers {

    private static final String CHANGES = "/api/v1/changes/";

    private final SignoffDesk desk;

    ChangeAnswers(SignoffDesk desk) {
        this.desk = desk;
    }

    /** The change that the address names, if the caller saw it as it stands; or the end of the request. */
    Change seen(Context ctx) {
        long id = PathParameters.id(ctx);
        var change = desk.find(id).orElseThrow(() -> unknown(id));
        IfMatch.require(ctx, tag(change));
        return change;
    }

    /** The same with what it does; whatever the caller saw. */
    Proposal proposal(Context ctx) {
        return proposal(PathParameters.id(ctx));
    }

    private Proposal proposal(long id) {
        return desk.proposal(id).orElseThrow(() -> unknown(id));
    }

    static RequestRefused unknown(long id) {
        return new RequestRefused(ProblemCode.UNKNOWN_CHANGE, "change " + id + " is unknown: see GET /api/v1/changes");
    }

    /** The same with findings and impact. */
    Assessment assessment(Context ctx) {
        return assessment(PathParameters.id(ctx));
    }

    /** The same with impact, and without what takes long. */
    Assessment judged(Context ctx) {
        long id = PathParameters.id(ctx);
        return desk.judged(id).orElseThrow(() -> unknown(id));
    }

    private Assessment assessment(long id) {
        return desk.assessment(id).orElseThrow(() -> unknown(id));
    }

    /** A change that was opened. */
    void created(Context ctx, Outcome outcome) {
        var made = done(ctx, outcome, ProblemCode.UNKNOWN_VERSION);
        ctx.status(HttpStatus.CREATED).header("Location", CHANGES + made.id());
        answer(ctx, proposal(made.id()));
    }

    /** A change that was opened, shown beside what led to it. */
    void created(Context ctx, Change made, Function<ProposalView, Object> view) {
        ctx.status(HttpStatus.CREATED).header("Location", CHANGES + made.id());
        tell(ctx, made);
        Answers.json(ctx, view.apply(ProposalView.of(proposal(made.id()))));
    }

    /** The change after a step. */
    void stepped(Context ctx, Outcome outcome) {
        answer(ctx, proposal(done(ctx, outcome, ProblemCode.UNKNOWN_CHANGE).id()));
    }

    /** The change after an edit, with what is to be said about the chart now. */
    void edited(Context ctx, Outcome outcome) {
        var assessment = assessment(done(ctx, outcome, ProblemCode.UNKNOWN_ROW).id());
        tell(ctx, assessment.proposal().change());
        Answers.json(ctx, ProposalView.of(assessment));
    }

    static void answer(Context ctx, Proposal proposal) {
        tell(ctx, proposal.change());
        Answers.json(ctx, ProposalView.of(proposal));
    }

    private Change done(Context ctx, Outcome outcome, ProblemCode missing) {
        if (outcome instanceof Outcome.Refused refused) {
            var problem = Failures.of(refused, missing);
            throw new RequestRefused(
                    refused.kind() == Outcome.Kind.STALE ? problem.withHeader("ETag", newest(ctx)) : problem);
        }
        return ((Outcome.Done) outcome).change();
    }

    /** What the caller would have had to see: somebody else was faster by the blink of an eye. */
    private String newest(Context ctx) {
        long id = PathParameters.id(ctx);
        return header(desk.find(id).orElseThrow(() -> unknown(id)));
    }

    private static void tell(Context ctx, Change change) {
        ctx.header("ETag", header(change));
    }

    private static String header(Change change) {
        return "\"" + tag(change) + "\"";
    }

    private static String tag(Change change) {
        return "change-" + change.id() + "-" + change.head().revision();
    }
}
