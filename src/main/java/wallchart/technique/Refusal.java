package wallchart.technique;

import java.util.List;
import wallchart.chart.Band;

/**
 * Why there is no technique, and what to do next.
 *
 * @param kind the reason, stable for programs
 * @param detail for people: what, the value, the limit, the next step
 * @param choices what could be asked instead, where a name was not known or is missing; the supports that have a band, where this
 *     one has none
 * @param nearestBands the bands on either side of the thickness asked
 * @param reasons why nothing on this console will do
 * @param offers what would do, each one tried with this room's limits
 */
public record Refusal(
        Kind kind,
        String detail,
        List<String> choices,
        List<Band> nearestBands,
        List<String> reasons,
        List<Offer> offers) {

    /** The reasons there are. */
    public enum Kind {
        UNKNOWN_BODY_PART,
        UNKNOWN_PROJECTION,
        UNKNOWN_PATIENT_GROUP,
        SUPPORT_REQUIRED,
        THICKNESS_OUTSIDE_CHART,
        UNKNOWN_GRID,
        UNKNOWN_ADJUSTMENT,
        NOT_ACHIEVABLE
    }

    /** A name that is not known, or is missing, with what could be said instead. */
    static Refusal choice(Kind kind, String detail, List<String> choices) {
        return new Refusal(kind, detail, List.copyOf(choices), List.of(), List.of(), List.of());
    }

    static Refusal outsideChart(String detail, List<Band> nearestBands, List<String> elsewhere) {
        return new Refusal(
                Kind.THICKNESS_OUTSIDE_CHART,
                detail,
                List.copyOf(elsewhere),
                List.copyOf(nearestBands),
                List.of(),
                List.of());
    }

    static Refusal notAchievable(String detail, List<String> reasons, List<Offer> offers) {
        return new Refusal(
                Kind.NOT_ACHIEVABLE, detail, List.of(), List.of(), List.copyOf(reasons), List.copyOf(offers));
    }

    /** The offers in words. */
    public List<String> alternatives() {
        return offers.stream().map(Offer::text).toList();
    }
}
