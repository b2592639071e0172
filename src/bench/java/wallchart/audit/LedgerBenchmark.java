package wallchart.audit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import wallchart.store.Database;

/** What checking a ledger of a million events costs beside a plain hash of it, and what its pages cost. */
public final class LedgerBenchmark {

    private static final int FEW = 10_000;
    private static final int MANY = 1_000_000;

    private LedgerBenchmark() {}

    /** Prints the ratios. */
    public static void measure() throws IOException, SQLException {
        try (var few = ManyEvents.open(FEW);
                var many = ManyEvents.open(MANY)) {
            new PageCosts(trail(few), FEW, trail(many), MANY).measure();
            VerificationRatio.measure(many, trail(many));
        }
    }

    private static AuditTrail trail(Database database) throws IOException {
        var noCheckpoints = Files.createTempDirectory(Path.of("target", "bench"), "ledger");
        return new AuditTrail(database, new Checkpoints(noCheckpoints), List.of());
    }
}
