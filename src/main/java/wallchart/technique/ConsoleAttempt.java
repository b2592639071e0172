package wallchart.technique;

import java.util.List;
import wallchart.equipment.FocalSpotName;

/** What comes of taking an exact technique to a console: a setting, or every reason why there is none. */
sealed interface ConsoleAttempt {

    /**
     * The console can do it.
     *
     * @param kVStationMAs exact mAs after the step to the kV station
     * @param roundingDeviation dB by which the mAs station moves the receptor exposure
     */
    record Achieved(ConsoleSetting set, Working limited, double kVStationMAs, double roundingDeviation)
            implements ConsoleAttempt {}

    /** It cannot. */
    record Impossible(List<String> reasons) implements ConsoleAttempt {}

    /** What is to be taken to the console. */
    record Wish(Working exact, FocalSpotName focalSpot) {}
}
