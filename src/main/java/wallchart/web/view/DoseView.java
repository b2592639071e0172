package wallchart.web.view;

import java.math.BigDecimal;
import wallchart.technique.DoseEstimate;
import wallchart.technique.ReferenceLevel;

/** What the technique costs at the skin: an estimate for the technique, never a record of a patient's dose. */
public record DoseView(
        Double incidentAirKermaMicroGy,
        Double entranceAirKermaMicroGy,
        Double backscatterFactor,
        Double focusSkinDistanceCm,
        BigDecimal forMAs,
        boolean upperBound,
        String outputSource,
        int uncertaintyPercent,
        LevelView referenceLevel) {

    /** The site's reference level for this examination. */
    public record LevelView(BigDecimal milliGy, String quantity, int year, String source) {
        static LevelView of(ReferenceLevel level) {
            return new LevelView(level.milliGy(), level.quantity().words(), level.year(), level.source());
        }
    }

    static DoseView of(DoseEstimate dose) {
        return new DoseView(
                dose.incident().micrograys(),
                dose.entrance().micrograys(),
                dose.backscatterFactor(),
                dose.focusSkinCentimetres(),
                dose.forMAs().milliampereSeconds(),
                dose.upperBound(),
                dose.outputSource(),
                dose.uncertaintyPercent(),
                dose.referenceLevel().map(LevelView::of).orElse(null));
    }
}
