package wallchart.technique;

/** What every answer and every sheet says of itself: it supports people and replaces none of their duties. */
public final class StandingCaution {

    private StandingCaution() {}

    /** For what holds in that room. */
    public static String of(String room) {
        return "Supports, never replaces, your judgement: identify the patient, justify the exposure, check pregnancy status per "
                + "site policy, keep the dose as low as reasonably achievable, follow local rules and the medical physicist. "
                + "Holds for room " + room + " only.";
    }
}
