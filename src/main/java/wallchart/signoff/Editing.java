package wallchart.signoff;

import java.util.List;
import java.util.Map;
import wallchart.chart.Adjustment;
import wallchart.signoff.Change.Open;
import wallchart.signoff.Edits.AdjustmentsEdit;
import wallchart.store.Actor;
import wallchart.store.Tx;

/** The part of {@link SignoffDesk} by which authors edit words, base and named adjustments of their changes. */
final class Editing {

    private final Steps steps;
    private final Proposals proposals;
    private final EditStore edits = new EditStore();

    Editing(Steps steps, Proposals proposals) {
        this.steps = steps;
        this.proposals = proposals;
    }

    Outcome putAdjustments(Actor by, long id, int expected, List<Map<String, String>> texts) {
        return steps.editing(by, id, expected, (tx, change) -> {
            var reading = AdjustmentTexts.read(texts);
            return reading.problems().isEmpty()
                    ? putAdjustments(tx, change, reading.adjustments())
                    : Outcome.unreadable(reading.problems());
        });
    }

    private Outcome putAdjustments(Tx tx, Open change, List<Adjustment> wanted) {
        var before = adjustments(tx, change);
        var next = change.edited();
        steps.replace(tx, next);
        edits.put(tx, next.id(), new AdjustmentsEdit(wanted, next.head().baseVersion()));
        return told(tx, next, "adjustments", before);
    }

    private Outcome told(Tx tx, Open next, String edit, List<Adjustment> before) {
        var details = Map.of(
                "edit",
                edit,
                "before",
                ChangeEvents.adjustments(before),
                "after",
                ChangeEvents.adjustments(adjustments(tx, next)));
        return steps.told(tx, next, ChangeEvents.EDITED, "", details);
    }

    /** All named adjustments as the change would leave them. */
    private List<Adjustment> adjustments(Tx tx, Open change) {
        return edits.list(tx, change.id())
                .adjustments()
                .map(AdjustmentsEdit::wanted)
                .orElseGet(() -> proposals
                        .content(tx, change, change.head().baseVersion())
                        .adjustments());
    }

    Outcome undoAdjustments(Actor by, long id, int expected) {
        return steps.editing(by, id, expected, (tx, change) -> {
            if (edits.list(tx, id).adjustments().isEmpty()) {
                return Outcome.notFound("change " + id + " does nothing to the named adjustments: look at its edits");
            }
            var before = adjustments(tx, change);
            var next = change.edited();
            steps.replace(tx, next);
            edits.removeAdjustments(tx, id);
            return told(tx, next, "undo adjustments", before);
        });
    }

    Outcome rename(Actor by, long id, int expected, String title, String reason) {
        return steps.byAuthor(by, id, expected, "renamed", (tx, change) -> {
            var words = new Words().title(title).reason(reason);
            if (!words.problems().isEmpty()) {
                return Outcome.unreadable(words.problems());
            }
            var next = change.renamed(title.strip(), reason.strip());
            steps.replace(tx, next);
            var details = Map.of("edit", "words", "titleBefore", change.head().title(), "title", title.strip());
            return steps.told(tx, next, ChangeEvents.EDITED, reason.strip(), details);
        });
    }

    Outcome catchUp(Actor by, long id, int expected) {
        return steps.byAuthor(by, id, expected, "brought up to the newest version", (tx, change) -> {
            var proposal = proposals.of(tx, change);
            var next = change.caughtUp(proposal.onVersion());
            steps.replace(tx, next);
            new Rebasing(tx, proposal).run();
            var details = Map.of("edit", "catch-up", "baseVersion", proposal.onVersion());
            return steps.told(tx, next, ChangeEvents.EDITED, "", details);
        });
    }
}
