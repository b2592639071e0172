package wallchart.web;

import io.javalin.http.Context;
import java.util.Optional;

/** The cookie that holds a session: no script reads it, no other site sends it, over TLS it is bound to this host. */
final class SessionCookie {

    private static final String NAME = "wallchart-session";

    private final String name;
    private final String attributes;
    private final boolean secure;

    SessionCookie(boolean secure) {
        this.secure = secure;
        this.name = secure ? "__Host-" + NAME : NAME;
        this.attributes = "; Path=/; HttpOnly; SameSite=Strict" + (secure ? "; Secure" : "");
    }

    /** Whether browsers reach the service over TLS. */
    boolean isForTls() {
        return secure;
    }

    Optional<String> read(Context ctx) {
        return Optional.ofNullable(ctx.cookie(name)).filter(token -> !token.isEmpty());
    }

    /** Until the browser closes; the session may end earlier. */
    void write(Context ctx, String token) {
        ctx.header("Set-Cookie", name + "=" + token + attributes);
    }

    void clear(Context ctx) {
        ctx.header("Set-Cookie", name + "=" + attributes + "; Max-Age=0");
    }
}
