package wallchart.web;

import io.javalin.event.HandlerMetaInfo;
import io.javalin.http.Context;
import io.javalin.http.HandlerType;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wallchart.people.People;
import wallchart.store.Actor;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** Lets a caller through to a route, or not: finds out who it is and holds that against the route's roles. */
final class Doorkeeper {

    private static final String CALLER = "wallchart.caller";
    private static final String BEARER = "bearer ";
    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD);

    private static final Set<String> OWN_SITE = Set.of("same-origin", "none");
    private static final Set<String> OWN_USES = Set.of("empty", "document");

    private final People people;
    private final SessionCookie cookie;

    Doorkeeper(People people, SessionCookie cookie) {
        this.people = people;
        this.cookie = cookie;
    }

    /** Refuses to start with a route that names nobody who may use it. */
    static void requireRoles(HandlerMetaInfo route) {
        if (route.getHttpMethod().isHttpMethod() && route.getRoles().isEmpty()) {
            throw new IllegalStateException("route " + route.getHttpMethod() + " " + route.getPath()
                    + " has no role: say who may use it, if need be ANYBODY");
        }
    }

    /** Ends the request unless its caller may use the route that it matched. */
    void admit(Context ctx) {
        var roles = ctx.routeRoles();
        if (roles.contains(Access.ANYBODY)) {
            return;
        }
        var caller = identify(ctx);
        if (!roles.contains(caller.access())) {
            throw notAllowed(caller);
        }
        requireOwnPages(caller, ctx);
        requireOwnRoom(caller, ctx.pathParamMap().get("room"));
        requireCsrfToken(caller, ctx);
        ctx.attribute(CALLER, caller);
    }

    /** Who sent the request; only on routes that need somebody. */
    static Caller caller(Context ctx) {
        return ctx.attribute(CALLER);
    }

    /** The person who sent the request, as the one who acts in it; only on routes for people. */
    static Actor actor(Context ctx) {
        var member = (Caller.Member) caller(ctx);
        return member.session().person().asActor().during(Standing.id(ctx.req()));
    }

    private Caller identify(Context ctx) {
        var authorization = ctx.header("Authorization");
        if (authorization != null) {
            return workstation(authorization);
        }
        return cookie.read(ctx)
                .flatMap(people::session)
                .<Caller>map(Caller.Member::new)
                .orElseThrow(() -> unauthorized(
                        ProblemCode.SIGN_IN_REQUIRED,
                        "this needs a room token (Authorization: Bearer …) or a session: sign in"));
    }

    private Caller workstation(String authorization) {
        if (!authorization.regionMatches(true, 0, BEARER, 0, BEARER.length())) {
            throw unauthorized(
                    ProblemCode.WRONG_TOKEN, "Authorization has another scheme: send Bearer and the room's token");
        }
        return people.roomOf(authorization.substring(BEARER.length()).strip())
                .map(token -> new Caller.Workstation(token.room()))
                .orElseThrow(() -> unauthorized(
                        ProblemCode.WRONG_TOKEN,
                        "the room token is unknown or revoked: ask your administrator for a new one"));
    }

    /** 401 as RFC 9110 wants it: saying how to authenticate. */
    static RequestRefused unauthorized(ProblemCode code, String detail) {
        return new RequestRefused(
                Problem.of(code, detail).withHeader("WWW-Authenticate", "Bearer realm=\"wallchart\""));
    }

    private static RequestRefused notAllowed(Caller caller) {
        var who = caller instanceof Caller.Workstation own
                ? "the workstation of room " + own.room()
                : "role " + caller.access().name().toLowerCase(Locale.ROOT);
        return new RequestRefused(ProblemCode.NOT_ALLOWED, who + " may not do this: ask somebody whose role allows it");
    }

    private static void requireOwnRoom(Caller caller, String room) {
        if (room != null && caller instanceof Caller.Workstation own && !own.mayRead(room)) {
            throw new RequestRefused(Problem.of(
                    ProblemCode.WRONG_ROOM,
                    "this token is for room " + own.room() + ", asked was room " + room
                            + ": a chart holds for its own room only",
                    "rooms",
                    List.of(own.room(), room)));
        }
    }

    /**
     * A session acts for our own pages and for what a person opens, not for another site's pages and not as a picture, frame or script.
     * Browsers say so (W3C Fetch Metadata); other programs say nothing and pass.
     */
    private static void requireOwnPages(Caller caller, Context ctx) {
        if (caller instanceof Caller.Member
                && !(saysOneOf(ctx, "Sec-Fetch-Site", OWN_SITE) && saysOneOf(ctx, "Sec-Fetch-Dest", OWN_USES))) {
            throw new RequestRefused(
                    ProblemCode.NOT_ALLOWED,
                    "a session is not for requests of other sites, nor for pictures, frames or scripts: open the address itself");
        }
    }

    private static boolean saysOneOf(Context ctx, String header, Set<String> taken) {
        var said = ctx.header(header);
        return said == null || taken.contains(said);
    }

    private static void requireCsrfToken(Caller caller, Context ctx) {
        var token = ctx.header("X-CSRF-Token");
        if (caller instanceof Caller.Member member
                && !READING.contains(ctx.method())
                && (token == null || !member.session().acceptsCsrfToken(token))) {
            throw new RequestRefused(
                    ProblemCode.CSRF_TOKEN, "X-CSRF-Token is missing or wrong: send the csrfToken of the sign-in");
        }
    }
}
