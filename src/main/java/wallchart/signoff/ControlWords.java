package wallchart.signoff;

import wallchart.chart.ExposureControl;
import wallchart.chart.Row;

/** How a row ends the exposure, in the words of a review. */
final class ControlWords {

    private ControlWords() {}

    /** Such as {@code 75 kV, 25 mAs} or {@code 120 kV, AEC left+right, density 0, back-up 100 mAs}. */
    static String of(Row row) {
        var setting = row.setting();
        return setting.kV() + ", "
                + (setting.control() instanceof ExposureControl.Automatic aec
                        ? "AEC " + aec.chamberWords() + ", density " + aec.density() + ", back-up " + aec.backup()
                        : setting.control().mAs().toString());
    }
}
