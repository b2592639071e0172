package wallchart.web;

import io.javalin.http.Context;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wallchart.people.Confirmation;
import wallchart.people.People;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** The password of somebody who is signed in, asked again before what only they may do; wrong ones count as at sign-in. */
final class PasswordAgain {

    private static final Logger LOG = LoggerFactory.getLogger(PasswordAgain.class);

    private PasswordAgain() {}

    /** Ends the request unless it is the password of the person who sent it. */
    static void require(Context ctx, People people, String password) {
        var person = ((Caller.Member) Doorkeeper.caller(ctx)).session().person();
        var confirmation = people.confirm(person, password, ctx.ip());
        if (confirmation instanceof Confirmation.Throttled wait) {
            throw throttled(ctx, wait.retryAfter());
        }
        if (confirmation instanceof Confirmation.Refused) {
            throw new RequestRefused(ProblemCode.WRONG_PASSWORD, "the current password is not right: try again");
        }
    }

    /** Also tells whoever keeps the service running: somebody may be guessing. */
    static RequestRefused throttled(Context ctx, Duration wait) {
        LOG.warn("request {}: too many wrong passwords for one name from {}", Standing.id(ctx.req()), ctx.ip());
        var seconds = String.valueOf(Math.max(1, wait.toSeconds()));
        return new RequestRefused(Problem.of(
                        ProblemCode.TOO_MANY_ATTEMPTS,
                        "too many wrong passwords for this name: try again in " + seconds + " s")
                .withHeader("Retry-After", seconds));
    }
}
