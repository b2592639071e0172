package wallchart.technique;

/**
 * Tube voltage and current-time product while they are worked out; exact, not rounded to anything.
 *
 * @param kV over 0
 * @param mAs over 0
 */
public record Working(double kV, double mAs) {

    Working after(Effect effect) {
        return new Working(kV + effect.addKilovolts(), mAs * effect.timesCurrentTime());
    }
}
