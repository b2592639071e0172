package wallchart.equipment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Rounded series of preferred numbers that generators use for their current-time product.
 *
 * <p>Values of one decade: ISO 3:1973 for R10, ISO 497:1973 for the more rounded R'10, R''10 and R'20.
 */
public enum PreferredNumbers {
    R10("R10", "1.00 1.25 1.60 2.00 2.50 3.15 4.00 5.00 6.30 8.00"),
    R10_ROUNDED("R'10", "1.00 1.25 1.60 2.00 2.50 3.20 4.00 5.00 6.30 8.00"),
    R10_MORE_ROUNDED("R''10", "1.0 1.2 1.5 2.0 2.5 3.0 4.0 5.0 6.0 8.0"),
    R20_ROUNDED(
            "R'20",
            "1.00 1.10 1.25 1.40 1.60 1.80 2.00 2.20 2.50 2.80 3.20 3.60 4.00 4.50 5.00 5.60 6.30 7.10 8.00 9.00");

    private final String symbol;
    private final List<BigDecimal> decade;

    PreferredNumbers(String symbol, String decade) {
        this.symbol = symbol;
        this.decade = Arrays.stream(decade.split(" ")).map(BigDecimal::new).toList();
    }

    /** The series' symbol in the standard, such as {@code R'10}. */
    public String symbol() {
        return symbol;
    }

    /** The values from 1 to under 10. */
    public List<BigDecimal> decade() {
        return decade;
    }

    /**
     * All numbers of the series from {@code from} to {@code to}, both included, ascending.
     *
     * @throws IllegalArgumentException if a bound is not a number of the series, or they are the wrong way round
     */
    public List<BigDecimal> between(BigDecimal from, BigDecimal to) {
        if (from.signum() <= 0 || from.compareTo(to) > 0) {
            throw new IllegalArgumentException(symbol + " from " + from.toPlainString() + " to " + to.toPlainString()
                    + ": from must be over 0 and not over to");
        }
        var numbers = new ArrayList<BigDecimal>();
        for (int power = -3; power <= 4; power++) {
            for (var value : decade) {
                var number = value.scaleByPowerOfTen(power);
                if (number.compareTo(from) >= 0 && number.compareTo(to) <= 0) {
                    numbers.add(number);
                }
            }
        }
        requireMember(from, numbers);
        requireMember(to, numbers);
        return List.copyOf(numbers);
    }

    private void requireMember(BigDecimal bound, List<BigDecimal> numbers) {
        if (numbers.stream().noneMatch(number -> number.compareTo(bound) == 0)) {
            throw new IllegalArgumentException(bound.toPlainString() + " is not a number of the series " + symbol
                    + " (between 0.001 and 90000): use one, or list the stations");
        }
    }

    static Optional<PreferredNumbers> find(String symbol) {
        return Arrays.stream(values())
                .filter(series -> series.symbol.equals(symbol))
                .findFirst();
    }
}
