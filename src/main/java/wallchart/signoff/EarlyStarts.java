package wallchart.signoff;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.Comparison;
import wallchart.equipment.Room;
import wallchart.store.ReadTx;

/**
 * Finds the versions below a change that wait for their day, and works out what the change does to the room if it starts sooner. A
 * version that was overtaken before its day never answers and is no stage of its own.
 */
final class EarlyStarts {

    private final Charts charts;
    private final ImpactCalculation impacts;

    EarlyStarts(Charts charts, ImpactCalculation impacts) {
        this.charts = charts;
        this.impacts = impacts;
    }

    /** The earliest first; none where the version that it is applied to answers already. */
    List<EarlyStart> of(ReadTx tx, Proposal proposal, Room room, Instant at) {
        var early = new ArrayList<EarlyStart>();
        int later = proposal.onVersion();
        while (later > 0 && startOf(tx, room, later).isAfter(at)) {
            var start = startOf(tx, room, later);
            int until = later - 1;
            while (until > 0 && !startOf(tx, room, until).isBefore(start)) {
                until--;
            }
            early.add(early(tx, proposal, room, start, until));
            later = until;
        }
        Collections.reverse(early);
        return List.copyOf(early);
    }

    private EarlyStart early(ReadTx tx, Proposal proposal, Room room, Instant before, int answering) {
        var content = answering == 0
                ? ChartContent.EMPTY
                : version(tx, room, answering).content();
        var impact = impacts.of(room, content, proposal.after());
        var own = Set.copyOf(Comparison.of(proposal.before(), proposal.after()).names());
        return new EarlyStart(
                before,
                answering,
                IntStream.rangeClosed(answering + 1, proposal.onVersion())
                        .mapToObj(number -> version(tx, room, number).head())
                        .toList(),
                impact.rows(),
                impact.adjustments(),
                impact.rows().stream()
                        .map(RowImpact::rowKey)
                        .filter(key -> !own.contains(key))
                        .toList(),
                impact.adjustments().stream()
                        .map(AdjustmentImpact::name)
                        .filter(name -> !own.contains(name))
                        .toList(),
                impact.digest());
    }

    private Instant startOf(ReadTx tx, Room room, int number) {
        return version(tx, room, number).head().inForceFrom();
    }

    private ChartVersion version(ReadTx tx, Room room, int number) {
        return charts.version(tx, room.id(), number)
                .orElseThrow(() -> new IllegalStateException(
                        "version " + number + " of room " + room.id() + " is not there; restore a backup"));
    }
}
