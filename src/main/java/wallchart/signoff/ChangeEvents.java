package wallchart.signoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wallchart.audit.Act;
import wallchart.chart.Adjustment;
import wallchart.chart.ChartContent;
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

    /** Details by which {@link ChangeRecords} follows a change: of its own events, and of a signature. */
    static final String REVISION = "revision";

    static final String RECORD = "record";
    static final String RECORD_BEFORE = "recordBefore";
    static final String CHANGE = "change";
    static final String SIGNED_REVISION = "changeRevision";
    static final String SIGNED_RECORD = "changeRecord";

    /** Detail of a signature: numbers of the versions whose rows come into force with it sooner than they were signed for. */
    static final String OVERTAKEN = "overtakenVersions";

    private ChangeEvents() {}

    /**
     * What the ledger says about a step.
     *
     * @param action such as {@code change-submitted}
     * @param next the change after it
     * @param record the digest of all that is stored of it then
     * @param reason in the words of the one who acts; may be empty
     * @param details what only this step has to say
     */
    static Act of(String action, Change next, String record, String reason, Map<String, ?> details) {
        var all = new TreeMap<String, Object>(details);
        all.putAll(Map.of("state", next.state().slug(), REVISION, next.head().revision(), RECORD, record));
        return Act.inRoom(next.head().room(), action, object(next), reason, all);
    }

    /** How the ledger calls a change. */
    static String object(Change change) {
        return "change/" + change.id();
    }

    /** The digest of everything that is stored of a change: {@code sha256:} and 64 hex digits over its canonical JSON. */
    static String record(Change change, Edits edits, List<Long> numbers) {
        var all = new TreeMap<String, Object>();
        ChangeColumns.values(change).forEach((name, value) -> {
            if (value != null) {
                all.put(name, value.toString());
            }
        });
        all.put("id", Long.toString(change.id()));
        all.put("rowNumbers", numbers.stream().map(String::valueOf).toList());
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
    static Map<String, Object> evidence(Change.Signed signed, String record, Proposal proposal, Impact impact) {
        var evidence = new TreeMap<String, Object>(Map.of(
                CHANGE,
                signed.id(),
                "changeKind",
                signed.head().kind().slug(),
                SIGNED_REVISION,
                signed.head().revision(),
                SIGNED_RECORD,
                record,
                "author",
                signed.head().author().personId(),
                "authorName",
                signed.head().author().printedName(),
                "onVersion",
                proposal.onVersion(),
                "impactDigest",
                impact.digest()));
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
        return written(row.map(RowFields::of).orElse(Map.of()));
    }

    /** Named adjustments as an event shows them. */
    static List<Map<String, String>> adjustments(List<Adjustment> adjustments) {
        return adjustments.stream()
                .map(adjustment -> written(RowFields.of(adjustment)))
                .toList();
    }

    /** What a change that is opened with its edits does: of an amended row what differs, of the others the whole row. */
    static Map<String, Object> prepared(Edits edits, ChartContent before) {
        var details = new TreeMap<String, Object>();
        details.put(
                "edits",
                edits.rows().stream()
                        .map(edit -> prepared(edit, before.findRow(edit.key())))
                        .toList());
        edits.adjustments().ifPresent(edit -> {
            details.put("adjustmentsBefore", adjustments(before.adjustments()));
            details.put("adjustments", adjustments(edit.wanted()));
        });
        return details;
    }

    private static Map<String, Object> prepared(RowEdit edit, Optional<Row> now) {
        var before = new TreeMap<>(row(now));
        var after = new TreeMap<>(row(edit.wanted()));
        if (edit.kind() == RowEdit.Kind.AMEND) {
            var same = new TreeMap<>(before);
            same.entrySet().retainAll(after.entrySet());
            before.entrySet().removeAll(same.entrySet());
            after.entrySet().removeAll(same.entrySet());
        }
        return Map.of("edit", edit.kind().slug(), "row", edit.key().toString(), "before", before, "after", after);
    }

    private static Map<String, String> written(Map<String, String> fields) {
        var written = new TreeMap<>(fields);
        written.values().removeIf(String::isEmpty);
        return written;
    }
}
