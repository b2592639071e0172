package wallchart.technique;

import wallchart.chart.Row;
import wallchart.chart.ThicknessMethod;
import wallchart.equipment.Room;

/**
 * What one row sets along the thickness, before any rounding to stations: the same rules as an answer, without its words, for a check
 * that asks thousands of times. For one thread.
 */
public final class RowCourse {

    private final Row row;
    private final Console console;
    private final double kV;
    private final double mAs;
    private final double reference;
    private final ArrangedBeam beam;
    private double signalAtReference;

    /** @param beam of the row's own arrangement and receptor; asked for rows of method {@code attenuation} only */
    public RowCourse(Room room, Row row, ArrangedBeam beam) {
        this.row = row;
        this.console = new Console(room, row);
        this.kV = row.setting().kV().inKilovolts();
        this.mAs = row.setting().control().mAs().inMilliampereSeconds();
        this.reference = row.referenceThickness().inCentimetres();
        this.beam = beam;
    }

    /**
     * The row's setting by its thickness method alone: rule 2. Its kV may come out beyond what any tube has, even under 0.
     *
     * @throws IllegalArgumentException where the method is {@code attenuation} and the beam model does not reach
     */
    public Working byThickness(double thicknessCentimetres) {
        double more = thicknessCentimetres - reference;
        var method = row.setting().thicknessMethod();
        if (method instanceof ThicknessMethod.KilovoltsPerCentimetre linear) {
            return new Working(kV + linear.kVPerCm().doubleValue() * more, mAs);
        }
        if (method instanceof ThicknessMethod.CentimetresPerDoubling doubling) {
            return new Working(
                    kV,
                    mAs
                            * ExposureArithmetic.doublingFactor(
                                    more, doubling.cmPerDoubling().doubleValue()));
        }
        if (method instanceof ThicknessMethod.Attenuation) {
            return new Working(kV, mAs * atReference() / beam.signalPerMAs(kV, thicknessCentimetres));
        }
        return new Working(kV, mAs);
    }

    private double atReference() {
        if (signalAtReference == 0) {
            signalAtReference = beam.signalPerMAs(kV, reference);
        }
        return signalAtReference;
    }

    /** The same within the row's kV window and the generator's range, the mAs making up for it: rules 2 and 6. */
    public Working at(double thicknessCentimetres) {
        return limited(byThickness(thicknessCentimetres));
    }

    /** Rule 6. */
    public Working limited(Working wanted) {
        return wanted.kV() > 0 ? console.limit(wanted) : wanted;
    }
}
