package wallchart.upkeep;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.EquipmentEdit;

/**
 * What a medical physicist enters about a room.
 *
 * @param edit the equipment, or the part that was measured
 * @param reason why, in their words
 * @param confirmed codes of what they measured again or stand by although it is questioned
 * @param replacesMeasuredOn the day of the measurement in force, named by whoever puts an older one in its place; else absent
 */
public record EquipmentEntry(
        EquipmentEdit edit, String reason, List<String> confirmed, Optional<LocalDate> replacesMeasuredOn) {

    public EquipmentEntry {
        confirmed = List.copyOf(confirmed);
    }
}
