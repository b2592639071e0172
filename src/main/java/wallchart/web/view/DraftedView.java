package wallchart.web.view;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import wallchart.chart.ExposureControl;
import wallchart.chart.RowKey;
import wallchart.planning.BandEnds;
import wallchart.planning.ChartProposal;
import wallchart.planning.Factor;
import wallchart.planning.LeftOut;
import wallchart.planning.Origin;
import wallchart.planning.ProposedRow;
import wallchart.planning.Replacement;
import wallchart.quantity.ExposureTime;

/**
 * What the beam model proposes for a room's chart, each row with the factors that led to it.
 *
 * @param rows those too that stand in the chart just so
 * @param withdrawn keys of rows in their way
 * @param adjustments named adjustments that are taken along; none where they stay
 * @param findings what beam physics says of the examinations with these rows
 * @param statement what stands beside the reason of a change
 */
public record DraftedView(
        String room,
        int baseVersion,
        List<DraftedRowView> rows,
        List<LeftOutView> leftOut,
        List<String> withdrawn,
        List<AdjustmentView> adjustments,
        List<String> assumptions,
        List<FindingView> findings,
        String statement) {

    /** The same beside the change that was opened with it. */
    public record Opened(ProposalView change, DraftedView draft) {}

    /** The technique that a row comes from; its row is null where it was written out. */
    public record OriginView(
            String room,
            String row,
            BigDecimal thicknessCm,
            BigDecimal kV,
            BigDecimal mAs,
            Double entranceAirKermaMicroGy) {
        static OriginView of(Origin origin) {
            return new OriginView(
                    origin.room(),
                    origin.row().map(RowKey::toString).orElse(null),
                    origin.thickness().centimetres(),
                    origin.kV().kilovolts(),
                    origin.mAs().milliampereSeconds(),
                    origin.entranceMicroGy());
        }
    }

    /**
     * A row of the room's own that gives way.
     *
     * @param mAs of an AEC row the back-up
     * @param exposureShiftDb of receptor exposure by the 15 % rule; null where it is not known, as kermaChangePercent
     * @param predictedShiftDb by the beam model; null where it does not reach
     * @param needsPhysicist whether a limit of the site is passed
     */
    public record BeforeView(
            String row,
            BigDecimal kV,
            BigDecimal mAs,
            String thicknessMethod,
            Double exposureShiftDb,
            Double predictedShiftDb,
            Double kermaChangePercent,
            boolean needsPhysicist) {
        static BeforeView of(Replacement replaced) {
            var setting = replaced.before().setting();
            var impact = replaced.impact();
            return new BeforeView(
                    replaced.before().key().toString(),
                    setting.kV().kilovolts(),
                    setting.control().mAs().milliampereSeconds(),
                    setting.thicknessMethod().slug(),
                    orNull(impact.exposureShiftDb()),
                    orNull(impact.predictedShiftDb()),
                    orNull(impact.kermaChangePercent()),
                    impact.needsPhysicist());
        }
    }

    /** One factor on its mAs. */
    public record FactorView(String name, Double value, String text) {
        static FactorView of(Factor factor) {
            return new FactorView(factor.name(), factor.value(), factor.text());
        }
    }

    /** What is not proposed, and why. */
    public record LeftOutView(String row, String reason) {
        static LeftOutView of(LeftOut left) {
            return new LeftOutView(left.row(), left.reason());
        }
    }

    /** Before the stations. */
    public record ExactView(Double kV, Double mAs) {}

    /**
     * One row.
     *
     * @param before the row that gives way to it; null where there is none, or it says the same
     * @param timeMs null where AEC ends the exposure
     * @param upperBound whether the kerma is that of the back-up of an AEC row
     * @param bandEndsDb receptor exposure at the lower and just under the upper end against the reference thickness; null where it is
     *     not predicted
     */
    public record DraftedRowView(
            String kind,
            String key,
            RowView row,
            OriginView from,
            BeforeView before,
            List<FactorView> factors,
            ExactView exact,
            Double roundingDeviation,
            BigDecimal timeMs,
            Double entranceAirKermaMicroGy,
            boolean upperBound,
            List<Double> bandEndsDb,
            List<String> cautions) {

        static DraftedRowView of(ChartProposal proposal, ProposedRow proposed) {
            return new DraftedRowView(
                    proposal.kind(proposed).slug(),
                    proposed.row().key().toString(),
                    RowView.of(proposed.row()),
                    OriginView.of(proposed.origin()),
                    proposal.findReplacement(proposed).map(BeforeView::of).orElse(null),
                    proposed.factors().stream().map(FactorView::of).toList(),
                    new ExactView(proposed.exactKV(), proposed.exactMAs()),
                    hundredths(proposed.roundingDeviation()),
                    proposed.time().map(ExposureTime::milliseconds).orElse(null),
                    proposed.entranceMicroGy(),
                    proposed.row().setting().control() instanceof ExposureControl.Automatic,
                    ends(proposed.ends()),
                    proposal.cautions(proposed));
        }
    }

    public static DraftedView of(ChartProposal proposal) {
        return new DraftedView(
                proposal.room(),
                proposal.baseVersion(),
                proposal.rows().stream()
                        .map(row -> DraftedRowView.of(proposal, row))
                        .toList(),
                proposal.leftOut().stream().map(LeftOutView::of).toList(),
                proposal.withdrawn().stream().map(RowKey::toString).toList(),
                proposal.adjustments().stream().map(AdjustmentView::of).toList(),
                proposal.assumptions(),
                proposal.findings().stream().map(FindingView::of).toList(),
                proposal.statement());
    }

    public static Opened of(ProposalView change, ChartProposal proposal) {
        return new Opened(change, of(proposal));
    }

    private static List<Double> ends(BandEnds ends) {
        return Arrays.asList(orNull(ends.lowerDb()), orNull(ends.upperDb()));
    }

    private static Double orNull(OptionalDouble value) {
        return value.isPresent() ? hundredths(value.getAsDouble()) : null;
    }

    /** No decibel is predicted more finely, and what is left of arithmetic is nobody's finding. */
    private static double hundredths(double decibels) {
        return Math.round(decibels * 100) / 100.0;
    }
}
