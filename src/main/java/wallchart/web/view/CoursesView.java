package wallchart.web.view;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallchart.chart.ExaminationKey;
import wallchart.chart.ExposureControl;
import wallchart.chart.VersionHead;
import wallchart.equipment.RoomRevision;
import wallchart.technique.Answer;
import wallchart.technique.ConsoleCourse;
import wallchart.technique.ConsoleSetting;
import wallchart.technique.DoseEstimate;
import wallchart.technique.ExposureModel;
import wallchart.technique.ReferenceLevel;
import wallchart.technique.Technique;

/**
 * What the console is set to along the thickness of one examination.
 *
 * @param equipment the equipment it was worked out for
 * @param referenceLevel the site's reference level of a kerma, or null
 * @param kermaAreaProductLevel the site's reference level of the kerma-area product, or null
 * @param limits what the estimates leave out
 */
public record CoursesView(
        String room,
        int version,
        String digest,
        EquipmentHeadView equipment,
        String bodyPart,
        String projection,
        String patientGroup,
        String support,
        LevelView referenceLevel,
        LevelView kermaAreaProductLevel,
        String limits,
        List<CourseView> rows) {

    /**
     * A reference level of the site.
     *
     * @param quantityId the quantity as settings call it
     * @param value as the site wrote it
     * @param inBase in microgray, or in microgray times square metres: as the points beside it are given
     */
    public record LevelView(
            BigDecimal value, String unit, Double inBase, String quantityId, String quantity, int year, String source) {
        static LevelView of(ReferenceLevel level) {
            return new LevelView(
                    level.value(),
                    level.unit().written(),
                    level.inBase(),
                    level.quantity().slug(),
                    level.quantity().words(),
                    level.year(),
                    level.source());
        }
    }

    /** One row along its band. */
    public record CourseView(
            String row,
            List<BigDecimal> bandCm,
            BigDecimal referenceThicknessCm,
            boolean aec,
            List<PointView> points,
            List<RefusedView> refused) {
        static CourseView of(ConsoleCourse course) {
            var band = course.row().key().band();
            return new CourseView(
                    course.row().key().toString(),
                    List.of(band.from().centimetres(), band.to().centimetres()),
                    course.row().referenceThickness().centimetres(),
                    course.row().setting().control() instanceof ExposureControl.Automatic,
                    course.points().stream()
                            .flatMap(point -> technique(point).stream()
                                    .map(found -> PointView.of(point.thickness().centimetres(), found)))
                            .toList(),
                    RefusedView.of(course.points()));
        }
    }

    /** What the room is told at one thickness; of an AEC row the mAs is the back-up and there is neither mA nor time. */
    public record PointView(
            BigDecimal thicknessCm,
            ExactView exact,
            BigDecimal kV,
            BigDecimal mAs,
            BigDecimal mA,
            BigDecimal timeMs,
            CostView dose) {
        static PointView of(BigDecimal thickness, Technique found) {
            var set = found.set();
            var manual = set instanceof ConsoleSetting.Manual known
                    ? Optional.of(known)
                    : Optional.<ConsoleSetting.Manual>empty();
            return new PointView(
                    thickness,
                    new ExactView(found.exact().kV(), found.exact().mAs()),
                    set.kV().kilovolts(),
                    set.mAs().milliampereSeconds(),
                    manual.map(known -> known.mA().milliamperes()).orElse(null),
                    manual.map(known -> known.time().milliseconds()).orElse(null),
                    found.dose().map(CostView::of).orElse(null));
        }
    }

    /** After the kV limits, before any rounding to stations. */
    public record ExactView(Double kV, Double mAs) {}

    /** What the setting costs at the skin, as a share of the site's levels too, where it has them; of an AEC row an upper bound. */
    public record CostView(
            Double incidentAirKermaMicroGy,
            Double entranceAirKermaMicroGy,
            Double kermaAreaProductMicroGyM2,
            boolean upperBound,
            int uncertaintyPercent,
            String outputSource,
            Double referenceLevelPercent,
            Double kermaAreaProductLevelPercent) {
        static CostView of(DoseEstimate dose) {
            return new CostView(
                    dose.incident().micrograys(),
                    dose.entrance().micrograys(),
                    dose.areaProduct().micrograyMetresSquared(),
                    dose.upperBound(),
                    dose.uncertaintyPercent(),
                    dose.outputSource(),
                    percent(dose.referenceLevel(), dose),
                    percent(dose.areaLevel(), dose));
        }

        private static Double percent(Optional<ReferenceLevel> level, DoseEstimate dose) {
            return level.map(known -> 100 * known.share(dose)).orElse(null);
        }
    }

    /** A stretch of the band at which the room is refused; from the first to the last thickness asked. */
    public record RefusedView(BigDecimal fromCm, BigDecimal toCm, String reason) {
        static List<RefusedView> of(List<ConsoleCourse.Point> points) {
            var found = new ArrayList<RefusedView>();
            boolean goesOn = false;
            for (var point : points) {
                var refusal = point.answer()
                        .<Optional<String>>either(
                                technique -> Optional.empty(), refused -> Optional.of(refused.detail()));
                if (refusal.isPresent()) {
                    var at = point.thickness().centimetres();
                    var before = goesOn ? found.remove(found.size() - 1) : new RefusedView(at, at, refusal.get());
                    found.add(new RefusedView(before.fromCm(), at, before.reason()));
                }
                goesOn = refusal.isPresent();
            }
            return found;
        }
    }

    private static Optional<Technique> technique(ConsoleCourse.Point point) {
        return point.answer() instanceof Answer.Found found ? Optional.of(found.technique()) : Optional.empty();
    }

    public static CoursesView of(
            VersionHead head, RoomRevision equipment, ExaminationKey examination, List<ConsoleCourse> courses) {
        return new CoursesView(
                head.room(),
                head.number(),
                head.digest(),
                EquipmentHeadView.of(equipment),
                examination.bodyPart(),
                examination.projection(),
                examination.patientGroup(),
                examination.support().slug(),
                level(courses, DoseEstimate::referenceLevel),
                level(courses, DoseEstimate::areaLevel),
                ExposureModel.LIMITS,
                courses.stream().map(CourseView::of).toList());
    }

    /** The same beside every estimate of an examination. */
    private static LevelView level(
            List<ConsoleCourse> courses, Function<DoseEstimate, Optional<ReferenceLevel>> which) {
        return courses.stream()
                .flatMap(course -> course.points().stream())
                .flatMap(point -> technique(point).stream())
                .flatMap(found -> found.dose().stream())
                .findFirst()
                .flatMap(which)
                .map(LevelView::of)
                .orElse(null);
    }
}
