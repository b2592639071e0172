package wallchart.bench;

import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import wallchart.chart.ChartBuilder;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.grading.ChartPhysics;
import wallchart.grading.PhysicsLimits;
import wallchart.physics.BeamPhysics;
import wallchart.web.view.ChartPhysicsView;
import wallchart.web.view.Json;

/**
 * What it costs to hold a chart of 4,000 rows against beam physics, its JSON written: 1,000 examinations of four bands, no two
 * alike, over 70 kV, every thickness method, three field sizes, with and without grid.
 */
final class ChartPhysicsBenchmark {

    private static final int EXAMINATIONS = 1000;
    private static final int BANDS = 4;
    private static final int WARM_UP = 40;
    private static final int ROUNDS = 60;
    private static final Room ROOM = aRoom().room();

    private ChartPhysicsBenchmark() {}

    static void measure() {
        var chart = chart();
        var physics = new ChartPhysics(BeamPhysics.load(), List.of(), PhysicsLimits.DEFAULTS);
        double first = milliseconds(physics, chart);
        for (int round = 0; round < WARM_UP; round++) {
            milliseconds(physics, chart);
        }
        var rounds = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            rounds[round] = milliseconds(physics, chart);
        }
        Arrays.sort(rounds);
        System.out.printf(
                Locale.ROOT,
                "physics: a chart of %d rows, %d kB of JSON: median %.0f ms, slowest of %d %.0f ms (goal: under 100); first in its process %.0f ms%n",
                chart.rows().size(),
                answer(physics, chart) / 1000,
                rounds[ROUNDS / 2],
                ROUNDS,
                rounds[ROUNDS - 1],
                first);
        var before = new ChartContent(chart.rows().subList(0, 400), List.of());
        edit(physics, before);
    }

    /** One row of a chart of 400 amended: what the findings of a change cost. */
    private static void edit(ChartPhysics physics, ChartContent before) {
        var rows = new ArrayList<>(before.rows());
        rows.set(200, row(50, 0, "3").row());
        var after = new ChartContent(rows, List.of());
        var rounds = new double[ROUNDS];
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            physics.compare(ROOM, before, after);
            rounds[round] = (System.nanoTime() - start) / 1e6;
        }
        Arrays.sort(rounds);
        System.out.printf(
                Locale.ROOT,
                "physics: one edited row in a chart of 400: median %.2f ms, slowest of %d %.2f ms%n",
                rounds[ROUNDS / 2],
                ROUNDS,
                rounds[ROUNDS - 1]);
    }

    private static double milliseconds(ChartPhysics physics, ChartContent chart) {
        long start = System.nanoTime();
        answer(physics, chart);
        return (System.nanoTime() - start) / 1e6;
    }

    /** Bytes of the answer as the interface writes it. */
    private static int answer(ChartPhysics physics, ChartContent chart) {
        var head = new ChartBuilder().version().head();
        var equipment = new RoomRevision(1, "sha256:0", Instant.EPOCH, "bench", ROOM);
        return Json.written(ChartPhysicsView.of(head, equipment, physics.check(ROOM, chart), List.of()))
                .size();
    }

    private static ChartContent chart() {
        var rows = new ArrayList<Row>();
        for (int examination = 0; examination < EXAMINATIONS; examination++) {
            for (int band = 0; band < BANDS; band++) {
                rows.add(row(examination, band, "2").row());
            }
        }
        return new ChartContent(rows, List.of());
    }

    private static RowBuilder row(int examination, int band, String rate) {
        int from = 5 + examination % 16 + 3 * band;
        var row = aRow().of("LSPINE", "p" + examination)
                .withBand(from, from + 3)
                .withKV(String.valueOf(50 + (examination * 7 + band * 3) % 71))
                .withMAs(String.valueOf(1 + (examination * 31 + band * 17) % 199))
                .withGrid(examination % 2 == 0 ? "g10" : "none")
                .withReceptor("dr1", List.of("18x24", "24x30", "35x43").get(examination % 3));
        return switch (examination % 4) {
            case 0 -> row.withMethod("attenuation");
            case 1 -> row.withMethod("kv-per-cm", rate);
            case 2 -> row.withMethod("mas-per-cm", rate + ".5");
            default -> row.withMethod("fixed");
        };
    }
}
