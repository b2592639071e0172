package wallchart.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** How much the database file grows with each version of ten changed rows. */
final class StoreSize {

    private static final int FEW = 10;
    private static final int MANY = 210;

    private StoreSize() {}

    static void measure() throws IOException {
        long few = sizeWith(FEW);
        long many = sizeWith(MANY);
        System.out.printf(
                "store: %d kB with %d versions of 400 rows, %d kB with %d: %.1f kB for each version of 10 changed rows (goal: under 20)%n",
                few / 1000, FEW, many / 1000, MANY, (many - few) / 1000.0 / (MANY - FEW));
    }

    private static long sizeWith(int versions) throws IOException {
        var folder = Files.createTempDirectory(Path.of("target"), "bench-store");
        var file = folder.resolve("store").toAbsolutePath();
        try (var database = BigDepartment.open(file)) {
            BigDepartment.fill(database, 1, versions);
        }
        return Files.size(Path.of(file + ".mv.db"));
    }
}
