package wallchart.web;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import wallchart.people.Confirmation;
import wallchart.people.People;
import wallchart.people.Registration;
import wallchart.people.SignIn;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.AccountBodies;
import wallchart.web.request.Bodies;
import wallchart.web.request.Credentials;
import wallchart.web.request.Parameters;
import wallchart.web.view.Json;
import wallchart.web.view.SessionView;

/** Signing in and out. */
final class SessionPages {

    private static final Logger LOG = LoggerFactory.getLogger(SessionPages.class);
    private static final ObjectReader CREDENTIALS = Json.readerFor(Credentials.class);

    private final People people;
    private final SessionCookie cookie;

    SessionPages(People people, SessionCookie cookie) {
        this.people = people;
        this.cookie = cookie;
    }

    void signIn(Context ctx) {
        Parameters.none(ctx.queryString());
        var given = Bodies.<Credentials>readJson(ctx, CREDENTIALS).checked();
        var result = people.signIn(given.name(), given.password(), ctx.ip());
        if (result instanceof SignIn.SignedIn in) {
            cookie.write(ctx, in.sessionToken());
            Answers.json(ctx, SessionView.of(in.person(), in.expires()).with(in.csrfToken()));
        } else {
            throw refused(ctx, result);
        }
    }

    /** Sets one's own password; its condition is the password there is, so it takes no If-Match. */
    void changePassword(Context ctx) {
        Parameters.none(ctx.queryString());
        var asked = AccountBodies.ownPassword(ctx);
        var session = ((Caller.Member) Doorkeeper.caller(ctx)).session();
        var confirmation = people.confirm(session.person(), asked.current(), ctx.ip());
        if (confirmation instanceof Confirmation.Throttled wait) {
            throw throttled(ctx, wait.retryAfter());
        }
        if (confirmation instanceof Confirmation.Refused) {
            throw new RequestRefused(ProblemCode.WRONG_PASSWORD, "the current password is not right: try again");
        }
        if (people.setOwnPassword(Doorkeeper.actor(ctx), session, asked.next())
                instanceof Registration.Refused refused) {
            throw new RequestRefused(Failures.of(refused, "/next"));
        }
        ctx.status(HttpStatus.NO_CONTENT);
    }

    /** Also tells whoever keeps the service running: somebody may be guessing. */
    private static RequestRefused throttled(Context ctx, Duration wait) {
        LOG.warn("request {}: too many wrong passwords for one name from {}", Standing.id(ctx.req()), ctx.ip());
        var seconds = String.valueOf(Math.max(1, wait.toSeconds()));
        return new RequestRefused(Problem.of(
                        ProblemCode.TOO_MANY_ATTEMPTS,
                        "too many wrong passwords for this name: try again in " + seconds + " s")
                .withHeader("Retry-After", seconds));
    }

    private static RequestRefused refused(Context ctx, SignIn result) {
        if (result instanceof SignIn.Throttled wait) {
            return throttled(ctx, wait.retryAfter());
        }
        return Doorkeeper.unauthorized(ProblemCode.WRONG_NAME_OR_PASSWORD, ((SignIn.Refused) result).text());
    }

    void whoAmI(Context ctx) {
        Parameters.none(ctx.queryString());
        var session = ((Caller.Member) Doorkeeper.caller(ctx)).session();
        Answers.json(ctx, SessionView.of(session.person(), session.expires()));
    }

    void signOut(Context ctx) {
        Parameters.none(ctx.queryString());
        cookie.read(ctx).ifPresent(people::signOut);
        cookie.clear(ctx);
        ctx.status(HttpStatus.NO_CONTENT);
    }
}
