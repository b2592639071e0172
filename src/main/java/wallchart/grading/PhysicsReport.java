package wallchart.grading;

import java.util.List;

/**
 * A chart held against beam physics in one room.
 *
 * @param examinations in the order of the chart
 * @param limits the site's
 * @param stationDb the most that rounding to the console's mAs stations adds to any prediction, either way
 * @param holds what the predictions hold for, each a sentence
 */
public record PhysicsReport(
        List<ExaminationPhysics> examinations, PhysicsLimits limits, double stationDb, List<String> holds) {

    public PhysicsReport {
        examinations = List.copyOf(examinations);
        holds = List.copyOf(holds);
    }

    /** All findings, in the order of the chart. */
    public List<PhysicsFinding> findings() {
        return examinations.stream()
                .flatMap(examination -> examination.findings().stream())
                .toList();
    }
}
