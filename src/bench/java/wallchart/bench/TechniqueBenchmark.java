package wallchart.bench;

import java.io.IOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.Distance;
import wallchart.quantity.PartThickness;
import wallchart.store.Database;
import wallchart.technique.Answer;
import wallchart.technique.Query;
import wallchart.technique.TechniqueRules;

/** What one technique costs, found and derived in memory: room and version in force looked up, all nine rules, all texts. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseTransparentHugePages")
public class TechniqueBenchmark {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 2);

    @Param({"1", "500"})
    private int rooms;

    @Param({"50"})
    private int versions;

    private final TechniqueRules rules = new TechniqueRules(BeamPhysics.load(), List.of());
    private Database database;
    private Rooms installed;
    private Charts charts;
    private Instant now;
    private int next;

    /** Opens the department, which is filled at the first time. */
    @Setup
    public void open() throws IOException {
        database = BigDepartment.open(rooms, versions);
        installed = new Rooms(database);
        charts = new Charts(database, installed, ChartRules.adultsOnly());
        now = database.clock().instant();
    }

    /** Ends the database. */
    @TearDown
    public void close() {
        database.close();
    }

    /** One query of a room, a different room and thickness each time. */
    @Benchmark
    public Answer technique() {
        next++;
        var id = BigDepartment.roomId(next % rooms);
        var query = new Query(
                "KNEE",
                "ap",
                "adult",
                PartThickness.centimetres(4 + next % 17 + ".4"),
                Optional.empty(),
                Optional.of(Distance.centimetres(112)),
                Optional.empty(),
                List.of());
        return rules.answer(
                installed.inForce(id, now).orElseThrow(),
                charts.inForce(id, now).orElseThrow(),
                query,
                DAY);
    }
}
