package wallchart.web.problem;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.EquipmentReading.Problem;
import wallchart.equipment.RoomRevision;
import wallchart.physics.CalibratedPoint;
import wallchart.quantity.TubeVoltage;
import wallchart.upkeep.EquipmentOutcome;
import wallchart.upkeep.EquipmentOutcome.Asked;

/** Whatever stands against an entry of equipment has its status; a new kind of it fails here until it has one. */
class EquipmentFailuresTest {

    private static final LocalDate DAY = LocalDate.parse("2026-03-01");
    private static final RoomRevision REVISION = new RoomRevision(
            4, "sha256:", Instant.EPOCH, "physicist", EquipmentFixtures.aRoom().room());
    private static final CalibratedPoint POINT =
            new CalibratedPoint(TubeVoltage.kilovolts("80"), 64.7, 56, 15.5, 18.2, CalibratedPoint.Standing.QUESTIONED);

    private static final List<EquipmentOutcome.Refused> ALL = List.of(
            new EquipmentOutcome.Unreadable(List.of(new Problem("/room", "is missing"))),
            new EquipmentOutcome.Stale(REVISION),
            new EquipmentOutcome.UnknownPart("grid g9", List.of("g10")),
            new EquipmentOutcome.OlderMeasurement(DAY.minusDays(1), DAY),
            new EquipmentOutcome.Questioned(
                    List.of(new Asked("/points/3", POINT.question())), List.of("a fourth helps"), Optional.empty()));

    @Test
    void every_kind_has_a_status_of_its_own() {
        var kinds = Stream.of(EquipmentOutcome.Refused.class.getPermittedSubclasses())
                .collect(Collectors.toSet());
        assertThat(ALL.stream().<Class<?>>map(Object::getClass).collect(Collectors.toSet()))
                .isEqualTo(kinds);
        assertThat(ALL.stream().map(refused -> problem(refused).code()).collect(Collectors.toSet()))
                .isEqualTo(Set.of(
                        ProblemCode.INVALID_BODY,
                        ProblemCode.PRECONDITION_FAILED,
                        ProblemCode.UNKNOWN_PART,
                        ProblemCode.OLDER_MEASUREMENT,
                        ProblemCode.QUESTIONED_MEASUREMENT));
    }

    private static wallchart.web.problem.Problem problem(EquipmentOutcome.Refused refused) {
        return EquipmentFailures.of(refused, UnaryOperator.identity());
    }

    @Test
    void a_questioned_point_is_told_with_its_value_and_the_next_step() {
        assertThat(problem(ALL.get(4)).detail())
                .isEqualTo(
                        "80 kV: 64.7 uGy/mAs is 18 % over the fit of the others: measure again, or confirm; a fourth helps."
                                + " To stand by it, send \"confirmed\": [\"output-at-80\"]");
    }
}
