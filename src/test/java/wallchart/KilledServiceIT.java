package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/**
 * The built service, killed without warning while people sign. A few kills each time all tests run; a hundred with the profile {@code
 * thorough}. It shows what survives a killed process, not what survives a power cut.
 */
class KilledServiceIT {

    private static final int KILLS = Integer.getInteger("wallchart.kills", 5);
    private static final int KILLS_OF_THE_CARELESS = 5;
    private static final Duration READY_WITHIN = Duration.ofSeconds(10);

    @TempDir
    private static Path founded;

    private static SigningSite foundedSite;

    /** Stays for whoever looks into what went wrong. */
    @TempDir(cleanup = CleanupMode.ON_SUCCESS)
    private Path folder;

    @BeforeAll
    static void found_a_site() throws IOException {
        foundedSite = SigningSite.found(founded);
    }

    @Test
    void no_acknowledged_signature_is_lost_and_nothing_is_half_done() throws IOException {
        var site = foundedSite.copyTo(folder);

        var report = new KillCycles(site, Program.jar("serve"), Path.of("target/killed-service.txt")).run(KILLS);

        assertThat(report.lost()).as(report.toString()).isEmpty();
        assertThat(report.doubts()).as(report.toString()).isEmpty();
        assertThat(report.slowestStart()).isLessThan(READY_WITHIN);
        var verified = site.folder().run("", "verify");
        assertThat(verified.exitCode()).as(verified.toString()).isZero();
    }

    /** Shows that the check above can fail: the same program, people and kills, with the settings that H2 has by itself. */
    @Test
    void with_the_safe_settings_off_the_same_cycles_report_lost_signatures() throws IOException {
        var command = Program.besideJar(CarelessService.class, "serve");

        var report = new KillCycles(foundedSite.copyTo(folder), command, Path.of("target/killed-careless-service.txt"))
                .run(KILLS_OF_THE_CARELESS);

        assertThat(report.lost()).as(report.toString()).isNotEmpty();
    }
}
