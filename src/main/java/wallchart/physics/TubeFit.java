package wallchart.physics;

/** What came of fitting the beam model to a measured tube: a calibration, or the reason why there is none. */
public sealed interface TubeFit permits TubeCalibration, TubeFit.Uncalibrated {

    /**
     * The tube stays uncalibrated.
     *
     * @param reason sentence for whoever measured: what is missing and what would do
     * @param wantsPoints whether measuring at other tube voltages would do
     */
    record Uncalibrated(String reason, boolean wantsPoints) implements TubeFit {}
}
