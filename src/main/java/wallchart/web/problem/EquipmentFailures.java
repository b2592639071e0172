package wallchart.web.problem;

import static wallchart.web.problem.ProblemCode.*;

import java.util.LinkedHashMap;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.upkeep.EquipmentOutcome;
import wallchart.web.view.FitView;

/** As {@link Failures}, of what a physicist enters. */
public final class EquipmentFailures {

    private static final int MOST_IN_WORDS = 5;

    private EquipmentFailures() {}

    /**
     * Why equipment is not entered.
     *
     * @param pointer brings the place within what was entered to its place in the body
     */
    public static Problem of(EquipmentOutcome.Refused refused, UnaryOperator<String> pointer) {
        if (refused instanceof EquipmentOutcome.Unreadable unreadable) {
            return Problem.wrongFields(
                    INVALID_BODY,
                    unreadable.problems().stream()
                            .map(wrong ->
                                    new Problem.FieldError(null, pointer.apply(wrong.field()), null, wrong.message()))
                            .toList());
        }
        if (refused instanceof EquipmentOutcome.Questioned questioned) {
            return questioned(questioned, pointer);
        }
        if (refused instanceof EquipmentOutcome.OlderMeasurement older) {
            return Problem.of(
                    OLDER_MEASUREMENT,
                    "the measurement entered is of " + older.entered() + ", the one in force of " + older.inForce()
                            + ": check the day, or send \"replacesMeasuredOn\": \"" + older.inForce() + "\"");
        }
        if (refused instanceof EquipmentOutcome.UnknownPart unknown) {
            return Problem.of(
                    UNKNOWN_PART,
                    "the room has no " + unknown.part() + ", only " + String.join(", ", unknown.known())
                            + ": put the whole equipment to add one");
        }
        return Problem.of(
                PRECONDITION_FAILED,
                "revision " + ((EquipmentOutcome.Stale) refused).newest().number()
                        + " was entered since you looked: look at it again, then decide");
    }

    private static Problem questioned(EquipmentOutcome.Questioned questioned, UnaryOperator<String> pointer) {
        var errors = questioned.questions().stream()
                .map(asked -> new Problem.FieldError(
                        null,
                        pointer.apply(asked.field()),
                        asked.question().value(),
                        asked.question().sentence(),
                        asked.question().code()))
                .toList();
        var codes = questioned.questions().stream()
                .map(asked -> "\"" + asked.question().code() + "\"")
                .collect(Collectors.joining(", "));
        var sentences = Stream.concat(
                        questioned.questions().stream()
                                .map(asked -> asked.question().sentence()),
                        questioned.notes().stream())
                .toList();
        var members = new LinkedHashMap<String, Object>();
        members.put("errors", errors);
        questioned.fit().ifPresent(fit -> members.put("fit", FitView.of(fit)));
        int more = sentences.size() - MOST_IN_WORDS;
        return Problem.of(
                QUESTIONED_MEASUREMENT,
                sentences.stream().limit(MOST_IN_WORDS).collect(Collectors.joining("; "))
                        + (more > 0 ? "; and " + more + " more" : "") + ". To stand by it, send \"confirmed\": ["
                        + codes
                        + "]",
                members);
    }
}
