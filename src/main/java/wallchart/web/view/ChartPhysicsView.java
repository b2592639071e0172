package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import wallchart.chart.Finding;
import wallchart.chart.Finding.Severity;
import wallchart.chart.VersionHead;
import wallchart.equipment.RoomRevision;
import wallchart.grading.CurvePoint;
import wallchart.grading.ExaminationPhysics;
import wallchart.grading.Grade;
import wallchart.grading.Offer;
import wallchart.grading.PhysicsFinding;
import wallchart.grading.PhysicsLimits;
import wallchart.grading.PhysicsReport;
import wallchart.grading.RowPhysics;
import wallchart.grading.Unpredicted;
import wallchart.physics.ReceptorResponse;
import wallchart.quantity.Decimals;
import wallchart.technique.DoseEstimate;

/**
 * A version of a room's chart held against beam physics.
 *
 * @param equipment the equipment it was predicted for
 * @param limits beyond which there are cautions
 * @param stationRoundingDb the most that rounding to mAs stations adds, either way
 * @param holdsFor what the predictions hold for, each a sentence
 * @param cautions how many there are
 * @param notes how many there are
 * @param findings what concerns the chart as a whole
 */
public record ChartPhysicsView(
        String room,
        int version,
        String digest,
        EquipmentHeadView equipment,
        LimitsView limits,
        Double stationRoundingDb,
        List<String> holdsFor,
        int cautions,
        int notes,
        List<FindingView> findings,
        List<ExaminationView> examinations) {

    /** The site's limits. */
    public record LimitsView(Double maxJumpDb, Double maxSlopeDbPerCm) {
        static LimitsView of(PhysicsLimits limits) {
            return new LimitsView(limits.maxJumpDb(), limits.maxSlopeDbPerCm());
        }
    }

    /** One examination along its curve. */
    public record ExaminationView(
            String bodyPart,
            String projection,
            String patientGroup,
            String support,
            ReferenceView reference,
            String receptorQuantity,
            String comparedAs,
            List<RowView> rows,
            List<OfferView> offers,
            List<FindingView> findings) {
        static ExaminationView of(ExaminationPhysics physics) {
            var key = physics.examination();
            return new ExaminationView(
                    key.bodyPart(),
                    key.projection(),
                    key.patientGroup(),
                    key.support().slug(),
                    physics.reference().map(ReferenceView::of).orElse(null),
                    physics.quantity() == ReceptorResponse.AIR_KERMA ? "air-kerma" : "energy-absorbed-in-csi",
                    physics.comparedAs(),
                    physics.rows().stream().map(RowView::of).toList(),
                    physics.offers().stream().map(OfferView::of).toList(),
                    physics.findings().stream()
                            .map(finding -> FindingView.of(finding.asFinding()))
                            .toList());
        }
    }

    /** What 0 dB is. */
    public record ReferenceView(String row, Double thicknessCm) {
        static ReferenceView of(ExaminationPhysics.Reference reference) {
            return new ReferenceView(reference.row().toString(), reference.thicknessCm());
        }
    }

    /** One row along its band. */
    public record RowView(
            String row,
            List<BigDecimal> bandCm,
            BigDecimal referenceThicknessCm,
            CostView dose,
            List<PointView> curve,
            List<StretchView> notPredicted,
            List<GradeView> grades) {
        static RowView of(RowPhysics physics) {
            var band = physics.row().key().band();
            return new RowView(
                    physics.row().key().toString(),
                    List.of(band.from().centimetres(), band.to().centimetres()),
                    physics.row().referenceThickness().centimetres(),
                    physics.dose().map(CostView::of).orElse(null),
                    physics.curve().stream().map(PointView::of).toList(),
                    physics.notPredicted().stream().map(StretchView::of).toList(),
                    physics.grades().stream().map(GradeView::of).toList());
        }
    }

    /** What the row costs at the skin at its reference thickness; of an AEC row an upper bound. */
    public record CostView(
            Double incidentAirKermaMicroGy,
            Double entranceAirKermaMicroGy,
            Double kermaAreaProductMicroGyM2,
            boolean upperBound,
            int uncertaintyPercent,
            String outputSource) {
        static CostView of(DoseEstimate dose) {
            return new CostView(
                    dose.incident().micrograys(),
                    dose.entrance().micrograys(),
                    dose.areaProduct().micrograyMetresSquared(),
                    dose.upperBound(),
                    dose.uncertaintyPercent(),
                    dose.outputSource());
        }
    }

    /**
     * What the row sets at one thickness before rounding to stations, and what it does to the receptor, over the reference.
     *
     * @param evenMAs what would keep the receptor exposure of the reference at that kV
     */
    public record PointView(Double thicknessCm, Double kV, Double mAs, Double receptorExposureDb, Double evenMAs) {
        private static final double HUNDREDTHS = 100;

        static PointView of(CurvePoint point) {
            return new PointView(
                    point.thicknessCm(),
                    point.kV(),
                    point.mAs(),
                    Math.round(point.decibels() * HUNDREDTHS) / HUNDREDTHS,
                    point.evenMAs());
        }
    }

    /** A stretch of the band for which there is no prediction. */
    public record StretchView(Double fromCm, Double toCm, String reason) {
        static StretchView of(Unpredicted stretch) {
            return new StretchView(stretch.fromCm(), stretch.toCm(), stretch.reason());
        }
    }

    /** How far a rule of thumb is off where the row uses it; null where nothing is predicted. */
    public record GradeView(
            String rule,
            String about,
            String verdict,
            Double errorPercent,
            Double physicsWouldUse,
            String unit,
            String text) {
        static GradeView of(Grade grade) {
            return new GradeView(
                    grade.rule().slug(),
                    grade.about(),
                    grade.verdict().slug(),
                    twoDigits(grade.errorPercent()),
                    twoDigits(grade.instead()),
                    grade.unit(),
                    grade.text());
        }

        private static Double twoDigits(OptionalDouble value) {
            return value.isPresent() ? shown(value.getAsDouble()) : null;
        }
    }

    /** What would give the receptor as much at the reference for less kerma at the skin. */
    public record OfferView(BigDecimal kV, BigDecimal mAs, String grid, Double savedPercent, String text) {
        static OfferView of(Offer offer) {
            return new OfferView(
                    offer.kV().kilovolts(),
                    offer.mAs().milliampereSeconds(),
                    offer.grid(),
                    shown(offer.savedPercent()),
                    offer.text());
        }
    }

    public static ChartPhysicsView of(
            VersionHead head, RoomRevision equipment, PhysicsReport report, List<Finding> ofChart) {
        var findings = Stream.concat(
                        ofChart.stream(), report.findings().stream().map(PhysicsFinding::asFinding))
                .toList();
        return new ChartPhysicsView(
                head.room(),
                head.number(),
                head.digest(),
                EquipmentHeadView.of(equipment),
                LimitsView.of(report.limits()),
                report.stationDb(),
                report.holds(),
                count(findings, Severity.CAUTION),
                count(findings, Severity.NOTE),
                ofChart.stream().map(FindingView::of).toList(),
                report.examinations().stream().map(ExaminationView::of).toList());
    }

    /** Two digits are all that a water slab is good for. */
    private static Double shown(double value) {
        return Double.valueOf(Decimals.significant(value, 2));
    }

    private static int count(List<Finding> findings, Severity severity) {
        return (int) findings.stream()
                .filter(finding -> finding.severity() == severity)
                .count();
    }
}
