package wallchart.browser;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetSocketAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;

/** The service at another address, as if somebody had built it anew: some of its files have other content. Only asks, writes nothing. */
final class NextBuild implements AutoCloseable {

    private static final Set<String> NOT_PASSED_ON = Set.of("content-length", "transfer-encoding", "date", ":status");

    private final HttpClient client = HttpClient.newHttpClient();
    private final Map<String, String> replaced = new ConcurrentHashMap<>();
    private final String before;
    private final HttpServer server;

    NextBuild(String before) {
        this.before = before;
        try {
            server = HttpServer.create(new InetSocketAddress("127.0.0.1", 0), 0);
        } catch (IOException cannot) {
            throw new UncheckedIOException(cannot);
        }
        server.setExecutor(Executors.newCachedThreadPool());
        server.createContext("/", this::pass);
        server.start();
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort();
    }

    /** A file as it was. */
    String file(String path) {
        return new String(ask(path, "").body(), java.nio.charset.StandardCharsets.UTF_8);
    }

    /** From now on that file is another. */
    void replace(String path, String text) {
        replaced.put(path, text);
    }

    private HttpResponse<byte[]> ask(String path, String authorization) {
        try {
            var request = HttpRequest.newBuilder(URI.create(before + path));
            return client.send(
                    authorization.isEmpty()
                            ? request.build()
                            : request.header("Authorization", authorization).build(),
                    BodyHandlers.ofByteArray());
        } catch (IOException gone) {
            throw new UncheckedIOException(gone);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private void pass(HttpExchange exchange) throws IOException {
        try (exchange) {
            var path = exchange.getRequestURI().toString();
            var authorization = exchange.getRequestHeaders().getFirst("Authorization");
            var answer = ask(path, authorization == null ? "" : authorization);
            answer.headers().map().forEach((name, values) -> {
                if (!NOT_PASSED_ON.contains(name)) {
                    exchange.getResponseHeaders().put(name, values);
                }
            });
            var other = replaced.get(path);
            var body = other == null ? answer.body() : other.getBytes(java.nio.charset.StandardCharsets.UTF_8);
            exchange.sendResponseHeaders(answer.statusCode(), body.length == 0 ? -1 : body.length);
            exchange.getResponseBody().write(body);
        }
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
