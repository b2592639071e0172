package wallchart.web.view;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import wallchart.chart.Comparison.FieldChange;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.VersionHead;
import wallchart.signoff.AdjustmentImpact;
import wallchart.signoff.Assessment;
import wallchart.signoff.EarlyStart;
import wallchart.signoff.ReviewLimits;
import wallchart.signoff.RowImpact;

/**
 * What a change does to a room's exposures. Every figure stands here as it was judged and as the digest covers it.
 *
 * @param digest what a concurrence and a signature name
 * @param onVersion the version it is compared with; 0 where the room has none
 * @param needsPhysicist whether a physicist has to concur before it may start at once
 * @param rows in the order withdrawn, added, amended
 * @param earlyStarts what a start before a waiting version does; the earliest first
 */
public record ImpactView(
        String digest,
        int onVersion,
        boolean needsPhysicist,
        LimitsView limits,
        List<RowImpactView> rows,
        List<AdjustmentImpactView> adjustments,
        List<EarlyStartView> earlyStarts) {

    /** The site's limits, beyond which a physicist has to concur. */
    public record LimitsView(BigDecimal maxExposureShiftDb, int maxKermaRisePercent) {
        static LimitsView of(ReviewLimits limits) {
            return new LimitsView(BigDecimal.valueOf(limits.maxExposureShiftDb()), limits.maxKermaRisePercent());
        }
    }

    /** What a row sets: mAs or AEC, the other one is null. */
    public record Setting(BigDecimal kV, BigDecimal mAs, AecView aec) {
        static Setting of(Row row) {
            var control = row.setting().control();
            return new Setting(
                    row.setting().kV().kilovolts(),
                    control instanceof ExposureControl.Manual manual
                            ? manual.mAs().milliampereSeconds()
                            : null,
                    control instanceof ExposureControl.Automatic automatic ? AecView.of(automatic) : null);
        }
    }

    /**
     * One row.
     *
     * @param before what answers today; null where nothing does
     * @param after what would answer; null where the row is withdrawn
     * @param exposureShiftDb by the 15 % rule; null where it is not known, as kermaChangePercent
     * @param predictedShiftDb by the beam model; null where it does not reach
     */
    public record RowImpactView(
            String row,
            String kind,
            Setting before,
            Setting after,
            List<FieldChange> fields,
            BigDecimal exposureShiftDb,
            BigDecimal predictedShiftDb,
            BigDecimal kermaChangePercent,
            boolean needsPhysicist,
            List<String> remarks) {
        static RowImpactView of(RowImpact impact) {
            return new RowImpactView(
                    impact.rowKey(),
                    impact.kind().slug(),
                    impact.before().map(Setting::of).orElse(null),
                    impact.after().map(Setting::of).orElse(null),
                    impact.fields(),
                    figure(impact.exposureShiftDb()),
                    figure(impact.predictedShiftDb()),
                    figure(impact.kermaChangePercent()),
                    impact.needsPhysicist(),
                    impact.remarks());
        }
    }

    /** One named adjustment; figures as for a row, the largest on any row of the chart. */
    public record AdjustmentImpactView(
            String name,
            AdjustmentView before,
            AdjustmentView after,
            BigDecimal exposureShiftDb,
            BigDecimal predictedShiftDb,
            BigDecimal kermaChangePercent,
            boolean needsPhysicist,
            List<String> remarks) {
        static AdjustmentImpactView of(AdjustmentImpact impact) {
            return new AdjustmentImpactView(
                    impact.name(),
                    impact.before().map(AdjustmentView::of).orElse(null),
                    impact.after().map(AdjustmentView::of).orElse(null),
                    figure(impact.exposureShiftDb()),
                    figure(impact.predictedShiftDb()),
                    figure(impact.kermaChangePercent()),
                    impact.needsPhysicist(),
                    impact.remarks());
        }
    }

    /** A version whose rows come into force sooner than it was signed for. */
    public record Overtaken(int version, Instant inForceFrom) {
        static Overtaken of(VersionHead head) {
            return new Overtaken(head.number(), head.inForceFrom());
        }
    }

    /**
     * What the change does to the room if it starts before an instant.
     *
     * @param rows everything that differs from {@code againstVersion}; {@code broughtRows} are those that the change itself leaves alone
     */
    public record EarlyStartView(
            Instant before,
            int againstVersion,
            List<Overtaken> overtaken,
            boolean needsPhysicist,
            List<RowImpactView> rows,
            List<AdjustmentImpactView> adjustments,
            List<String> broughtRows,
            List<String> broughtAdjustments) {
        static EarlyStartView of(EarlyStart early) {
            return new EarlyStartView(
                    early.before(),
                    early.againstVersion(),
                    early.overtaken().stream().map(Overtaken::of).toList(),
                    early.needsPhysicist(),
                    early.rows().stream().map(RowImpactView::of).toList(),
                    early.adjustments().stream().map(AdjustmentImpactView::of).toList(),
                    early.broughtRows(),
                    early.broughtAdjustments());
        }
    }

    public static ImpactView of(Assessment assessment) {
        var impact = assessment.impact();
        return new ImpactView(
                impact.digest(),
                assessment.proposal().onVersion(),
                impact.needsPhysicist(),
                LimitsView.of(impact.limits()),
                impact.rows().stream().map(RowImpactView::of).toList(),
                impact.adjustments().stream().map(AdjustmentImpactView::of).toList(),
                impact.earlyStarts().stream().map(EarlyStartView::of).toList());
    }

    /** A decimal, not a computed number: it was rounded when it was judged, and is not rounded again. */
    private static BigDecimal figure(OptionalDouble number) {
        return number.isEmpty() ? null : BigDecimal.valueOf(number.getAsDouble());
    }
}
