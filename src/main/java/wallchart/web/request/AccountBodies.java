package wallchart.web.request;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import java.util.List;
import wallchart.people.NewPerson;
import wallchart.people.Role;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.view.Json;

/** What an administrator sends about accounts and room tokens, and what people send about their own password. */
public final class AccountBodies {

    private static final int LONGEST_NAME = 64;
    private static final int LONGEST_TEXT = 2000;
    private static final ObjectReader ADDITION = Json.readerFor(Addition.class);
    private static final ObjectReader ROLE = Json.readerFor(RoleBody.class);
    private static final ObjectReader PASSWORD = Json.readerFor(PasswordBody.class);
    private static final ObjectReader REASON = Json.readerFor(ReasonBody.class);
    private static final ObjectReader OWN_PASSWORD = Json.readerFor(OwnPassword.class);
    private static final ObjectReader TOKEN = Json.readerFor(NewToken.class);

    private AccountBodies() {}

    /** Somebody who is to have an account. */
    record Addition(String name, String printedName, String role, String password) {}

    record RoleBody(String role) {}

    record PasswordBody(String password) {}

    record ReasonBody(String reason) {}

    /** A password of one's own, the one there is and the one there shall be. */
    public record OwnPassword(String current, String next) {
        /** Without the passwords. */
        @Override
        public String toString() {
            return "a new password";
        }
    }

    /** A workstation that is to have a token. */
    public record NewToken(String room, String label) {}

    public static NewPerson person(Context ctx) {
        Addition body = Bodies.readJson(ctx, ADDITION);
        new Members()
                .text("/name", body.name(), LONGEST_NAME)
                .text("/printedName", body.printedName(), LONGEST_TEXT)
                .text("/role", body.role(), LONGEST_NAME)
                .text("/password", body.password(), LONGEST_TEXT)
                .refuseMistakes();
        return new NewPerson(body.name(), body.printedName(), role(body.role()), body.password());
    }

    public static Role role(Context ctx) {
        RoleBody body = Bodies.readJson(ctx, ROLE);
        new Members().text("/role", body.role(), LONGEST_NAME).refuseMistakes();
        return role(body.role());
    }

    public static String password(Context ctx) {
        PasswordBody body = Bodies.readJson(ctx, PASSWORD);
        new Members().text("/password", body.password(), LONGEST_TEXT).refuseMistakes();
        return body.password();
    }

    public static String reason(Context ctx) {
        ReasonBody body = Bodies.readJson(ctx, REASON);
        new Members().text("/reason", body.reason(), LONGEST_TEXT).refuseMistakes();
        return body.reason();
    }

    public static OwnPassword ownPassword(Context ctx) {
        OwnPassword body = Bodies.readJson(ctx, OWN_PASSWORD);
        new Members()
                .text("/current", body.current(), LONGEST_TEXT)
                .text("/next", body.next(), LONGEST_TEXT)
                .refuseMistakes();
        return body;
    }

    public static NewToken token(Context ctx) {
        NewToken body = Bodies.readJson(ctx, TOKEN);
        new Members()
                .text("/room", body.room(), LONGEST_NAME)
                .text("/label", body.label(), LONGEST_TEXT)
                .refuseMistakes();
        return body;
    }

    private static Role role(String slug) {
        try {
            return Role.ofSlug(slug);
        } catch (IllegalArgumentException unknown) {
            throw wrong("/role", "must be radiographer, lead, physicist or administrator");
        }
    }

    /** A member that the department does not accept. */
    public static RequestRefused wrong(String pointer, String detail) {
        var error = new FieldError(null, pointer, null, detail);
        return new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_BODY, List.of(error)));
    }
}
