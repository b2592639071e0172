package wallchart.upkeep;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.equipment.RoomRevision;
import wallchart.physics.TubeFit;

/**
 * How the beam model fits the tube of one revision, for the physicist who measured it.
 *
 * @param fit the calibration, or why there is none
 * @param fitted the same with its curve; absent where the tube is uncalibrated
 * @param halfValueLayerStated mm Al at the kV of the measured half-value layer, modelled with the stated filtration; absent where the
 *     model does not reach it
 * @param halfValueLayerFitted the same with the fitted filtration; absent where the tube is uncalibrated
 * @param confirmed codes of what was confirmed when the measurement was entered
 * @param sentences for whoever measured, what is questioned first; why the tube is uncalibrated where it is
 */
public record CalibrationReport(
        RoomRevision revision,
        TubeFit fit,
        Optional<FittedTube> fitted,
        OptionalDouble halfValueLayerStated,
        OptionalDouble halfValueLayerFitted,
        List<String> confirmed,
        List<String> sentences) {

    public CalibrationReport {
        confirmed = List.copyOf(confirmed);
        sentences = List.copyOf(sentences);
    }

    /** Why the tube is uncalibrated; empty where it is not. */
    public Optional<String> reason() {
        return fit instanceof TubeFit.Uncalibrated uncalibrated ? Optional.of(uncalibrated.reason()) : Optional.empty();
    }
}
