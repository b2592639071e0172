package wallchart.equipment;

import java.util.Arrays;
import java.util.Optional;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeVoltage;

/**
 * Shape of the tube voltage that the generator makes, with the factor of the heat-unit rule HU = w x kV x mAs.
 *
 * <p>Factors: common practice, no source (1.0 single phase, 1.35 six-pulse, 1.41 twelve-pulse; high frequency is given as 1.4 to
 * 1.45, here 1.4 as in the handbook examples). The six-pulse and single-phase factors also stand in US Army MD0950.
 */
public enum Waveform {
    SINGLE_PHASE("single-phase", 1.0),
    SIX_PULSE("six-pulse", 1.35),
    TWELVE_PULSE("twelve-pulse", 1.41),
    HIGH_FREQUENCY("high-frequency", 1.4),
    CONSTANT_POTENTIAL("constant-potential", 1.4);

    private final String slug;
    private final double heatUnitFactor;

    Waveform(String slug, double heatUnitFactor) {
        this.slug = slug;
        this.heatUnitFactor = heatUnitFactor;
    }

    /** The word used in files and answers. */
    public String slug() {
        return slug;
    }

    public double heatUnitFactor() {
        return heatUnitFactor;
    }

    /** Heat units of one exposure (1 HU is about 0.71 J). */
    public double heatUnits(TubeVoltage kV, CurrentTimeProduct mAs) {
        return heatUnitFactor * kV.inKilovolts() * mAs.inMilliampereSeconds();
    }

    static Optional<Waveform> find(String slug) {
        return Arrays.stream(values()).filter(w -> w.slug.equals(slug)).findFirst();
    }
}
