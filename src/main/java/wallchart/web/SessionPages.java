package wallchart.web;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import wallchart.people.People;
import wallchart.people.SignIn;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Bodies;
import wallchart.web.request.Credentials;
import wallchart.web.request.Parameters;
import wallchart.web.view.Json;
import wallchart.web.view.SessionView;

/** Signing in and out. */
final class SessionPages {

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
            throw refused(result);
        }
    }

    private static RequestRefused refused(SignIn result) {
        if (result instanceof SignIn.Throttled wait) {
            var seconds = String.valueOf(Math.max(1, wait.retryAfter().toSeconds()));
            return new RequestRefused(Problem.of(
                            ProblemCode.TOO_MANY_ATTEMPTS,
                            "too many wrong passwords for this name: try again in " + seconds + " s")
                    .withHeader("Retry-After", seconds));
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
