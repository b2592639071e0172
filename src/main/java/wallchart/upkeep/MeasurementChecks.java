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
import wallchart.equipment.Room;
import wallchart.physics.TubeFit;
import wallchart.physics.TubeQuestion;
import wallchart.quantity.Decimals;
import wallchart.technique.EquipmentEffects;
import wallchart.upkeep.EquipmentOutcome.Asked;
import wallchart.upkeep.EquipmentOutcome.OlderMeasurement;
import wallchart.upkeep.EquipmentOutcome.Questioned;
import wallchart.upkeep.EquipmentOutcome.Refused;
import wallchart.upkeep.EquipmentOutcome.Unreadable;

/**
 * What stands against a new measurement of a tube's output. A measurement that is in force already is not judged again: it was
 * entered under rules of its day.
 */
final class MeasurementChecks {

    private static final String OUTPUT = "/tube/output";
    private static final String POINTS = OUTPUT + "/microGyPerMAsAtOneMetre";
    private static final String HALF_VALUE_LAYER = OUTPUT + "/hvlMmAl";
    private static final int LEAST_POINTS = 3;

    /** Percent, expanded: no field dosemeter is better than 1, and what is off by half is no measurement. Common practice, no source. */
    private static final int LEAST_UNCERTAINTY = 1;

    private static final int MOST_UNCERTAINTY = 50;

    private final Calibrations calibrations;
    private final FittedTubes fittedTubes;
    private final EquipmentEffects effects;

    MeasurementChecks(Calibrations calibrations, FittedTubes fittedTubes, EquipmentEffects effects) {
        this.calibrations = calibrations;
        this.fittedTubes = fittedTubes;
        this.effects = effects;
    }

    /**
     * The first that stands against it.
     *
     * @param before the room in force
     * @param after with the new measurement
     * @param today the latest day that any calendar shows
     */
    Optional<Refused> find(Room before, Room after, EquipmentEntry entry, LocalDate today) {
        var output = after.tube().output().orElseThrow();
        var problems = new ArrayList<Problem>();
        if (output.measuredOn().isAfter(today)) {
            problems.add(new Problem(
                    OUTPUT + "/measuredOn",
                    "is " + output.measuredOn() + ", a day that has not come yet: write the day of the measurement"));
        }
        findPointsProblem(after, output).ifPresent(problems::add);
        double uncertainty = output.uncertaintyPercent().doubleValue();
        if (uncertainty < LEAST_UNCERTAINTY || uncertainty > MOST_UNCERTAINTY) {
            problems.add(new Problem(
                    OUTPUT + "/uncertaintyPercent",
                    "is " + Decimals.plain(output.uncertaintyPercent()) + " %: a measured output is known to "
                            + LEAST_UNCERTAINTY + " to " + MOST_UNCERTAINTY
                            + " %; write the expanded uncertainty of the measurement"));
        }
        if (!problems.isEmpty()) {
            return Optional.of(new Unreadable(problems));
        }
        return older(before.tube().output(), output, entry).or(() -> questioned(before, after, entry));
    }

    private Optional<Problem> findPointsProblem(Room after, MeasuredOutput output) {
        if (output.points().size() < LEAST_POINTS) {
            return Optional.of(new Problem(
                    POINTS,
                    "has " + output.points().size() + " tube voltages: a new measurement needs " + LEAST_POINTS
                            + " or more, so that the points can be held against each other"));
        }
        return calibrations.fit(after.tube()) instanceof TubeFit.Uncalibrated uncalibrated && uncalibrated.wantsPoints()
                ? Optional.of(new Problem(POINTS, uncalibrated.reason()))
                : Optional.empty();
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

    private Optional<Refused> questioned(Room before, Room after, EquipmentEntry entry) {
        var fit = calibrations.find(after.tube());
        var questions = new ArrayList<TubeQuestion>();
        OutputStep.find(effects, before, after).ifPresent(questions::add);
        fit.ifPresent(found -> questions.addAll(found.questions(entry.confirmed())));
        var codes = questions.stream().map(TubeQuestion::code).collect(Collectors.toSet());
        var confirmed = new HashSet<>(entry.confirmed());
        if (!confirmed.containsAll(codes)) {
            var output = after.tube().output().orElseThrow();
            return Optional.of(new Questioned(
                    questions.stream()
                            .map(question -> new Asked(field(output, question), question))
                            .toList(),
                    fit.map(found -> found.notes(entry.confirmed())).orElse(List.of()),
                    fittedTubes.find(after.tube())));
        }
        confirmed.removeAll(codes);
        return unasked(confirmed);
    }

    /** Whoever confirms what nobody questions may have mistaken one measurement for another. */
    static Optional<Refused> unasked(Collection<String> confirmed) {
        return confirmed.stream()
                .sorted()
                .findFirst()
                .map(code -> new Unreadable(List.of(
                        new Problem("/confirmed", "names " + code + ", which nobody questions: leave it out"))));
    }

    private static String field(MeasuredOutput output, TubeQuestion question) {
        if (question.subject() == TubeQuestion.Subject.HALF_VALUE_LAYER) {
            return HALF_VALUE_LAYER;
        }
        return question.kV()
                .map(kV -> POINTS + "/"
                        + output.points().stream()
                                .map(MeasuredOutput.Point::kV)
                                .toList()
                                .indexOf(kV))
                .orElse(POINTS);
    }
}
