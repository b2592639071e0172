package wallchart.equipment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import wallchart.quantity.Distance;
import wallchart.quantity.PartThickness;

/**
 * One place in the room where examinations are made.
 *
 * @param kind tabletop, table bucky, wall bucky or mobile
 * @param receptorGap from the patient's surface away from the tube to the image receptor
 * @param sids allowed source-to-receptor distances
 * @param grids ids of the grids that can be used here; {@link Grid#NONE} among them where none can be used too
 * @param receptors ids of the receptors that can be used here, at least one
 * @param chambers chambers of the automatic exposure control; empty where there is none
 */
public record Support(
        SupportKind kind,
        Distance receptorGap,
        AllowedDistances sids,
        List<String> grids,
        List<String> receptors,
        Set<Chamber> chambers) {

    private static final Distance LARGEST_GAP = Distance.centimetres(50);

    public Support {
        if (receptorGap.compareTo(LARGEST_GAP) > 0) {
            throw new IllegalArgumentException("receptor gap is " + receptorGap + ": at most " + LARGEST_GAP);
        }
        if (grids.isEmpty()) {
            throw new IllegalArgumentException("no grid choice: list the grids usable here, or none");
        }
        if (receptors.isEmpty()) {
            throw new IllegalArgumentException("no receptor: list at least one");
        }
        grids = List.copyOf(grids);
        receptors = List.copyOf(receptors);
        chambers = Set.copyOf(chambers);
    }

    /** From focal spot to skin, in cm: what part and receptor gap leave of the SID; 0 or less where they do not fit. */
    public BigDecimal focusSkinCentimetres(Distance sid, PartThickness part) {
        return sid.centimetres().subtract(part.centimetres()).subtract(receptorGap.centimetres());
    }
}
