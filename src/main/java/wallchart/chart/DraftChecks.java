package wallchart.chart;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.audit.Reasons;

/** Whether what stands around a chart's content can be signed: title, reason, meaning, dates. */
final class DraftChecks {

    private static final int LEAST_REASON = 10;

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
        newest.filter(head -> from.isBefore(head.inForceFrom()))
                .ifPresent(head -> add(
                        findings,
                        "inForceFrom",
                        from + " lies before version " + head.number() + " comes into force, " + head.inForceFrom()
                                + ": name that instant or a later one"));
        if (draft.reviewDue().isBefore(from.atOffset(ZoneOffset.UTC).toLocalDate())) {
            add(
                    findings,
                    "reviewDue",
                    draft.reviewDue() + " lies before the version comes into force, " + from + ": name a later day");
        }
        return findings;
    }

    private static void checkText(List<Finding> findings, String field, String text, int least, int most) {
        long visible = Reasons.visible(text);
        if (visible < least) {
            add(findings, field, "has " + visible + " visible characters, at least " + least + " are needed: say more");
        }
        Texts.problem(text, most).ifPresent(problem -> add(findings, field, problem));
    }

    private static void add(List<Finding> findings, String field, String reason) {
        findings.add(Finding.blocking("", field, reason));
    }
}
