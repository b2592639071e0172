package wallchart.quantity;

import java.util.Arrays;
import java.util.Optional;

/** What a site reads and types lengths in; one inch is 2.54 cm exactly (international inch, 1959). */
public enum LengthUnit {
    CENTIMETRE("cm"),
    INCH("in");

    private final String symbol;

    LengthUnit(String symbol) {
        this.symbol = symbol;
    }

    /** As it is written after a number, and in the settings. */
    public String symbol() {
        return symbol;
    }

    /** The unit of that symbol, if it is one. */
    public static Optional<LengthUnit> find(String symbol) {
        return Arrays.stream(values())
                .filter(unit -> unit.symbol.equals(symbol))
                .findFirst();
    }
}
