package wallchart.web.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wallchart.chart.Finding;
import wallchart.chart.RowReading;
import wallchart.signoff.Outcome;

/** Every "no" to a step on a change has its status and code. */
class StepsOnChangesTest {

    private static Problem problem(Outcome.Kind kind) {
        var refused = new Outcome.Refused(
                kind,
                "what, the value, the next step",
                List.of(new RowReading.Problem("adjustments/0/addKv", "\"six\" is no number")),
                List.of(Finding.blocking("KNEE/ap/adult/tabletop/10-13", "kV", "999 kV: choose another")),
                List.of("KNEE/ap/adult/tabletop/10-13"));
        return Failures.of(refused, ProblemCode.UNKNOWN_ROW);
    }

    @Test
    void every_kind_has_its_status_and_its_code() {
        var answers = Stream.of(Outcome.Kind.values())
                .collect(Collectors.toMap(
                        kind -> kind,
                        kind -> problem(kind).code().status() + " "
                                + problem(kind).code().slug()));
        assertThat(answers)
                .isEqualTo(Map.of(
                        Outcome.Kind.NOT_FOUND, "404 unknown-row",
                        Outcome.Kind.STALE, "412 precondition-failed",
                        Outcome.Kind.WRONG_STATE, "409 wrong-state",
                        Outcome.Kind.NOT_ALLOWED, "403 not-allowed",
                        Outcome.Kind.BLOCKED, "422 blocking-findings",
                        Outcome.Kind.CONCURRENCE_NEEDED, "409 concurrence-needed",
                        Outcome.Kind.IMPACT_CHANGED, "409 impact-changed",
                        Outcome.Kind.CONFLICT, "409 rows-moved",
                        Outcome.Kind.UNREADABLE, "400 invalid-body"));
    }

    @Test
    void every_kind_says_what_to_do_next() {
        assertThat(Outcome.Kind.values())
                .allSatisfy(kind -> assertThat(problem(kind).code().nextStep()).isNotBlank());
    }

    @Test
    void fields_findings_and_conflicts_are_named() {
        assertThat(problem(Outcome.Kind.UNREADABLE).members().get("errors"))
                .asString()
                .contains("/adjustments/0/addKv", "no number");
        assertThat(problem(Outcome.Kind.BLOCKED).members().get("findings"))
                .asString()
                .contains("blocking", "KNEE/ap/adult/tabletop/10-13", "kV", "999 kV: choose another");
        assertThat(problem(Outcome.Kind.CONFLICT).members())
                .isEqualTo(Map.of("conflicts", List.of("KNEE/ap/adult/tabletop/10-13")));
    }
}
