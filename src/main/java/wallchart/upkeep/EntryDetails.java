package wallchart.upkeep;

import java.util.Map;
import java.util.TreeMap;
import wallchart.equipment.RoomRevision;
import wallchart.quantity.Decimals;
import wallchart.upkeep.Drafting.Sound;

/** What the event of an entry says beside the revision: what was confirmed, and what was known of its effects then. */
final class EntryDetails {

    private static final int DIGITS = 4;

    private EntryDetails() {}

    static Map<String, Object> of(RoomRevision base, Sound sound, EquipmentEntry entry, EffectsReport report) {
        var details = new TreeMap<String, Object>();
        details.put("entered", entry.edit().name());
        details.put("replaces", base.number());
        details.put("affectedRows", report.affectedRows());
        details.put(
                "chartVersions",
                report.charts().stream().map(chart -> chart.version().number()).toList());
        report.largestOutput().ifPresent(shift -> {
            details.put("largestOutputRatio", Decimals.significant(shift.ratio(), DIGITS));
            details.put(
                    "largestOutputRatioAt",
                    Decimals.significant(shift.kilovolts(), DIGITS) + " kV, " + shift.filtration());
        });
        if (sound.measured()) {
            details.put(
                    "measuredOn",
                    sound.room().tube().output().orElseThrow().measuredOn().toString());
            details.put("confirmed", entry.confirmed().stream().sorted().toList());
            details.put("calibration", report.calibration());
            entry.replacesMeasuredOn().ifPresent(day -> details.put("replacesMeasuredOn", day.toString()));
        }
        return details;
    }
}
