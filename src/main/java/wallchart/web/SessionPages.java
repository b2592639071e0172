package wallchart.web;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import wallchart.people.People;
import wallchart.people.Registration;
import wallchart.people.SignIn;
import wallchart.web.problem.Failures;
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
        PasswordAgain.require(ctx, people, asked.current());
        if (people.setOwnPassword(Doorkeeper.actor(ctx), session, asked.next())
                instanceof Registration.Refused refused) {
            throw new RequestRefused(Failures.of(refused, "/next"));
        }
        ctx.status(HttpStatus.NO_CONTENT);
    }

    private static RequestRefused refused(Context ctx, SignIn result) {
        if (result instanceof SignIn.Throttled wait) {
            return PasswordAgain.throttled(ctx, wait.retryAfter());
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
