package wallchart.bench;

import java.util.List;
import wallchart.audit.LedgerBenchmark;
import wallchart.browser.RoomPageBenchmark;
import wallchart.physics.PhysicsBenchmark;

/** Runs the benchmarks named on the command line, or all: technique, http, store, ledger, physics, pack, page. */
public final class Main {

    private Main() {}

    /** Ends the process itself: the driver of the browser would keep it. */
    public static void main(String[] names) {
        try {
            run(names);
            System.exit(0);
        } catch (Exception failed) {
            failed.printStackTrace();
            System.exit(1);
        }
    }

    private static void run(String[] names) throws Exception {
        var wanted = names.length == 0
                ? List.of("technique", "http", "store", "ledger", "physics", "pack", "page")
                : List.of(names);
        if (wanted.contains("store")) {
            StoreSize.measure();
        }
        if (wanted.contains("http")) {
            HttpRatio.measure();
        }
        if (wanted.contains("ledger")) {
            LedgerBenchmark.measure();
        }
        if (wanted.contains("physics")) {
            PhysicsBenchmark.measure();
            ChartPhysicsBenchmark.measure();
        }
        if (wanted.contains("pack")) {
            PackBenchmark.measure();
        }
        if (wanted.contains("page")) {
            RoomPageBenchmark.measure();
        }
        if (wanted.contains("technique")) {
            org.openjdk.jmh.Main.main(new String[] {TechniqueBenchmark.class.getSimpleName()});
        }
    }
}
