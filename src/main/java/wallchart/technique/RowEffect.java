package wallchart.technique;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a change of the room's equipment does to one row as it was signed, at its reference thickness, for whoever goes on setting it.
 *
 * @param rowKey key of the row
 * @param output of the tube at the row's kV and filtration; absent where it is not predicted
 * @param exposureDb shift of the receptor exposure, to hundredths of a dB; absent where it is not predicted
 * @param kermaPercent change of the entrance air kerma, to tenths; absent where it is not predicted
 * @param usable whether the room can still be set to the row
 * @param affected whether a figure passes {@link EquipmentEffects#NOTABLE_PERCENT}, or the row lost something it was signed with
 * @param remarks what is gone, what is set instead, and why something is not predicted
 */
public record RowEffect(
        String rowKey,
        Optional<OutputShift> output,
        OptionalDouble exposureDb,
        OptionalDouble kermaPercent,
        boolean usable,
        boolean affected,
        List<String> remarks) {

    public RowEffect {
        remarks = List.copyOf(remarks);
    }

    /** Change of the output, to tenths. */
    public OptionalDouble outputPercent() {
        return output.map(shift -> OptionalDouble.of(shift.percent())).orElseGet(OptionalDouble::empty);
    }

    /** Whether anything at all is to be said about the row. */
    boolean isMoved() {
        return affected || !remarks.isEmpty() || isOff(outputPercent()) || isOff(exposureDb) || isOff(kermaPercent);
    }

    private static boolean isOff(OptionalDouble figure) {
        return figure.isPresent() && figure.getAsDouble() != 0;
    }
}
