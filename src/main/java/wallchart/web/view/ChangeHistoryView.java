package wallchart.web.view;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectReader;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wallchart.audit.Event;
import wallchart.people.People;
import wallchart.people.Person;

/** How a change came to be what it is: who did what to it, when and why, for everybody who works on it. */
public record ChangeHistoryView(List<Step> steps) {

    private static final ObjectReader DETAILS = Json.readerFor(JsonNode.class);
    private static final String EDITED = "edited";

    /** What the ledger calls a step, and what people do. */
    private static final Map<String, String> STEPS = Map.of(
            "change-opened", "opened",
            "change-edited", EDITED,
            "change-submitted", "submitted",
            "change-returned", "returned",
            "change-declined", "declined",
            "change-withdrawn", "withdrawn",
            "change-concurred", "concurred",
            "version-signed", "signed",
            "second-review-done", "second-review");

    /** Edits that are not of one row. */
    private static final Map<String, String> OTHER_EDITS = Map.of(
            "adjustments", "adjustments",
            "undo adjustments", "adjustments",
            "words", "title and reason",
            "catch-up", "base version");

    /**
     * One step, or edits that one person made one after the other.
     *
     * @param until instant of the last of them
     * @param printedName null where there is no such account
     * @param words reason, meaning of a signature, or what a second review found
     * @param rows keys of rows, or what else was edited
     * @param edits how many
     * @param version of a signature the version that it made
     */
    public record Step(
            String step,
            Instant at,
            Instant until,
            String by,
            String printedName,
            String role,
            String words,
            List<String> rows,
            int edits,
            Integer version) {

        private boolean goesOn(Step next) {
            return step.equals(EDITED) && next.step.equals(EDITED) && by.equals(next.by);
        }

        private Step and(Step next) {
            var all =
                    Stream.concat(rows.stream(), next.rows.stream()).distinct().toList();
            var said = next.words.isEmpty() ? words : next.words;
            return new Step(step, at, next.until, by, printedName, role, said, all, edits + next.edits, version);
        }
    }

    /** The events of one change, oldest first. */
    public static ChangeHistoryView of(List<Event> events, People people) {
        var steps = new ArrayList<Step>();
        for (var event : events) {
            var step = step(event, people);
            int last = steps.size() - 1;
            if (last >= 0 && steps.get(last).goesOn(step)) {
                steps.set(last, steps.get(last).and(step));
            } else {
                steps.add(step);
            }
        }
        return new ChangeHistoryView(List.copyOf(steps));
    }

    private static Step step(Event event, People people) {
        var step = STEPS.getOrDefault(event.action(), EDITED);
        var details = details(event);
        boolean signed = step.equals("signed");
        return new Step(
                step,
                event.at(),
                event.at(),
                event.actor(),
                printedName(event, details, people),
                event.role(),
                signed ? details.path("meaning").asText() : event.reason(),
                step.equals(EDITED) ? List.of(edited(details)) : List.of(),
                step.equals(EDITED) ? 1 : 0,
                signed ? details.path("number").intValue() : null);
    }

    private static String edited(JsonNode details) {
        return details.path("row")
                .asText(OTHER_EDITS.getOrDefault(details.path("edit").asText(), "change"));
    }

    private static String printedName(Event event, JsonNode details, People people) {
        return details.hasNonNull("printedName")
                ? details.path("printedName").asText()
                : people.findByName(event.actor()).map(Person::printedName).orElse(null);
    }

    private static JsonNode details(Event event) {
        try {
            return DETAILS.readTree(event.details());
        } catch (JsonProcessingException spoilt) {
            throw new IllegalStateException(
                    "event " + event.seq() + " has details that are no JSON: have the ledger verified", spoilt);
        }
    }
}
