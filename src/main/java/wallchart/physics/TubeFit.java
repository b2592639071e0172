package wallchart.physics;

/** What came of fitting the beam model to a measured tube: a calibration, or the reason why there is none. */
public sealed interface TubeFit permits TubeCalibration, TubeFit.Uncalibrated {

    /**
     * The tube stays uncalibrated.
     *
     * @param reason sentence for whoever measured: what is missing and what would do
     */
    record Uncalibrated(String reason) implements TubeFit {}
}
