package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import java.math.BigDecimal;
import wallchart.technique.DoseEstimate;
import wallchart.technique.ExposureModel;
import wallchart.technique.ReferenceLevel;

/**
 * What the technique costs at the skin: an estimate for the technique, never a record of a patient's dose.
 *
 * @param limits what the estimate leaves out, a text, written
 */
public record DoseView(
        Double incidentAirKermaMicroGy,
        Double entranceAirKermaMicroGy,
        Double kermaAreaProductMicroGyM2,
        Double backscatterFactor,
        Double focusSkinDistanceCm,
        BigDecimal forMAs,
        boolean upperBound,
        String outputSource,
        int uncertaintyPercent,
        LevelView referenceLevel,
        AreaLevelView kermaAreaProductLevel,
        RawValue limits) {

    private static final RawValue LIMITS = Json.writtenOnce(ExposureModel.LIMITS);

    /**
     * The site's reference level of a kerma for this examination.
     *
     * @param percent the estimate as a share of the level, in the level's own quantity
     * @param converted the level in the other kerma, by the backscatter factor of this estimate
     */
    public record LevelView(
            BigDecimal milliGy, String quantity, int year, String source, Double percent, ConvertedView converted) {
        static LevelView of(ReferenceLevel level, DoseEstimate dose) {
            return new LevelView(
                    level.inMilligrays(),
                    level.quantity().words(),
                    level.year(),
                    level.source(),
                    100 * level.share(dose),
                    level.converted(dose).map(ConvertedView::of).orElse(null));
        }
    }

    /** A level brought to the other kerma. */
    public record ConvertedView(Double milliGy, String quantity, Double backscatterFactor) {
        static ConvertedView of(ReferenceLevel.Converted converted) {
            return new ConvertedView(converted.milliGy(), converted.quantity().words(), converted.backscatterFactor());
        }
    }

    /** The site's reference level of the kerma-area product, as it was written and in uGy m2. */
    public record AreaLevelView(
            Double microGyM2, BigDecimal value, String unit, String quantity, int year, String source, Double percent) {
        static AreaLevelView of(ReferenceLevel level, DoseEstimate dose) {
            return new AreaLevelView(
                    level.inBase(),
                    level.value(),
                    level.unit().written(),
                    level.quantity().words(),
                    level.year(),
                    level.source(),
                    100 * level.share(dose));
        }
    }

    static DoseView of(DoseEstimate dose) {
        return new DoseView(
                dose.incident().micrograys(),
                dose.entrance().micrograys(),
                dose.areaProduct().micrograyMetresSquared(),
                dose.backscatterFactor(),
                dose.focusSkinCentimetres(),
                dose.forMAs().milliampereSeconds(),
                dose.upperBound(),
                dose.outputSource(),
                dose.uncertaintyPercent(),
                dose.referenceLevel().map(level -> LevelView.of(level, dose)).orElse(null),
                dose.areaLevel().map(level -> AreaLevelView.of(level, dose)).orElse(null),
                LIMITS);
    }
}
