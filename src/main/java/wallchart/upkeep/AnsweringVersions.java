package wallchart.upkeep;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.VersionHead;

/** The versions of a room's chart that answered at an instant or were signed then to answer later, as they stood at that instant. */
final class AnsweringVersions {

    private AnsweringVersions() {}

    static List<ChartVersion> at(Charts charts, String room, Instant at) {
        var signed = charts.versions(room).stream()
                .filter(head -> !head.signature().at().isAfter(at))
                .toList();
        return signed.stream()
                .filter(head -> answers(head, signed, at))
                .sorted(Comparator.comparing(VersionHead::number))
                .map(head -> charts.version(room, head.number()).orElseThrow())
                .toList();
    }

    /** Of those that have come into force the highest number answers: from the instant, or from its own if that is later. */
    private static boolean answers(VersionHead head, List<VersionHead> signed, Instant at) {
        var from = head.inForceFrom().isAfter(at) ? head.inForceFrom() : at;
        return signed.stream()
                .noneMatch(other ->
                        other.number() > head.number() && !other.inForceFrom().isAfter(from));
    }
}
