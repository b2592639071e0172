package wallchart.signoff;

import java.util.List;
import wallchart.chart.Finding;
import wallchart.chart.RowReading;

/** What comes of a step on a change. */
public sealed interface Outcome {

    /** It is done; the change as it stands now. */
    record Done(Change change) implements Outcome {}

    /**
     * It is not done. Nothing was written, but for {@link Kind#CONFLICT} at a signature: then the change was returned.
     *
     * @param kind what stands against it
     * @param detail what, the value, the next step
     * @param problems fields that cannot be read
     * @param findings what blocks the chart
     * @param conflicts rows that others moved, as {@link Proposal#conflicts}
     */
    record Refused(
            Kind kind, String detail, List<RowReading.Problem> problems, List<Finding> findings, List<String> conflicts)
            implements Outcome {
        public Refused {
            problems = List.copyOf(problems);
            findings = List.copyOf(findings);
            conflicts = List.copyOf(conflicts);
        }

        Refused(Kind kind, String detail) {
            this(kind, detail, List.of(), List.of(), List.of());
        }
    }

    /** What stands against a step. */
    enum Kind {
        /** There is no such change, room or version. */
        NOT_FOUND,
        /** The change moved on since the caller saw it. */
        STALE,
        /** A change that stands there does not allow the step. */
        WRONG_STATE,
        /** Whoever asks may not take it: their role, or being or not being the author. */
        NOT_ALLOWED,
        /** The chart would have blocking findings. */
        BLOCKED,
        /** A physicist has to concur first. */
        CONCURRENCE_NEEDED,
        /** The impact is another one than the caller saw. */
        IMPACT_CHANGED,
        /** Others moved rows that the change touches. */
        CONFLICT,
        /** Something written cannot be read. */
        UNREADABLE
    }

    private static Refused refused(Kind kind, String detail) {
        return new Refused(kind, detail);
    }

    static Refused notFound(String detail) {
        return refused(Kind.NOT_FOUND, detail);
    }

    static Refused stale(Change current) {
        return refused(
                Kind.STALE,
                "change " + current.id() + " stands at revision "
                        + current.head().revision() + " by now: read it again");
    }

    static Refused wrongState(Change change, String step) {
        return refused(
                Kind.WRONG_STATE,
                "change " + change.id() + " is " + change.state().slug() + ": it cannot be " + step + " from there");
    }

    static Refused alreadyDrafted(Change same) {
        return refused(
                Kind.WRONG_STATE,
                "change " + same.id() + " of yours, \"" + same.head().title()
                        + "\", proposes exactly this already: go on with it, withdraw it, or choose another title");
    }

    static Refused wholeRevert(Change change) {
        return refused(
                Kind.WRONG_STATE,
                "change " + change.id() + " brings version "
                        + change.head().revertsTo().orElseThrow()
                        + " back as it was: sign it, then open another change for other rows");
    }

    static Refused notAllowed(String detail) {
        return refused(Kind.NOT_ALLOWED, detail);
    }

    static Refused blocked(List<Finding> findings) {
        return new Refused(
                Kind.BLOCKED,
                "the chart would have blocking findings: mend them first",
                List.of(),
                findings,
                List.of());
    }

    static Refused unreadable(List<RowReading.Problem> problems) {
        return new Refused(Kind.UNREADABLE, "something cannot be read: see the fields", problems, List.of(), List.of());
    }

    static Refused concurrenceNeeded(Change change) {
        return refused(
                Kind.CONCURRENCE_NEEDED,
                "change " + change.id() + " passes the limits of its impact: a medical physicist has to concur with it"
                        + " as it is now");
    }

    static Refused impactChanged(String seen, String now) {
        return refused(
                Kind.IMPACT_CHANGED,
                "the impact seen was " + seen + ", it is " + now + " by now: look at it again, then decide");
    }

    static Refused conflict(String detail, List<String> conflicts) {
        return new Refused(Kind.CONFLICT, detail, List.of(), List.of(), conflicts);
    }
}
