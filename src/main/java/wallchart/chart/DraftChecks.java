package wallchart.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether what stands around a chart's content can be signed: title, reason, meaning, dates. */
final class DraftChecks {

    private static final int LEAST_REASON = 10;

    /** A slip of the year must not put a chart off for a decade. Common practice, no source. */
    private static final Duration FARTHEST_AHEAD = Duration.ofDays(366);

    private DraftChecks() {}

    static List<Finding> check(Draft draft, Instant now, Optional<VersionHead> newest) {
        var findings = new ArrayList<Finding>();
        checkText(findings, "title", draft.title(), 1, 120);
        checkText(findings, "reason", draft.reason(), LEAST_REASON, 2000);
        checkText(findings, "meaning", draft.meaning(), 1, 200);
        var from = draft.inForceFrom().orElse(now);
        if (from.isBefore(now)) {
            add(
                    findings,
                    "inForceFrom",
                    from + " is past, it is " + now + " now: leave it out, or name a later instant");
        }
        if (from.isAfter(now.plus(FARTHEST_AHEAD))) {
            add(
                    findings,
                    "inForceFrom",
                    from + " lies more than " + FARTHEST_AHEAD.toDays() + " days ahead: name an earlier instant");
        }
        newest.filter(head -> head.inForceFrom().isAfter(now)).ifPresent(head -> findings.add(overtaking(head, from)));
        if (draft.reviewDue().isBefore(from.atOffset(ZoneOffset.UTC).toLocalDate())) {
            add(
                    findings,
                    "reviewDue",
                    draft.reviewDue() + " lies before the version comes into force, " + from + ": name a later day");
        }
        return findings;
    }

    /** A version that waits for its instant is no obstacle: what is urgent must not wait for it. */
    private static Finding overtaking(VersionHead head, Instant from) {
        var waiting = "version " + head.number() + ", signed to come into force at " + head.inForceFrom();
        return Finding.caution(
                "",
                "inForceFrom",
                from.isBefore(head.inForceFrom())
                        ? waiting + ", will never answer: what it changed comes into force with this one, at " + from
                        : waiting + ", answers until this one does");
    }

    private static void checkText(List<Finding> findings, String field, String text, int least, int most) {
        Texts.problems(text, least, most).forEach(problem -> add(findings, field, problem));
    }

    private static void add(List<Finding> findings, String field, String reason) {
        findings.add(Finding.blocking("", field, reason));
    }
}
