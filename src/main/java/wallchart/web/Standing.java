package wallchart.web;

import jakarta.servlet.http.HttpServletRequest;
import java.util.concurrent.ThreadLocalRandom;
import java.util.concurrent.atomic.AtomicLong;
import org.eclipse.jetty.http.HttpField;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.PreEncodedHttpField;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;

/** What stands on every answer, also on those that the HTTP layer gives by itself: security headers and a request id. */
final class Standing {

    static final String REQUEST_ID = "X-Request-Id";

    private static final String ID = "wallchart.request-id";
    private static final String POLICY = "default-src 'self'; base-uri 'none'; form-action 'self'; "
            + "frame-ancestors 'none'; object-src 'none'; img-src 'self' data:; worker-src 'self'; connect-src 'self'";

    private static final HttpField[] HEADERS = {
        header("Content-Security-Policy", POLICY),
        header("X-Content-Type-Options", "nosniff"),
        header("X-Frame-Options", "DENY"),
        header("Referrer-Policy", "no-referrer"),
        header("Cross-Origin-Opener-Policy", "same-origin"),
        header("Cross-Origin-Embedder-Policy", "require-corp"),
        header("Cross-Origin-Resource-Policy", "same-origin"),
        header("Permissions-Policy", "camera=(), geolocation=(), microphone=()"),
        header("Cache-Control", "no-store"),
    };

    /** Different in every process, so that ids of two runs in one log do not meet. */
    private static final String RUN =
            Integer.toHexString(ThreadLocalRandom.current().nextInt() | 0x1000_0000);

    private static final AtomicLong NUMBER = new AtomicLong();

    private Standing() {}

    private static HttpField header(String name, String value) {
        return new PreEncodedHttpField(name, value);
    }

    /** Puts the headers on and gives the request its id; the second time for one request it keeps the id. */
    static String apply(Request request, Response response) {
        var id = (String) request.getAttribute(ID);
        if (id == null) {
            id = RUN + "-" + Long.toHexString(NUMBER.incrementAndGet());
            request.setAttribute(ID, id);
        }
        HttpFields.Mutable headers = response.getHeaders();
        for (var field : HEADERS) {
            headers.put(field);
        }
        headers.put(REQUEST_ID, id);
        return id;
    }

    /** The id of a request that passed here. */
    static String id(HttpServletRequest request) {
        return String.valueOf(request.getAttribute(ID));
    }
}
