package wallchart.chart;

import wallchart.chart.ExposureControl.Automatic;
import wallchart.equipment.AutomaticExposureControl;
import wallchart.equipment.Chamber;
import wallchart.equipment.Room;
import wallchart.equipment.Support;

/** Whether generator and support can do what an AEC row asks. */
final class AecChecks {

    private AecChecks() {}

    static void check(RowFindings findings, Room room) {
        if (findings.setting().control() instanceof Automatic automatic) {
            room.generator()
                    .automaticExposureControl()
                    .ifPresentOrElse(
                            aec -> checkSetting(findings, automatic, aec),
                            () -> findings.blocking(
                                    "aecChambers",
                                    "the generator of room " + room.id() + " has no AEC: give mAs instead"));
            room.findSupport(findings.row().key().examination().support())
                    .ifPresent(support -> checkChambers(findings, automatic, support));
        }
    }

    private static void checkSetting(RowFindings findings, Automatic automatic, AutomaticExposureControl aec) {
        if (!aec.densities().contains(automatic.density())) {
            findings.blocking(
                    "aecDensity",
                    "density " + automatic.density() + " is not among those of the generator, " + aec.densities()
                            + ": choose one of these");
        }
        if (automatic.backup().compareTo(aec.largestBackup()) > 0) {
            findings.blocking(
                    "backupMAs",
                    "back-up " + automatic.backup() + " is over the largest the generator allows, "
                            + aec.largestBackup() + ": lower it");
        }
    }

    private static void checkChambers(RowFindings findings, Automatic automatic, Support support) {
        automatic.chambers().stream()
                .filter(chamber -> !support.chambers().contains(chamber))
                .sorted()
                .forEach(chamber -> findings.blocking("aecChambers", missing(chamber, support)));
    }

    private static String missing(Chamber chamber, Support support) {
        var has = support.chambers().stream().sorted().map(Chamber::slug).toList();
        return "the " + support.kind().slug() + " has no " + chamber.slug() + " chamber: "
                + (has.isEmpty() ? "it has no AEC, give mAs instead" : "choose among " + String.join(", ", has));
    }
}
