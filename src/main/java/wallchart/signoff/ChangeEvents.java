package wallchart.signoff;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wallchart.audit.Act;
import wallchart.chart.Row;
import wallchart.chart.RowFields;

/** The events of changes, as the ledger keeps them. A signature is an event of its version; what led to it is among its details. */
final class ChangeEvents {

    static final String OPENED = "change-opened";
    static final String EDITED = "change-edited";
    static final String SUBMITTED = "change-submitted";
    static final String RETURNED = "change-returned";
    static final String DECLINED = "change-declined";
    static final String WITHDRAWN = "change-withdrawn";
    static final String CONCURRED = "change-concurred";
    static final String REVIEWED = "second-review-done";

    private ChangeEvents() {}

    /**
     * What the ledger says about a step.
     *
     * @param action such as {@code change-submitted}
     * @param next the change after it, with its edits
     * @param reason in the words of the one who acts; may be empty
     * @param details what only this step has to say
     */
    static Act of(String action, Change next, Edits edits, String reason, Map<String, ?> details) {
        var all = new TreeMap<String, Object>(details);
        all.putAll(standing(next, edits));
        return Act.inRoom(next.head().room(), action, "change/" + next.id(), reason, all);
    }

    /** Where the change stands, and the digest of all that is stored of it. */
    private static Map<String, Object> standing(Change change, Edits edits) {
        return Map.of(
                "state", change.state().slug(),
                "revision", change.head().revision(),
                "record", record(change, edits));
    }

    /** The digest of everything that is stored of a change: {@code sha256:} and 64 hex digits over its canonical JSON. */
    static String record(Change change, Edits edits) {
        var all = new TreeMap<String, Object>();
        ChangeColumns.values(change).forEach((name, value) -> {
            if (value != null) {
                all.put(name, value.toString());
            }
        });
        all.put("id", Long.toString(change.id()));
        all.put("rows", edits.rows().stream().map(ChangeEvents::words).toList());
        edits.adjustments().ifPresent(edit -> {
            all.put("adjustments", edit.wanted().stream().map(RowFields::of).toList());
            all.put("adjustments_based_on", Integer.toString(edit.basedOn()));
        });
        return EditTexts.canonical(all).digest();
    }

    private static Map<String, Object> words(RowEdit edit) {
        return Map.of(
                "kind", edit.kind().slug(),
                "fields", RowFields.of(edit.row()),
                "basedOn", Integer.toString(edit.basedOn()));
    }

    /** What led to the signature of a change. */
    static Map<String, Object> evidence(Change.Signed signed, Edits edits, Proposal proposal, Impact impact) {
        var evidence = new TreeMap<String, Object>(Map.of(
                "change", signed.id(),
                "changeKind", signed.head().kind().slug(),
                "changeRevision", signed.head().revision(),
                "changeRecord", record(signed, edits),
                "author", signed.head().author().personId(),
                "authorName", signed.head().author().printedName(),
                "onVersion", proposal.onVersion(),
                "impactDigest", impact.digest()));
        signed.concurrence().ifPresent(given -> {
            evidence.put("concurredBy", given.by().personId());
            evidence.put("concurredName", given.by().printedName());
        });
        signed.secondReview()
                .ifPresent(
                        review -> evidence.put("secondReviewDue", review.due().toString()));
        return evidence;
    }

    /** A row as an event shows it: what is written in it, and nothing of what is left empty. */
    static Map<String, String> row(Optional<Row> row) {
        var written = new TreeMap<String, String>();
        row.map(RowFields::of).orElse(Map.of()).forEach((name, text) -> {
            if (!text.isEmpty()) {
                written.put(name, text);
            }
        });
        return written;
    }
}
