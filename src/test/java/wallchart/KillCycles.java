package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.stream.Stream;

/**
 * Starts a service, lets six pairs of people sign changes in three rooms, kills it in the middle, starts it again and compares what
 * it kept with what it had acknowledged; again and again on the same database.
 */
final class KillCycles {

    /** What a process leaves as its exit code when signal 9 ended it, on the systems where that is how one kills. */
    private static final int KILLED = 137;

    private static final int PAIRS_IN_A_ROOM = 2;
    private static final int FEWEST_SIGNATURES = 10;
    private static final int SHORTEST_MS = 300;
    private static final int LONGEST_MS = 3000;
    private static final Duration PATIENCE = Duration.ofSeconds(60);
    private static final int POLL_MS = 20;

    private final SigningSite site;
    private final List<String> command;
    private final Path figures;
    private final Random random = new Random(20261125);
    private final KillReport report = new KillReport();
    private final List<Acknowledged> acknowledged = new ArrayList<>();
    private final List<PersonAtWork> authors = people(SigningSite.AUTHORS);
    private final List<PersonAtWork> leads = people(SigningSite.LEADS);
    private final PersonAtWork physicist =
            people(List.of(SigningSite.PHYSICIST)).get(0);
    private final List<Map.Entry<String, Map<String, String>>> rows;

    /**
     * Cycles on that site.
     *
     * @param command starts the service
     * @param figures file that tells after each kill how it stands
     */
    KillCycles(SigningSite site, List<String> command, Path figures) throws IOException {
        this.site = site;
        this.command = command;
        this.figures = figures;
        this.rows = SigningSite.rows();
    }

    private static List<PersonAtWork> people(List<String> names) {
        return names.stream()
                .map(name -> new PersonAtWork(name, SiteFolder.PASSWORD))
                .toList();
    }

    /** So many kills; ends earlier as soon as something was lost or does not fit together. */
    KillReport run(int kills) throws IOException {
        for (int cycle = 0; cycle < kills && report.isClean(); cycle++) {
            try (var service = started()) {
                var kept = compare();
                if (report.isClean()) {
                    kill(service, kept);
                }
            }
            Files.writeString(figures, report + "\n");
        }
        if (report.isClean()) {
            try (var service = started()) {
                compare();
                service.program().terminate();
            }
        }
        Files.writeString(figures, report + "\n");
        return report;
    }

    /** The service, ready; the time it took is noted. */
    private SiteFolder.Service started() throws IOException {
        long begin = System.nanoTime();
        var service = site.folder().serve(command);
        everybody().forEach(person -> person.goTo(service.address()));
        physicist.get("/api/v1/health/ready").expect(200);
        report.started(Duration.ofNanos(System.nanoTime() - begin));
        return service;
    }

    private Stream<PersonAtWork> everybody() {
        return Stream.of(authors, leads, List.of(physicist)).flatMap(List::stream);
    }

    private Kept compare() throws IOException {
        var kept = Kept.ask(physicist, SigningSite.ROOMS);
        report.found(kept.lost(acknowledged), kept.doubts());
        return kept;
    }

    private void kill(SiteFolder.Service service, Kept kept) throws IOException {
        var signed = new ConcurrentLinkedQueue<Acknowledged>();
        var threads = Executors.newCachedThreadPool();
        try {
            var writers = start(threads, kept, signed);
            letSign(signed, writers);
            if (writers.stream().anyMatch(Future::isDone)) { // then something stopped them that was no kill
                report.found(List.of(), Kept.ask(physicist, SigningSite.ROOMS).doubts());
            }
            assertThat(service.program().kill().exitCode()).isEqualTo(KILLED);
            for (var writer : writers) {
                findRefusal(writer).ifPresent(refusal -> report.found(List.of(), List.of(refusal)));
            }
        } finally {
            threads.shutdownNow();
        }
        acknowledged.addAll(signed);
        report.killed(signed.size());
    }

    private List<Future<?>> start(ExecutorService threads, Kept kept, ConcurrentLinkedQueue<Acknowledged> signed) {
        var writers = new ArrayList<Future<?>>();
        for (int pair = 0; pair < SigningSite.ROOMS.size() * PAIRS_IN_A_ROOM; pair++) {
            var room = SigningSite.ROOMS.get(pair % SigningSite.ROOMS.size());
            var writer = new SigningWriter(
                    authors.get(pair % authors.size()),
                    leads.get(pair % leads.size()),
                    room,
                    kept.newest(room),
                    rows.get(pair));
            writers.add(threads.submit(() -> {
                writer.signUntilCutOff(signed::add);
                return null;
            }));
        }
        return writers;
    }

    /** A random while, and longer if nobody would have signed anything; shorter if somebody was refused. */
    private void letSign(ConcurrentLinkedQueue<Acknowledged> signed, List<Future<?>> writers) {
        long begin = System.nanoTime();
        long atLeast = TimeUnit.MILLISECONDS.toNanos(random.nextInt(SHORTEST_MS, LONGEST_MS + 1));
        while (writers.stream().noneMatch(Future::isDone)
                && (System.nanoTime() - begin < atLeast || signed.size() < FEWEST_SIGNATURES)) {
            assertThat(System.nanoTime() - begin)
                    .as("time for %d signatures, so far %d", FEWEST_SIGNATURES, signed.size())
                    .isLessThan(PATIENCE.toNanos());
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(POLL_MS);
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted while others sign");
        }
    }

    /** What the service refused to a writer; empty of one who worked until the kill, as each should. */
    private static Optional<String> findRefusal(Future<?> writer) {
        try {
            writer.get(PATIENCE.toMillis(), TimeUnit.MILLISECONDS);
            throw new AssertionError("a writer ended by itself");
        } catch (ExecutionException ended) {
            return ended.getCause() instanceof IOException
                    ? Optional.empty()
                    : Optional.of("a writer was refused: " + ended.getCause());
        } catch (TimeoutException | InterruptedException never) {
            throw new AssertionError("a writer did not notice that the service was killed", never);
        }
    }
}
