package wallchart.technique;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * The units in which reference levels are published. Those of the kerma-area product differ by powers of ten, are swapped easily
 * and look alike: 1 Gy cm2 = 10 dGy cm2 = 100 cGy cm2 = 100 uGy m2 = 1000 mGy cm2.
 */
public enum LevelUnit {
    MICROGRAY("uGy", false, "1"),
    MILLIGRAY("mGy", false, "1000"),
    MICROGRAY_SQUARE_METRE("uGy m2", true, "1"),
    MILLIGRAY_SQUARE_CENTIMETRE("mGy cm2", true, "0.1"),
    CENTIGRAY_SQUARE_CENTIMETRE("cGy cm2", true, "1"),
    DECIGRAY_SQUARE_CENTIMETRE("dGy cm2", true, "10"), // DICOM (0018,115E) Image and Fluoroscopy Area Dose Product
    GRAY_SQUARE_CENTIMETRE("Gy cm2", true, "100");

    private final String written;
    private final boolean timesArea;
    private final BigDecimal inBase;

    LevelUnit(String written, boolean timesArea, String inBase) {
        this.written = written;
        this.timesArea = timesArea;
        this.inBase = new BigDecimal(inBase);
    }

    /** As it is written in settings and answers. */
    public String written() {
        return written;
    }

    /** Whether it is a unit of kerma times area. */
    public boolean isTimesArea() {
        return timesArea;
    }

    /** So much of this unit in microgray, or in microgray times square metres. */
    BigDecimal inBase(BigDecimal value) {
        return value.multiply(inBase);
    }

    /** The unit written so. */
    public static Optional<LevelUnit> find(String written) {
        return Arrays.stream(values())
                .filter(unit -> unit.written.equals(written))
                .findFirst();
    }

    /** All that can be written, for people. */
    public static String choices(boolean timesArea) {
        return Arrays.stream(values())
                .filter(unit -> unit.timesArea == timesArea)
                .map(LevelUnit::written)
                .collect(Collectors.joining(", "));
    }
}
