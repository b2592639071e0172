package wallchart.technique;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Adjustment;
import wallchart.chart.ThicknessMethod;
import wallchart.equipment.Grid;
import wallchart.quantity.Decimals;

/**
 * Rules 2 to 5: what thickness, named adjustments, grid and distance do to the row's technique. Thread-safe.
 *
 * <p>Each effect adds kilovolts or multiplies the mAs, and none depends on the order in which they are applied.
 */
final class Effects {

    private final PhantomSignal phantom;

    Effects(PhantomSignal phantom) {
        this.phantom = phantom;
    }

    /** The effects of a situation, in the order thickness, adjustments, grid, distance. */
    List<Effect> of(Situation situation) {
        var effects = new ArrayList<Effect>();
        effects.add(thickness(situation));
        situation.adjustments().forEach(adjustment -> effects.add(adjustment(adjustment)));
        double kVReached = situation.row().setting().kV().inKilovolts()
                + effects.stream().mapToDouble(Effect::addKilovolts).sum();
        effects.add(grid(situation, kVReached));
        effects.add(distance(situation));
        return List.copyOf(effects);
    }

    private Effect thickness(Situation situation) {
        var method = situation.row().setting().thicknessMethod();
        double more = situation.centimetresOverReference();
        if (more == 0) {
            return Effect.none("thickness", "at the reference thickness, " + situation.thickness());
        }
        if (method instanceof ThicknessMethod.KilovoltsPerCentimetre linear) {
            return Effect.addKilovolts(
                    "thickness",
                    Decimals.plain(linear.kVPerCm()) + " kV per cm x " + Words.number(more) + " cm",
                    linear.kVPerCm().doubleValue() * more);
        }
        if (method instanceof ThicknessMethod.CentimetresPerDoubling doubling) {
            double factor = ExposureArithmetic.doublingFactor(
                    more, doubling.cmPerDoubling().doubleValue());
            return Effect.multiply(
                    "thickness",
                    "mAs doubles per " + Decimals.plain(doubling.cmPerDoubling()) + " cm: " + Words.signed(more)
                            + " cm is x " + Words.number(factor),
                    factor);
        }
        if (method instanceof ThicknessMethod.Attenuation) {
            double factor = phantom.currentTimeFactor(situation);
            return Effect.multiply(
                    "thickness",
                    "modelled attenuation of " + Words.signed(more) + " cm of water is x " + Words.number(factor)
                            + ", by the " + signalName(situation),
                    factor);
        }
        return Effect.none("thickness", "fixed over the band: " + Words.signed(more) + " cm changes nothing");
    }

    private static String signalName(Situation situation) {
        return switch (Arrangement.of(situation).response()) {
            case CESIUM_IODIDE -> "signal in caesium iodide";
            case AIR_KERMA -> "air kerma at the receptor";
        };
    }

    private static Effect adjustment(Adjustment adjustment) {
        if (adjustment.effect() instanceof Adjustment.AddKilovolts more) {
            return Effect.addKilovolts(
                    "adjustment",
                    adjustment.label() + ": " + Words.signed(more.kV().doubleValue()) + " kV",
                    more.kV().doubleValue());
        }
        var factor = ((Adjustment.MultiplyCurrentTime) adjustment.effect()).factor();
        return Effect.multiply(
                "adjustment", adjustment.label() + ": mAs x " + Decimals.plain(factor), factor.doubleValue());
    }

    private static Effect grid(Situation situation, double kVReached) {
        if (situation.gridName().equals(situation.rowGridName())) {
            return Effect.none("grid", "grid " + situation.gridName() + " as in the row");
        }
        double asked = factorAt(situation.grid(), kVReached);
        double row = factorAt(situation.rowGrid(), kVReached);
        return Effect.multiply(
                "grid",
                "grid " + situation.gridName() + " instead of " + situation.rowGridName() + " at "
                        + Words.number(kVReached) + " kV: factor " + Words.number(asked) + " / " + Words.number(row),
                asked / row);
    }

    private static double factorAt(Optional<Grid> grid, double kV) {
        return grid.isEmpty() ? 1 : grid.get().factorAt(kV);
    }

    private static Effect distance(Situation situation) {
        var rowSid = situation.row().setting().sid();
        if (situation.sid().equals(rowSid)) {
            return Effect.none("distance", "SID " + rowSid + " as in the row");
        }
        return Effect.multiply(
                "distance",
                "SID " + situation.sid() + " instead of " + rowSid + ": ("
                        + Decimals.plain(situation.sid().centimetres()) + "/" + Decimals.plain(rowSid.centimetres())
                        + ")^2",
                ExposureArithmetic.distanceFactor(rowSid, situation.sid()));
    }
}
