package wallchart.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Files;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.zip.GZIPInputStream;
import wallchart.DemoService;

/** What a room's pack costs, in time and in size: each room of the demo, asked first and once more, in several starts of one process. */
final class PackBenchmark {

    private static final int STARTS = 4;
    private static final List<String> ROOMS = List.of("r1", "r2", "r3");
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private PackBenchmark() {}

    static void measure() throws Exception {
        for (int start = 1; start <= STARTS; start++) {
            try (var demo = DemoService.start(Files.createTempDirectory("packs"))) {
                for (var room : ROOMS) {
                    measure(start, demo.address(), room);
                }
            }
        }
    }

    private static void measure(int start, String address, String room) throws Exception {
        long before = System.nanoTime();
        var sent = pack(address, room);
        long between = System.nanoTime();
        pack(address, room);
        long after = System.nanoTime();
        System.out.printf(
                Locale.ROOT,
                "pack: start %d, room %s: %.2f MB sent (goal for r1: at most 1.5), %.1f MB as JSON (goal: at most 12), first %.0f ms, again %.1f ms%n",
                start,
                room,
                sent.length / 1e6,
                json(sent).length / 1e6,
                (between - before) / 1e6,
                (after - between) / 1e6);
    }

    private static byte[] pack(String address, String room) throws Exception {
        var request = HttpRequest.newBuilder(URI.create(address + "/api/v1/rooms/" + room + "/pack"))
                .header("Authorization", "Bearer demo-" + room)
                .header("Accept-Encoding", "gzip");
        return CLIENT.send(request.build(), BodyHandlers.ofByteArray()).body();
    }

    private static byte[] json(byte[] sent) throws IOException {
        var sealed = new ObjectMapper().readTree(unpacked(sent));
        return unpacked(Base64.getUrlDecoder().decode(sealed.path("payload").asText()));
    }

    private static byte[] unpacked(byte[] packed) throws IOException {
        try (var gzip = new GZIPInputStream(new ByteArrayInputStream(packed))) {
            return gzip.readAllBytes();
        }
    }
}
