package wallchart.technique;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.equipment.Chamber;
import wallchart.equipment.Grid;
import wallchart.equipment.Room;
import wallchart.equipment.Support;

/** What a row was made for and the room, refitted since the chart was signed, no longer has. */
final class Refit {

    private Refit() {}

    /** Empty where the room still has everything the row names, and has it at the row's support. */
    static Optional<Refusal> objection(Room room, Row row) {
        var kind = row.key().examination().support();
        var missing = room.findSupport(kind)
                .map(support -> missingAt(support, room, row))
                .orElseGet(() -> List.of("support " + kind.slug()));
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        var reason = "row " + row.key() + " was made for " + String.join(" and ", missing) + ", which room " + room.id()
                + " no longer has there";
        return Optional.of(Refusal.notAchievable(
                reason + ": do not use the row; propose a change",
                List.of(reason),
                List.of(Offer.words("another room"))));
    }

    private static List<String> missingAt(Support support, Room room, Row row) {
        var setting = row.setting();
        var missing = new ArrayList<String>();
        if (!support.receptors().contains(setting.receptor())
                || room.findReceptor(setting.receptor()).isEmpty()) {
            missing.add("receptor " + setting.receptor());
        }
        if (!support.grids().contains(setting.grid()) || !knows(room, setting.grid())) {
            missing.add("grid " + setting.grid());
        }
        if (setting.control() instanceof ExposureControl.Automatic automatic) {
            missing.addAll(missingForAec(support, room, automatic));
        }
        return missing;
    }

    private static boolean knows(Room room, String gridName) {
        return gridName.equals(Grid.NONE) || room.findGrid(gridName).isPresent();
    }

    private static List<String> missingForAec(Support support, Room room, ExposureControl.Automatic automatic) {
        var aec = room.generator().automaticExposureControl();
        if (aec.isEmpty()) {
            return List.of("automatic exposure control");
        }
        var missing = new ArrayList<>(automatic.chambers().stream()
                .filter(chamber -> !support.chambers().contains(chamber))
                .sorted()
                .map(Chamber::slug)
                .map(slug -> "AEC chamber " + slug)
                .toList());
        if (!aec.get().densities().contains(automatic.density())) {
            missing.add("AEC density " + automatic.density());
        }
        return missing;
    }
}
