package wallchart.physics;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;

/** What a spectrum costs that nobody asked for before, what a look-up of the receptor signal costs, and how true it is. */
public final class PhysicsBenchmark {

    private static final double ANODE = 12;
    private static final Filtration TOTAL = Filtration.aluminium("3");
    private static final FieldSize FIELD = FieldSize.parse("30x30");
    private static final int PROCESSES = 5;
    private static final int FRESH = 300;
    private static final int LOOK_UPS = 1 << 16;
    private static final int ROUNDS = 200;
    private static final BeamPhysics PHYSICS = BeamPhysics.load();

    private PhysicsBenchmark() {}

    /** Prints all figures with their goals. */
    public static void measure() throws IOException, InterruptedException {
        firstInProcess();
        warm();
        lookUps();
        deviation();
    }

    /** Medians over processes of their own: class loading and the interpreter are in them. */
    private static void firstInProcess() throws IOException, InterruptedException {
        var runs = new long[PROCESSES][];
        for (int run = 0; run < PROCESSES; run++) {
            runs[run] = firstSpectrum();
        }
        System.out.printf(
                Locale.ROOT,
                "physics: first in its process, median of %d: tables %.0f ms, spectrum %.1f ms, next beam %.1f ms%n",
                PROCESSES,
                median(runs, 0) / 1e6,
                median(runs, 1) / 1e6,
                median(runs, 2) / 1e6);
    }

    private static long[] firstSpectrum() throws IOException, InterruptedException {
        var java = ProcessHandle.current().info().command().orElse("java");
        var process = new ProcessBuilder(
                        java, "-cp", System.getProperty("java.class.path"), FirstSpectrum.class.getName())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        var printed = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        if (process.waitFor() != 0) {
            throw new IllegalStateException("the process of the first spectrum failed");
        }
        return Arrays.stream(printed.split(",")).mapToLong(Long::parseLong).toArray();
    }

    private static double median(long[][] runs, int column) {
        return median(Arrays.stream(runs).mapToLong(run -> run[column]).toArray());
    }

    private static double median(long[] nanoseconds) {
        var sorted = nanoseconds.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** A model that remembers nothing yet, in a process that has computed many spectra. */
    private static void warm() {
        var nanoseconds = new long[FRESH];
        for (int round = 0; round < 2; round++) {
            for (int i = 0; i < FRESH; i++) {
                var fresh = BeamPhysics.load();
                double kilovolts = 40 + 110.0 * i / FRESH;
                long start = System.nanoTime();
                fresh.fluence(kilovolts, ANODE);
                nanoseconds[i] = System.nanoTime() - start;
            }
        }
        var sorted = nanoseconds.clone();
        Arrays.sort(sorted);
        System.out.printf(
                Locale.ROOT,
                "physics: spectrum of a fresh model, 40 to 150 kV: median %.2f ms, 99 of 100 within %.2f ms (goal: under 2)%n",
                median(nanoseconds) / 1e6,
                sorted[FRESH * 99 / 100] / 1e6);
    }

    private static void lookUps() {
        var signal = signal(GridModel.R10, ReceptorResponse.CESIUM_IODIDE);
        var random = new Random(1);
        var kilovolts = random.doubles(LOOK_UPS, 40, 150).toArray();
        var centimetres = random.doubles(LOOK_UPS, 0, 36).toArray();
        var nanoseconds = new long[ROUNDS];
        double sum = 0;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            for (int i = 0; i < LOOK_UPS; i++) {
                sum += signal.perMAs(kilovolts[i], centimetres[i]);
            }
            nanoseconds[round] = (System.nanoTime() - start) / LOOK_UPS;
        }
        System.out.printf(
                Locale.ROOT,
                "physics: look-up of the receptor signal anywhere in the table: median %.0f ns (goal: under 200; sum %.3g)%n",
                median(nanoseconds),
                sum);
    }

    /** Between the nodes, at every eighth of a kilovolt and of a centimetre, for every grid and receptor. */
    private static void deviation() {
        double worst = 0;
        for (var grid : GridModel.values()) {
            for (var response : ReceptorResponse.values()) {
                worst = Math.max(worst, worst(grid, response));
            }
        }
        System.out.printf(
                Locale.ROOT,
                "physics: look-up against the direct sum, at every 1/8 kV and 1/8 cm, all grids, both receptors: at most %.3f %% off (goal: under 0.1)%n",
                worst * 100);
    }

    private static double worst(GridModel grid, ReceptorResponse response) {
        var signal = signal(grid, response);
        var sum = new ReceptorSum(PHYSICS.tables(), TOTAL, grid, 30 / Math.sqrt(Math.PI), response);
        var perPhoton = IntStream.rangeClosed(0, 36 * 8)
                .mapToObj(eighth -> sum.signalPerPhoton(eighth / 8.0))
                .toList();
        double worst = 0;
        for (int eighth = 40 * 8; eighth <= 150 * 8; eighth++) {
            var fluence = PHYSICS.fluence(eighth / 8.0, ANODE);
            for (int at = 0; at < perPhoton.size(); at++) {
                double direct = fluence.weightedBy(perPhoton.get(at));
                worst = Math.max(worst, Math.abs(signal.perMAs(eighth / 8.0, at / 8.0) / direct - 1));
            }
        }
        return worst;
    }

    private static ReceptorSignal signal(GridModel grid, ReceptorResponse response) {
        return PHYSICS.receptorSignal(ANODE, TOTAL, grid, FIELD, response);
    }
}
