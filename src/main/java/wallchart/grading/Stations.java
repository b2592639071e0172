package wallchart.grading;

import wallchart.equipment.Generator;
import wallchart.technique.ExposureArithmetic;

/** What a console adds to a prediction. */
final class Stations {

    private Stations() {}

    /** The most that the nearest mAs station lies off, in dB: half the widest step. 0 for a console of one station. */
    static double roundingDb(Generator generator) {
        var stations = generator.mAs().stations();
        double widest = 1;
        for (int i = 1; i < stations.size(); i++) {
            widest = Math.max(
                    widest,
                    stations.get(i).inMilliampereSeconds() / stations.get(i - 1).inMilliampereSeconds());
        }
        return ExposureArithmetic.decibels(Math.sqrt(widest));
    }
}
