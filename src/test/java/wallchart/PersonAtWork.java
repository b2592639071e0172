package wallchart;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.time.Duration;
import java.util.Map;

/**
 * Somebody with an account at a service, over HTTP. Signs in when first needed, and again where the service does not know them any
 * more: a session survives a restart, if it survives. Safe for many threads.
 */
final class PersonAtWork {

    private static final HttpClient CLIENT =
            HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
    private static final ObjectMapper JSON = new ObjectMapper();
    private static final Duration PATIENCE = Duration.ofSeconds(30);
    private static final int UNAUTHORIZED = 401;

    private final String name;
    private final String password;
    private volatile String address = "";
    private volatile Session session = new Session("", "");

    PersonAtWork(String name, String password) {
        this.name = name;
        this.password = password;
    }

    private record Session(String cookie, String csrfToken) {}

    /** What the service said. */
    record Reply(int status, String etag, JsonNode body) {

        /** The body, of an answer that must be the one that was hoped for. */
        JsonNode expect(int hoped) {
            if (status != hoped) {
                throw new AssertionError("answered " + status + " instead of " + hoped + ": " + body);
            }
            return body;
        }
    }

    /** Where the service is from now on; with every start it has another port. */
    void goTo(String service) {
        address = service;
    }

    String password() {
        return password;
    }

    Reply get(String path) throws IOException {
        return send("GET", path, "", Map.of());
    }

    /** @param seen the tag of what the sender saw; empty where nothing was there to see */
    Reply send(String method, String path, String seen, Map<String, ?> body) throws IOException {
        var used = session;
        var reply = send(request(method, path, seen, body), used);
        return reply.statusCode() == UNAUTHORIZED
                ? reply(send(request(method, path, seen, body), signedInAfter(used)))
                : reply(reply);
    }

    private HttpRequest.Builder request(String method, String path, String seen, Map<String, ?> body)
            throws IOException {
        var request = HttpRequest.newBuilder(URI.create(address + path)).timeout(PATIENCE);
        if (!seen.isEmpty()) {
            request.header("If-Match", seen);
        }
        return method.equals("GET")
                ? request.GET()
                : request.header("Content-Type", "application/json")
                        .method(
                                method,
                                body.isEmpty()
                                        ? BodyPublishers.noBody()
                                        : BodyPublishers.ofByteArray(JSON.writeValueAsBytes(body)));
    }

    private static HttpResponse<byte[]> send(HttpRequest.Builder request, Session session) throws IOException {
        try {
            return CLIENT.send(
                    request.header("Cookie", session.cookie())
                            .header("X-CSRF-Token", session.csrfToken())
                            .build(),
                    BodyHandlers.ofByteArray());
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while waiting for an answer", asked);
        }
    }

    private static Reply reply(HttpResponse<byte[]> response) throws IOException {
        return new Reply(
                response.statusCode(),
                response.headers().firstValue("ETag").orElse(""),
                JSON.readTree(response.body()));
    }

    /** Of several threads that find their session gone, one signs in. */
    private synchronized Session signedInAfter(Session gone) throws IOException {
        if (session == gone) {
            var body = Map.of("name", name, "password", password);
            var answer = send(request("POST", "/api/v1/session", "", body), gone);
            var csrf = reply(answer).expect(200).path("csrfToken").asText();
            var cookie = answer.headers().firstValue("Set-Cookie").orElseThrow();
            session = new Session(cookie.substring(0, cookie.indexOf(';')), csrf);
        }
        return session;
    }
}
