package wallchart.web;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.Socket;
import java.net.SocketException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** A client that sends what no library would: bytes on a socket, one request, until the server closes. */
final class RawClient {

    private static final int PATIENCE_MS = 10_000;

    private final int port;

    RawClient(int port) {
        this.port = port;
    }

    /**
     * What came back.
     *
     * @param status 0 where nothing came
     * @param headers names in lower case
     */
    record Answer(int status, Map<String, String> headers, String body) {}

    /** Something that writes a request. */
    interface Request {
        void write(OutputStream out) throws IOException;
    }

    /** Sends a request line and headers without a body; Host and Connection are added. */
    Answer get(String target, String... headers) {
        return send("GET " + target + " HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
                + String.join("", Arrays.stream(headers).map(h -> h + "\r\n").toList()) + "\r\n");
    }

    Answer send(String text) {
        return send(out -> out.write(text.getBytes(StandardCharsets.ISO_8859_1)));
    }

    /** Writes on and reads what comes; a server that stops listening halfway may still have answered. */
    Answer send(Request request) {
        try (var socket = new Socket("127.0.0.1", port)) {
            socket.setSoTimeout(PATIENCE_MS);
            var writer = new Thread(() -> write(request, socket));
            writer.start();
            var bytes = socket.getInputStream().readAllBytes();
            writer.join();
            return parse(new String(bytes, StandardCharsets.UTF_8));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static void write(Request request, Socket socket) {
        try {
            var out = socket.getOutputStream();
            request.write(out);
            out.flush();
        } catch (SocketException serverStoppedListening) {
            // the answer says why
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Answer parse(String text) {
        if (text.isEmpty()) {
            return new Answer(0, Map.of(), "");
        }
        int end = text.indexOf("\r\n\r\n");
        var lines = text.substring(0, end).split("\r\n");
        var headers = new TreeMap<String, String>();
        for (int i = 1; i < lines.length; i++) {
            int colon = lines[i].indexOf(':');
            headers.put(
                    lines[i].substring(0, colon).toLowerCase(Locale.ROOT),
                    lines[i].substring(colon + 1).strip());
        }
        return new Answer(Integer.parseInt(lines[0].split(" ")[1]), headers, text.substring(end + 4));
    }
}
