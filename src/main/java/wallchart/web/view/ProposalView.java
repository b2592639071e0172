package wallchart.web.view;

import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.List;
import wallchart.signoff.Assessment;
import wallchart.signoff.Edits;
import wallchart.signoff.Proposal;
import wallchart.signoff.RowEdit;

/**
 * A change with all that it does.
 *
 * @param onVersion the version it is applied to; 0 where the room has none
 * @param adjustments null where they stay
 * @param conflicts keys of rows, or {@code adjustments}, or {@code chart}, that others moved since the author saw them
 */
public record ProposalView(
        @JsonUnwrapped ChangeView change,
        int onVersion,
        List<EditView> edits,
        AdjustmentsEditView adjustments,
        List<String> conflicts) {

    /** What is done to one row: the row as it is to be, or the row that goes. */
    public record EditView(String kind, String key, int basedOn, RowView row) {
        static EditView of(RowEdit edit) {
            return new EditView(edit.kind().slug(), edit.key().toString(), edit.basedOn(), RowView.of(edit.row()));
        }
    }

    /** All named adjustments as they are to be. */
    public record AdjustmentsEditView(int basedOn, List<AdjustmentView> wanted) {
        static AdjustmentsEditView of(Edits.AdjustmentsEdit edit) {
            return new AdjustmentsEditView(
                    edit.basedOn(),
                    edit.wanted().stream().map(AdjustmentView::of).toList());
        }
    }

    /** The same after an edit, with what is to be said about the chart now. */
    public record Edited(@JsonUnwrapped ProposalView proposal, FindingView.All findings) {}

    public static ProposalView of(Proposal proposal) {
        var edits = proposal.edits();
        return new ProposalView(
                ChangeView.of(proposal.change()),
                proposal.onVersion(),
                edits.rows().stream().map(EditView::of).toList(),
                edits.adjustments().map(AdjustmentsEditView::of).orElse(null),
                proposal.conflicts());
    }

    public static Edited of(Assessment assessment) {
        return new Edited(of(assessment.proposal()), FindingView.All.of(assessment.findings()));
    }
}
