package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import wallchart.people.RoomToken;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.AccountBodies;
import wallchart.web.request.Parameters;
import wallchart.web.request.PathParameters;
import wallchart.web.view.RoomTokenView;

/** The tokens of the rooms' workstations. */
final class RoomTokenPages {

    private static final String ASK_AGAIN = "private, no-cache";

    private final Services services;

    RoomTokenPages(Services services) {
        this.services = services;
    }

    void list(Context ctx) {
        Parameters.none(ctx.queryString());
        Answers.json(ctx, RoomTokenView.All.of(services.people().roomTokens()));
    }

    void token(Context ctx) {
        Parameters.none(ctx.queryString());
        var token = find(ctx);
        if (!Answers.isKnown(ctx, tag(token), ASK_AGAIN)) {
            Answers.json(ctx, RoomTokenView.of(token));
        }
    }

    void issue(Context ctx) {
        Parameters.none(ctx.queryString());
        var asked = AccountBodies.token(ctx);
        if (services.rooms().find(asked.room()).isEmpty()) {
            throw AccountBodies.wrong("/room", "is no room of this department: see GET /api/v1/rooms");
        }
        var issued = issue(ctx, asked);
        ctx.status(HttpStatus.CREATED)
                .header("Location", "/api/v1/room-tokens/" + issued.token().id());
        ctx.header("ETag", "\"" + tag(issued.token()) + "\"");
        Answers.json(ctx, RoomTokenView.of(issued.token()).with(issued.secret()));
    }

    private RoomToken.Issued issue(Context ctx, AccountBodies.NewToken asked) {
        try {
            return services.people().issueRoomToken(Doorkeeper.actor(ctx), asked.room(), asked.label());
        } catch (IllegalArgumentException unusable) {
            throw AccountBodies.wrong("/label", unusable.getMessage());
        }
    }

    /** A token is revoked for good, so two who revoke it at once want the same. */
    void revoke(Context ctx) {
        Parameters.none(ctx.queryString());
        var seen = find(ctx);
        IfMatch.require(ctx, tag(seen));
        var revoked = services.people()
                .revokeRoomToken(Doorkeeper.actor(ctx), seen.id())
                .orElseThrow();
        ctx.header("ETag", "\"" + tag(revoked) + "\"");
        Answers.json(ctx, RoomTokenView.of(revoked));
    }

    private RoomToken find(Context ctx) {
        long id = PathParameters.id(ctx);
        return services.people()
                .findRoomToken(id)
                .orElseThrow(() -> new RequestRefused(
                        ProblemCode.UNKNOWN_ROOM_TOKEN,
                        "room token " + id + " is unknown: see GET /api/v1/room-tokens"));
    }

    private static String tag(RoomToken token) {
        return "room-token-" + token.id() + (token.revokedAt().isPresent() ? "-revoked" : "-in-use");
    }
}
