package wallchart.chart;

import wallchart.equipment.FocalSpot;
import wallchart.equipment.Generator;
import wallchart.equipment.Room;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeVoltage;

/** Whether the tube has the row's focal spot, and whether that bears a manual row's exposure at some tube current. */
final class LoadingChecks {

    private LoadingChecks() {}

    static void check(RowFindings findings, Room room) {
        var name = findings.setting().focalSpot();
        var spot = room.tube().find(name);
        if (spot.isEmpty()) {
            findings.blocking(
                    "focalSpot",
                    "the tube of room " + room.id() + " has no " + name.slug() + " focal spot: choose the other");
        }
        var stations = Stations.of(room.generator());
        spot.ifPresent(
                of -> stations.voltage(findings.setting()).ifPresent(kV -> stations.currentTime(findings.setting(), kV)
                        .ifPresent(mAs -> check(findings, room.generator(), of, kV, mAs))));
    }

    private static void check(
            RowFindings findings, Generator generator, FocalSpot spot, TubeVoltage kV, CurrentTimeProduct mAs) {
        boolean possible = generator
                .largestCurrent(spot, kV, mAs)
                .map(mAs::timeAt)
                .filter(time -> isWithin(findings.setting(), time))
                .isPresent();
        if (!possible) {
            var longest = findings.setting()
                    .longestTime()
                    .map(time -> " and the row's longest time " + time)
                    .orElse("");
            findings.blocking(
                    "mAs",
                    kV + " with " + mAs + " is not possible: no mA station keeps to the rating of the "
                            + spot.name().slug() + " focal spot (up to " + spot.longestTime()
                            + "), the shortest exposure time " + generator.shortestTime() + longest
                            + ": lower the mAs, raise the kV, or choose the other focal spot");
        }
    }

    private static boolean isWithin(RowSetting setting, ExposureTime time) {
        return setting.longestTime()
                .map(longest -> time.compareTo(longest) <= 0)
                .orElse(true);
    }
}
