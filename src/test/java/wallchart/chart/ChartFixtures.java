package wallchart.chart;

import java.math.BigDecimal;

/** Rows, charts and versions for tests, made for the invented room {@code r1} of the equipment fixtures. */
public final class ChartFixtures {

    private ChartFixtures() {}

    /**
     * Lumbar spine AP of an adult of 18 to 24 cm at the table bucky: 75 kV, 25 mAs, large focal spot, grid g10, SID 110 cm,
     * 2 kV per cm.
     */
    public static RowBuilder aRow() {
        return new RowBuilder();
    }

    /** A chart without rows; {@code aChart().withBand(18, 24)} has the row of {@link #aRow()}. */
    public static ChartBuilder aChart() {
        return new ChartBuilder();
    }

    /** A named adjustment that adds kV. */
    public static Adjustment addingKV(String name, String kV) {
        return new Adjustment(name, "Adds " + kV + " kV", new Adjustment.AddKilovolts(new BigDecimal(kV)), "");
    }

    /** A named adjustment that multiplies the mAs. */
    public static Adjustment timesMAs(String name, String factor) {
        return new Adjustment(name, "Times " + factor, new Adjustment.MultiplyCurrentTime(new BigDecimal(factor)), "");
    }
}
