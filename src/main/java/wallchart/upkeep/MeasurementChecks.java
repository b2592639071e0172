package wallchart.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallchart.equipment.Calibrations;
import wallchart.equipment.EquipmentReading.Problem;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Tube;
import wallchart.physics.CalibratedPoint;
import wallchart.quantity.TubeVoltage;
import wallchart.upkeep.EquipmentOutcome.OlderMeasurement;
import wallchart.upkeep.EquipmentOutcome.Questioned;
import wallchart.upkeep.EquipmentOutcome.QuestionedPoint;
import wallchart.upkeep.EquipmentOutcome.Refused;
import wallchart.upkeep.EquipmentOutcome.Unreadable;

/**
 * What stands against a new measurement of a tube's output. A measurement that is in force already is not judged again: it was
 * entered under rules of its day.
 */
final class MeasurementChecks {

    private static final String OUTPUT = "/tube/output";
    private static final String POINTS = OUTPUT + "/microGyPerMAsAtOneMetre";
    private static final int LEAST_POINTS = 3;

    private final Calibrations calibrations;

    MeasurementChecks(Calibrations calibrations) {
        this.calibrations = calibrations;
    }

    /**
     * The first that stands against it.
     *
     * @param inForce the measurement in force, where there is one
     * @param tube with the new measurement
     * @param today the latest day that any calendar shows
     */
    Optional<Refused> find(Optional<MeasuredOutput> inForce, Tube tube, EquipmentEntry entry, LocalDate today) {
        var output = tube.output().orElseThrow();
        var problems = new ArrayList<Problem>();
        if (output.measuredOn().isAfter(today)) {
            problems.add(new Problem(
                    OUTPUT + "/measuredOn",
                    "is " + output.measuredOn() + ", a day that has not come yet: write the day of the measurement"));
        }
        if (output.points().size() < LEAST_POINTS) {
            problems.add(new Problem(
                    POINTS,
                    "has " + output.points().size() + " tube voltages: a new measurement needs " + LEAST_POINTS
                            + " or more, so that the points can be held against each other"));
        }
        if (!problems.isEmpty()) {
            return Optional.of(new Unreadable(problems));
        }
        return older(inForce, output, entry).or(() -> questioned(tube, output, entry));
    }

    /** Whoever puts an older measurement in the place of a newer one says which one that is. */
    private static Optional<Refused> older(
            Optional<MeasuredOutput> inForce, MeasuredOutput output, EquipmentEntry entry) {
        var newer = inForce.map(MeasuredOutput::measuredOn).filter(output.measuredOn()::isBefore);
        if (newer.equals(entry.replacesMeasuredOn())) {
            return Optional.empty();
        }
        return Optional.of(newer.<Refused>map(day -> new OlderMeasurement(output.measuredOn(), day))
                .orElseGet(() -> new Unreadable(List.of(new Problem(
                        "/replacesMeasuredOn",
                        "no newer measurement is in force than that of " + output.measuredOn() + ": leave it out")))));
    }

    private Optional<Refused> questioned(Tube tube, MeasuredOutput output, EquipmentEntry entry) {
        var fit = calibrations.find(tube);
        var questioned = fit.map(found -> found.questioned()).orElse(List.of());
        var kV = questioned.stream().map(CalibratedPoint::kV).collect(Collectors.toSet());
        var confirmed = new HashSet<>(entry.confirmed());
        if (!confirmed.containsAll(kV)) {
            return Optional.of(new Questioned(
                    questioned.stream()
                            .map(point -> new QuestionedPoint(POINTS + "/" + index(output, point.kV()), point))
                            .toList(),
                    fit.map(found -> found.remarks()).orElse(List.of())));
        }
        confirmed.removeAll(kV);
        return unasked(confirmed);
    }

    /** Whoever confirms what nobody questions may have mistaken one measurement for another. */
    static Optional<Refused> unasked(Collection<TubeVoltage> confirmed) {
        return confirmed.stream()
                .min(TubeVoltage::compareTo)
                .map(kV -> new Unreadable(List.of(
                        new Problem("/confirmedKV", "names " + kV + ", where no output is questioned: leave it out"))));
    }

    private static int index(MeasuredOutput output, TubeVoltage kV) {
        return output.points().stream().map(MeasuredOutput.Point::kV).toList().indexOf(kV);
    }
}
