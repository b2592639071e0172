package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.ChartCheck;
import wallchart.chart.Finding;
import wallchart.equipment.Room;
import wallchart.grading.ChartPhysics;

/**
 * A change with what is said about it, all as of one instant.
 *
 * @param proposal what it would make of the chart
 * @param room as it is equipped, or was when the change was signed
 * @param findings about the chart as it would be; rows that others moved are among them
 * @param impact what it does; its digest is what concurrence and signature name
 */
public record Assessment(Proposal proposal, Room room, List<Finding> findings, Impact impact) {

    public Assessment {
        findings = List.copyOf(findings);
    }

    /**
     * The same with what beam physics says of the examinations that the change touches: after all that blocks comes what became of
     * the tube since the chart was signed, then what the change brings, the rest, and last what stood there before.
     */
    Assessment with(ChartPhysics physics, Optional<Finding> sinceSigning) {
        var physical = physics.compare(room, proposal.before(), proposal.after());
        var all = new ArrayList<>(findings.stream().filter(Finding::isBlocking).toList());
        sinceSigning.ifPresent(all::add);
        all.addAll(physical.brought());
        findings.stream().filter(finding -> !finding.isBlocking()).forEach(all::add);
        all.addAll(physics.unreachable(room, proposal.after(), examination -> true));
        all.addAll(physical.asBefore());
        return new Assessment(proposal, room, all, impact);
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
