package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import wallchart.equipment.AutomaticExposureControl;
import wallchart.equipment.Generator;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** What can be set on the console. */
public record GeneratorView(
        String waveform,
        List<BigDecimal> kVStations,
        List<BigDecimal> mAsStations,
        List<BigDecimal> mAStations,
        BigDecimal shortestTimeMs,
        AecLimits aec) {

    /** What the AEC can be set to; null where the generator has none. */
    public record AecLimits(List<Integer> densities, BigDecimal largestBackupMAs) {
        static AecLimits of(AutomaticExposureControl aec) {
            return new AecLimits(aec.densities(), aec.largestBackup().milliampereSeconds());
        }
    }

    static GeneratorView of(Generator generator) {
        return new GeneratorView(
                generator.waveform().slug(),
                generator.kV().stations().stream().map(TubeVoltage::kilovolts).toList(),
                generator.mAs().stations().stream()
                        .map(CurrentTimeProduct::milliampereSeconds)
                        .toList(),
                generator.mA().stations().stream()
                        .map(TubeCurrent::milliamperes)
                        .toList(),
                generator.shortestTime().milliseconds(),
                generator.automaticExposureControl().map(AecLimits::of).orElse(null));
    }
}
