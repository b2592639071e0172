package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import wallchart.chart.ExposureControl;
import wallchart.chart.Finding.Severity;
import wallchart.grading.ChartPhysics;
import wallchart.grading.ExaminationPhysics;
import wallchart.grading.PhysicsFinding;
import wallchart.grading.PhysicsReport;
import wallchart.grading.Verdict;
import wallchart.physics.BeamPhysics;

/** What beam physics says of the demo's charts: few findings, each worth a look. */
class DemoPhysicsTest {

    private static List<PhysicsReport> reports;

    @BeforeAll
    static void check() {
        var settings = SettingsFile.read(Path.of("demo-data/site.yaml"));
        var physics = new ChartPhysics(BeamPhysics.load(), settings.referenceLevels(), settings.physicsLimits());
        reports = DemoRoom.all().stream()
                .map(demo -> physics.check(demo.room(), demo.versions().get(1).content()))
                .toList();
    }

    @Test
    void fewer_than_one_examination_in_five_has_a_caution() {
        for (var report : reports) {
            long cautioned = report.examinations().stream()
                    .filter(DemoPhysicsTest::isCautioned)
                    .count();
            assertThat(cautioned * 5).isLessThan(report.examinations().size());
        }
    }

    private static boolean isCautioned(ExaminationPhysics examination) {
        return examination.findings().stream().anyMatch(finding -> finding.severity() == Severity.CAUTION);
    }

    @Test
    void no_examination_has_two_findings_of_a_kind() {
        for (var report : reports) {
            for (var examination : report.examinations()) {
                assertThat(examination.findings())
                        .extracting(PhysicsFinding::kind)
                        .doesNotHaveDuplicates();
            }
        }
    }

    /** The thickest bands of three examinations reach beyond the 36 cm of the model: they have both. */
    @Test
    void every_row_has_a_curve_or_a_sentence_and_only_what_aec_ends_has_no_curve() {
        for (var report : reports) {
            for (var examination : report.examinations()) {
                for (var row : examination.rows()) {
                    var name = row.row().key().toString();
                    boolean automatic = row.row().setting().control() instanceof ExposureControl.Automatic;
                    assertThat(row.curve().isEmpty()).as(name).isEqualTo(automatic);
                    assertThat(row.curve().isEmpty() && row.notPredicted().isEmpty())
                            .as(name)
                            .isFalse();
                }
            }
        }
    }

    @Test
    void every_verdict_but_not_predicted_is_given_somewhere() {
        Set<Verdict> given = reports.stream()
                .flatMap(report -> report.examinations().stream())
                .flatMap(examination -> examination.rows().stream())
                .flatMap(row -> row.grades().stream())
                .map(grade -> grade.verdict())
                .collect(Collectors.toSet());
        assertThat(given).contains(Verdict.CANNOT_TELL, Verdict.GOOD, Verdict.USABLE, Verdict.POOR);
    }
}
