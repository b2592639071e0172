package wallchart.upkeep;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.Room;
import wallchart.physics.TubeQuestion;
import wallchart.quantity.Decimals;
import wallchart.technique.EquipmentEffects;
import wallchart.technique.OutputShift;

/** Whether a new measurement lies as a whole far from the one that it replaces: tubes age by percents, slips go by factors. */
final class OutputStep {

    /**
     * After over before, either way. A tube loses some 10 to 20 % of its output over its life as the anode roughens (from memory), and two
     * dosemeters differ by some 5 %. Our own choice.
     */
    private static final double LARGEST = 1.3;

    private OutputStep() {}

    /**
     * What is asked of a measurement that differs from the one before. The median over the tube voltages that both cover, with the same
     * filtration, is taken: one wrong output is a matter of its own.
     */
    static Optional<TubeQuestion> find(EquipmentEffects effects, Room before, Room after) {
        if (before.tube().output().isEmpty()
                || after.tube().output().isEmpty()
                || before.tube().output().equals(after.tube().output())) {
            return Optional.empty();
        }
        return median(effects.outputs(before, after), before, after)
                .filter(shift -> shift.ratio() > LARGEST || shift.ratio() < 1 / LARGEST)
                .map(shift -> question(shift, before));
    }

    private static Optional<OutputShift> median(List<OutputShift> all, Room before, Room after) {
        var common = all.stream()
                .filter(shift -> covers(before, shift) && covers(after, shift))
                .toList();
        var taken = (common.isEmpty() ? all : common)
                .stream().sorted(Comparator.comparing(OutputShift::ratio)).toList();
        return taken.isEmpty() ? Optional.empty() : Optional.of(taken.get(taken.size() / 2));
    }

    private static boolean covers(Room room, OutputShift shift) {
        return room.tube().output().orElseThrow().covers(shift.kilovolts());
    }

    private static TubeQuestion question(OutputShift shift, Room before) {
        var ratio = "x " + Decimals.significant(shift.ratio(), 3);
        return TubeQuestion.ofOutputs(
                TubeQuestion.OUTPUT_STEP,
                ratio,
                "the outputs are " + ratio + " of those measured "
                        + before.tube().output().orElseThrow().measuredOn() + " ("
                        + Decimals.significant(shift.after(), 3) + " over " + Decimals.significant(shift.before(), 3)
                        + " uGy/mAs at " + Decimals.significant(shift.kilovolts(), 4)
                        + " kV); questioned beyond 30 % either way",
                "check unit, distance and room, measure again");
    }
}
