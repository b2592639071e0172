package wallchart.bench;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import org.HdrHistogram.Histogram;

/**
 * A load generator on loopback: a few connections that are kept open, one request after the other on each. Small on purpose, so
 * that most of the two cores is left to the server it measures.
 *
 * @param port of the server, on 127.0.0.1
 * @param connections how many at once
 */
record Load(int port, int connections) {

    private static final long HIGHEST_MICROS = TimeUnit.SECONDS.toMicros(10);

    /** What a round gave: requests per second, and latencies in microseconds. */
    record Round(double perSecond, Histogram micros) {
        double p99() {
            return micros.getValueAtPercentile(99);
        }
    }

    /**
     * Runs one round.
     *
     * @param requests the n-th request in full, as bytes of HTTP/1.1
     * @param expectedStatus every answer must have it
     */
    Round run(int requestsEach, IntFunction<byte[]> requests, int expectedStatus) throws InterruptedException {
        var threads = Executors.newFixedThreadPool(connections);
        try {
            var work = new ArrayList<Callable<Histogram>>();
            for (int i = 0; i < connections; i++) {
                int first = i * requestsEach;
                work.add(() -> converse(first, requestsEach, requests, expectedStatus));
            }
            long start = System.nanoTime();
            var micros = new Histogram(HIGHEST_MICROS, 3);
            for (var each : threads.invokeAll(work)) {
                micros.add(each.get());
            }
            double seconds = (System.nanoTime() - start) / 1e9;
            return new Round(connections * (double) requestsEach / seconds, micros);
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        } finally {
            threads.shutdown();
        }
    }

    private Histogram converse(int first, int count, IntFunction<byte[]> requests, int expectedStatus) {
        var micros = new Histogram(HIGHEST_MICROS, 3);
        try (var socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
            socket.setTcpNoDelay(true);
            var in = new BufferedInputStream(socket.getInputStream(), 16_384);
            for (int i = first; i < first + count; i++) {
                long start = System.nanoTime();
                send(socket.getOutputStream(), requests.apply(i));
                int status = receive(in);
                micros.recordValue(Math.max(1, (System.nanoTime() - start) / 1000));
                if (status != expectedStatus) {
                    throw new IllegalStateException("request " + i + " answered " + status);
                }
            }
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
        return micros;
    }

    private static void send(OutputStream out, byte[] request) throws IOException {
        out.write(request);
        out.flush();
    }

    /** Reads one answer with a Content-Length, or in chunks, and gives its status. */
    private static int receive(InputStream in) throws IOException {
        var head = head(in);
        int status = Integer.parseInt(head.get(0).split(" ")[1]);
        int length = -1;
        for (var line : head) {
            if (line.regionMatches(true, 0, "content-length:", 0, 15)) {
                length = Integer.parseInt(line.substring(15).strip());
            }
        }
        if (length < 0) {
            throw new IOException("an answer without Content-Length: " + head);
        }
        in.skipNBytes(length);
        return status;
    }

    private static List<String> head(InputStream in) throws IOException {
        var lines = new ArrayList<String>();
        for (var line = line(in); !line.isEmpty(); line = line(in)) {
            lines.add(line);
        }
        return lines;
    }

    private static String line(InputStream in) throws IOException {
        var line = new StringBuilder(64);
        for (int next = in.read(); next != '\n'; next = in.read()) {
            if (next < 0) {
                throw new IOException("the connection ended");
            }
            if (next != '\r') {
                line.append((char) next);
            }
        }
        return line.toString();
    }

    /** A GET request with a room token. */
    static byte[] get(String path, String token) {
        return ("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\nAuthorization: Bearer " + token + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }
}
