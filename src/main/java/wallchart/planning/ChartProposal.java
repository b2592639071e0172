package wallchart.planning;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.Adjustment;
import wallchart.chart.ChartContent;
import wallchart.chart.Finding;
import wallchart.chart.RowFields;
import wallchart.chart.RowKey;
import wallchart.signoff.Impact;
import wallchart.signoff.Preparation;

/**
 * What the model proposes for a room's chart.
 *
 * @param room id of the room
 * @param baseVersion the version it is made for, 0 where the room has none
 * @param before what that version says
 * @param rows as they are to be, also those that the version has already just so
 * @param leftOut what was asked for and is not proposed
 * @param withdrawn rows of the version whose bands overlap the proposed ones
 * @param adjustments named adjustments that are taken along; none where the version's stay
 * @param assumptions what all of it rests on and what it leaves out, one sentence each, for those who sign
 * @param statement the same in brief, as it stands in the reason of the change
 * @param findings what beam physics says of the examinations with these rows; none until it is compared
 * @param impact what it moves against the version; absent until it is compared
 */
public record ChartProposal(
        String room,
        int baseVersion,
        ChartContent before,
        List<ProposedRow> rows,
        List<LeftOut> leftOut,
        List<RowKey> withdrawn,
        List<Adjustment> adjustments,
        List<String> assumptions,
        String statement,
        List<Finding> findings,
        Optional<Impact> impact) {

    /** What stands of the model's limits in the reason of a change; the assumptions say all of them. */
    static final String LIMITS = "Behind a slab of water, no bone or lung: an estimate.";

    public ChartProposal {
        rows = List.copyOf(rows);
        leftOut = List.copyOf(leftOut);
        withdrawn = List.copyOf(withdrawn);
        adjustments = List.copyOf(adjustments);
        assumptions = List.copyOf(assumptions);
        findings = List.copyOf(findings);
    }

    /** What a proposed row is to the version. */
    public enum Kind {
        /** There is no row of its key. */
        ADD,
        /** There is one, and it becomes this. */
        AMEND,
        /** It is there already. */
        SAME;

        /** The word in answers. */
        public String slug() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What a proposed row is to the version. */
    public Kind kind(ProposedRow proposed) {
        return before.findRow(proposed.row().key())
                .map(now -> now.equals(proposed.row()) ? Kind.SAME : Kind.AMEND)
                .orElse(Kind.ADD);
    }

    /** The row that it takes the place of, other than by saying the same. */
    public Optional<Replacement> findReplacement(ProposedRow proposed) {
        var key = proposed.row().key().toString();
        return impact.flatMap(whole -> whole.rows().stream()
                .filter(row -> row.after().isPresent() && row.rowKey().equals(key))
                .findFirst()
                .flatMap(row -> row.before().map(now -> new Replacement(now, row, whole.limits()))));
    }

    /** All that is to be known of one row beyond what holds for all. */
    public List<String> cautions(ProposedRow proposed) {
        return Stream.concat(
                        findReplacement(proposed).stream().flatMap(replaced -> replaced.cautions().stream()),
                        proposed.cautions().stream())
                .toList();
    }

    /** What the chart would say. */
    ChartContent after() {
        return new ChartContent(
                Overlaps.after(before, rows, withdrawn), adjustments.isEmpty() ? before.adjustments() : adjustments);
    }

    /** The same with what it moves, what beam physics says, and one thing more that its change says. */
    ChartProposal with(Impact compared, List<Finding> found, String more) {
        return new ChartProposal(
                room,
                baseVersion,
                before,
                rows,
                leftOut,
                withdrawn,
                adjustments,
                assumptions,
                statement + more,
                found,
                Optional.of(compared));
    }

    /** How many rows of the chart it touches. */
    int edits() {
        return (int) rows.stream().filter(row -> kind(row) != Kind.SAME).count() + withdrawn.size();
    }

    /** The same as edits of a change. */
    Preparation preparation() {
        var fields = rows.stream()
                .filter(proposed -> kind(proposed) != Kind.SAME)
                .map(proposed -> RowFields.of(proposed.row()))
                .toList();
        var taken = adjustments.stream().map(RowFields::of).toList();
        return new Preparation(fields, withdrawn, taken.isEmpty() ? Optional.empty() : Optional.of(taken));
    }
}
