package wallchart.chart;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The words of a row: where to measure, where the beam goes, what the patient does. Texts may be empty; what must not be empty
 * is a matter of the site's rule set.
 *
 * @param measureAt where the thickness is measured
 * @param centralRayAngleDegrees 0 is perpendicular to the receptor, cephalad is positive; absent where not stated; within 90
 * @param centring where the central ray enters
 * @param breathing breathing instruction
 * @param shielding what and where, or "none, site policy"
 * @param notes anything else
 */
public record Positioning(
        String measureAt,
        Optional<BigDecimal> centralRayAngleDegrees,
        String centring,
        String breathing,
        String shielding,
        String notes) {

    private static final BigDecimal RIGHT_ANGLE = BigDecimal.valueOf(90);

    public Positioning {
        centralRayAngleDegrees = centralRayAngleDegrees.map(angle -> {
            if (angle.abs().compareTo(RIGHT_ANGLE) > 0
                    || angle.stripTrailingZeros().scale() > 1) {
                throw new IllegalArgumentException("central-ray angle is " + angle.toPlainString()
                        + " degrees: within -90 and 90, at most 1 decimal place");
            }
            return angle.setScale(1);
        });
        measureAt = measureAt.strip();
        centring = centring.strip();
        breathing = breathing.strip();
        shielding = shielding.strip();
        notes = notes.strip();
    }
}
