package wallchart.signoff;

import java.util.List;
import java.util.Optional;
import wallchart.chart.ChartCheck;
import wallchart.chart.Finding;

/**
 * A change with what is said about it, all as of one instant.
 *
 * @param proposal what it would make of the chart
 * @param findings about the chart as it would be; rows that others moved are among them
 * @param impact what it does; its digest is what concurrence and signature name
 */
public record Assessment(Proposal proposal, List<Finding> findings, Impact impact) {

    public Assessment {
        findings = List.copyOf(findings);
    }

    /** Whether the findings keep the change from being submitted and signed. */
    public boolean isBlocked() {
        return ChartCheck.blocks(findings);
    }

    /** The physicist's concurrence, where it was given for this impact on this version. */
    Optional<Concurrence> findConcurrence(Change.Submitted change) {
        return change.concurrence().filter(given -> given.holdsFor(impact, proposal.onVersion()));
    }
}
