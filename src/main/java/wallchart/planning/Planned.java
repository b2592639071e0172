package wallchart.planning;

import java.util.List;
import wallchart.chart.Finding;
import wallchart.chart.RowReading.Problem;
import wallchart.signoff.Change;
import wallchart.signoff.Outcome;

/** What comes of asking for a plan or a transfer. */
public sealed interface Planned {

    /** It is worked out; nothing is kept of it. */
    record Drawn(ChartProposal proposal) implements Planned {}

    /** It is worked out and opened as a change. */
    record Opened(ChartProposal proposal, Change change) implements Planned {}

    /** It is not, for this reason. */
    record Refused(Outcome.Refused why) implements Planned {}

    static Refused wrong(String member, String message) {
        return new Refused(Outcome.unreadable(List.of(new Problem(member, message))));
    }

    static Refused missing(String detail) {
        return new Refused(Outcome.notFound(detail));
    }

    /** Nothing of what was asked for can be proposed. */
    static Refused nothingLeft(List<LeftOut> leftOut) {
        return new Refused(Outcome.blocked(leftOut.stream()
                .map(left -> Finding.blocking(left.row(), "", left.reason()))
                .toList()));
    }
}
