package wallchart.chart;

import java.util.Locale;
import java.util.Optional;
import wallchart.equipment.Generator;
import wallchart.equipment.Room;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;

/** Whether the console of the room can be set to what a row says, and how far off the nearest stations are. */
final class SettingChecks {

    /** Where the model of the receptor signal behind a patient holds. */
    private static final VoltageWindow MODELLED =
            new VoltageWindow(TubeVoltage.kilovolts(40), TubeVoltage.kilovolts(150));

    private static final PartThickness THICKEST_MODELLED = PartThickness.centimetres(36);

    private static final int LEAST_TARGET = 10;
    private static final int MOST_TARGET = 10_000;

    private SettingChecks() {}

    static void check(RowFindings findings, Room room) {
        var generator = room.generator();
        boolean possible = checkRange(findings, room.id(), generator);
        possible &= checkWindow(findings, generator);
        if (findings.setting().control() instanceof ExposureControl.Manual manual) {
            possible &= checkCurrentTime(findings, room.id(), generator, manual.mAs());
        }
        if (possible) {
            tellStations(findings, generator);
        }
        checkTarget(findings);
        if (findings.setting().thicknessMethod() instanceof ThicknessMethod.Attenuation) {
            checkModelled(findings, room);
        }
    }

    private static boolean checkRange(RowFindings findings, String room, Generator generator) {
        var kV = findings.setting().kV();
        var range = new VoltageWindow(generator.kV().lowest(), generator.kV().highest());
        if (!range.holds(kV)) {
            findings.blocking(
                    "kV", kV + " lies outside the generator of room " + room + ", " + range + ": choose a kV within");
        }
        return range.holds(kV);
    }

    private static boolean checkWindow(RowFindings findings, Generator generator) {
        var kV = findings.setting().kV();
        var window = findings.setting().kVWindow();
        window.filter(of -> !of.holds(kV))
                .ifPresent(of -> findings.blocking(
                        "kVFrom", "the kV window " + of + " does not hold the row's " + kV + ": widen it"));
        boolean station = Stations.of(generator).voltage(findings.setting()).isPresent();
        if (!station) {
            findings.blocking(
                    "kVFrom",
                    "no kV station of the generator lies in the window "
                            + window.map(Object::toString).orElse("") + ": widen it");
        }
        return station && window.map(of -> of.holds(kV)).orElse(true);
    }

    private static boolean checkCurrentTime(
            RowFindings findings, String room, Generator generator, CurrentTimeProduct mAs) {
        var stations = generator.mAs();
        boolean outside = stations.isAbove(mAs.inMilliampereSeconds()) || stations.isBelow(mAs.inMilliampereSeconds());
        if (outside) {
            findings.blocking(
                    "mAs",
                    mAs + " lies outside the generator of room " + room + ", " + stations.smallest() + " to "
                            + stations.largest() + ", by more than half a step: choose mAs within");
        }
        return !outside;
    }

    private static void tellStations(RowFindings findings, Generator generator) {
        var setting = findings.setting();
        var stations = Stations.of(generator);
        var kV = stations.voltage(setting).orElseThrow();
        var mAs = stations.currentTime(setting, kV);
        if (!kV.equals(setting.kV())) {
            findings.caution("kV", setting.kV() + " is no station: " + set(kV, mAs, setting));
        }
        if (mAs.isPresent() && !generator.mAs().has(setting.control().mAs())) {
            findings.caution("mAs", setting.control().mAs() + " is no station: " + set(kV, mAs, setting));
        }
    }

    private static String set(TubeVoltage kV, Optional<CurrentTimeProduct> mAs, RowSetting setting) {
        return mAs.map(product -> String.format(
                        Locale.ROOT,
                        "%s and %s will be set, %+.2f dB at the receptor: write stations to have no deviation",
                        kV,
                        product,
                        Stations.deviation(setting, kV, product)))
                .orElse(kV + " will be set and the AEC follows: write a station");
    }

    private static void checkTarget(RowFindings findings) {
        findings.setting()
                .targetExposureIndex()
                .filter(target -> target < LEAST_TARGET || target > MOST_TARGET)
                .ifPresent(target -> findings.blocking(
                        "targetExposureIndex",
                        "target exposure index " + target + " lies outside " + LEAST_TARGET + " to " + MOST_TARGET
                                + ": correct it, or leave it out for the receptor's own"));
    }

    /** A row that the beam model reaches nowhere in its band would be refused whenever it is asked for. */
    private static void checkModelled(RowFindings findings, Room room) {
        var kV = findings.setting().kV();
        if (!MODELLED.holds(kV)) {
            findings.blocking(
                    "thicknessMethod",
                    "attenuation is modelled for " + MODELLED + ", the row has " + kV + ": choose another method");
        }
        room.tube()
                .findModelObjection(findings.setting().addedFiltration())
                .ifPresent(objection -> findings.blocking(
                        "addedFiltration",
                        "attenuation cannot be modelled, so the row would be refused whenever it is asked for: "
                                + objection + "; or choose another thickness method"));
        var thickest = findings.row().key().band().to();
        if (thickest.compareTo(THICKEST_MODELLED) > 0) {
            findings.blocking(
                    "thicknessMethod",
                    "attenuation is modelled up to " + THICKEST_MODELLED + ", the band ends at " + thickest
                            + ": choose another method or end the band sooner");
        }
    }
}
