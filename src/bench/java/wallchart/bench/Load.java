package wallchart.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
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
            var answer = new Answer(socket.getInputStream());
            for (int i = first; i < first + count; i++) {
                long start = System.nanoTime();
                socket.getOutputStream().write(requests.apply(i));
                int status = answer.receive();
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

    /** A GET request with a room token. */
    static byte[] get(String path, String token) {
        return ("GET " + path + " HTTP/1.1\r\nHost: 127.0.0.1\r\nAuthorization: Bearer " + token + "\r\n\r\n")
                .getBytes(StandardCharsets.US_ASCII);
    }
}
