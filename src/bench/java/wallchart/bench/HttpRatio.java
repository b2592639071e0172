package wallchart.bench;

import io.javalin.Javalin;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wallchart.Application;
import wallchart.Settings;
import wallchart.people.People;
import wallchart.people.SignInSettings;
import wallchart.store.Actor;

/**
 * Techniques over HTTP against a handler that answers a constant body of the same size, in turns within one run, so that the ratio
 * does not depend on the machine.
 */
final class HttpRatio {

    private static final int CONNECTIONS = 8;
    private static final int REQUESTS_EACH = 12_000;
    private static final int WARM_UP_ROUNDS = 8;
    private static final int ROUNDS = 9;
    private static final int VERSIONS = 50;
    private static final List<Integer> ROOMS = List.of(1, 500);

    private HttpRatio() {}

    static void measure() throws Exception {
        var perSecond = new ArrayList<Double>();
        for (int rooms : ROOMS) {
            perSecond.add(measure(rooms));
        }
        System.out.printf(
                "http: from 1 to 500 rooms the ratio changes by x %.3f%n", perSecond.get(1) / perSecond.get(0));
    }

    private static double measure(int rooms) throws Exception {
        var database = BigDepartment.open(rooms, VERSIONS);
        var people = new People(database, SignInSettings.DEFAULTS);
        var tokens = new HashMap<Integer, String>();
        for (int room = 0; room < rooms; room++) {
            tokens.put(
                    room,
                    people.issueRoomToken(Actor.system("bench"), BigDepartment.roomId(room), "bench")
                            .secret());
        }
        var standard = Settings.defaults();
        var settings = new Settings(
                new Settings.Server("127.0.0.1", 0, false),
                standard.database(),
                standard.site(),
                standard.patientGroups(),
                standard.chart(),
                standard.referenceLevels(),
                standard.session(),
                standard.ledger(),
                standard.reviewLimits(),
                standard.physicsLimits(),
                standard.equipment());
        try (var application = Application.start(
                settings, database, java.nio.file.Files.createTempDirectory("ledger"), Clock.systemUTC())) {
            return compare(application.port(), rooms, tokens);
        }
    }

    private static double compare(int port, int rooms, Map<Integer, String> tokens) throws Exception {
        byte[] sample = body(port, BigDepartment.technique(0, rooms), tokens);
        var constant = Javalin.create(config -> {
                    config.startup.showJavalinBanner = false;
                    config.routes.get("/constant", context -> context.contentType("application/json")
                            .result(sample));
                })
                .start("127.0.0.1", 0);
        try {
            return rounds(
                    new Load(port, CONNECTIONS), new Load(constant.port(), CONNECTIONS), rooms, tokens, sample.length);
        } finally {
            constant.stop();
        }
    }

    private static double rounds(Load technique, Load constant, int rooms, Map<Integer, String> tokens, int size)
            throws InterruptedException {
        byte[] constantRequest = Load.get("/constant", "none");
        byte[][] requests = requests(rooms, tokens);
        var ratios = new ArrayList<Double>();
        var tails = new ArrayList<Double>();
        for (int round = 0; round < WARM_UP_ROUNDS + ROUNDS; round++) {
            var flat = constant.run(REQUESTS_EACH, i -> constantRequest, 200);
            var asked = technique.run(REQUESTS_EACH, i -> requests[i], 200);
            if (round >= WARM_UP_ROUNDS) {
                ratios.add(asked.perSecond() / flat.perSecond());
                tails.add(asked.p99() / flat.p99());
                System.out.printf(
                        "http: %d rooms, %d bytes: constant %.0f/s p99 %.2f ms, technique %.0f/s p99 %.2f ms, ratio %.3f%n",
                        rooms,
                        size,
                        flat.perSecond(),
                        flat.p99() / 1000,
                        asked.perSecond(),
                        asked.p99() / 1000,
                        asked.perSecond() / flat.perSecond());
            }
        }
        System.out.printf(
                "http: %d rooms: median throughput ratio %.3f (goal: at least 0.7), median p99 ratio %.2f (goal: at most 2)%n",
                rooms, median(ratios), median(tails));
        return median(ratios);
    }

    /** All of a round, written beforehand: the load's own work is the same for both servers. */
    private static byte[][] requests(int rooms, Map<Integer, String> tokens) {
        byte[][] requests = new byte[CONNECTIONS * REQUESTS_EACH][];
        for (int i = 0; i < requests.length; i++) {
            requests[i] = request(i, rooms, tokens);
        }
        return requests;
    }

    private static byte[] request(int number, int rooms, Map<Integer, String> tokens) {
        var path = BigDepartment.technique(number, rooms);
        return Load.get(path, tokens.get(room(path)));
    }

    private static int room(String path) {
        int start = path.indexOf("room-") + 5;
        return Integer.parseInt(path.substring(start, path.indexOf('/', start)));
    }

    private static byte[] body(int port, String path, Map<Integer, String> tokens) throws Exception {
        var request = HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path))
                .header("Authorization", "Bearer " + tokens.get(room(path)))
                .build();
        var response = HttpClient.newHttpClient().send(request, HttpResponse.BodyHandlers.ofByteArray());
        if (response.statusCode() != 200) {
            throw new IllegalStateException(new String(response.body(), StandardCharsets.UTF_8));
        }
        return response.body();
    }

    private static double median(List<Double> values) {
        return values.stream().sorted().toList().get(values.size() / 2);
    }
}
