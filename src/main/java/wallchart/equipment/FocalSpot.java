package wallchart.equipment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wallchart.quantity.ElectricPower;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/**
 * One focal spot of the tube and how much power it may take for how long.
 *
 * @param name small or large
 * @param nominalValue nominal focal spot value (IEC 60336), 0.1 to 3
 * @param ratings single-exposure rating, by ascending exposure time and never rising power; the last time is the longest allowed
 */
public record FocalSpot(FocalSpotName name, BigDecimal nominalValue, List<Rating> ratings) {

    private static final BigDecimal SMALLEST = new BigDecimal("0.1");
    private static final BigDecimal LARGEST = new BigDecimal("3");

    /** A product of decimals misses its value by some 1e-15: 64.4 kV at 400 mA is 25.76 kW and within a rating of 25.76 kW. */
    private static final double SAME_POWER = 1e-9;

    /** Power allowed for a single exposure up to the given time. */
    public record Rating(ExposureTime upTo, ElectricPower power) {}

    public FocalSpot {
        if (nominalValue.stripTrailingZeros().scale() > 2) {
            throw new IllegalArgumentException(
                    "nominal focal spot value is " + nominalValue.toPlainString() + ": at most 2 decimal places");
        }
        nominalValue = nominalValue.setScale(2);
        if (nominalValue.compareTo(SMALLEST) < 0 || nominalValue.compareTo(LARGEST) > 0) {
            throw new IllegalArgumentException("nominal focal spot value is " + nominalValue.toPlainString()
                    + ": it lies within " + SMALLEST + " and " + LARGEST);
        }
        Ascending.require(
                "focal spot rating times", ratings.stream().map(Rating::upTo).toList());
        requireFallingPower(ratings);
        ratings = List.copyOf(ratings);
    }

    private static void requireFallingPower(List<Rating> ratings) {
        for (int i = 0; i < ratings.size(); i++) {
            var power = ratings.get(i).power();
            if (power.kilowatts().signum() == 0) {
                throw new IllegalArgumentException("focal spot rating is 0 kW: it must be over 0");
            }
            if (i > 0 && power.compareTo(ratings.get(i - 1).power()) > 0) {
                throw new IllegalArgumentException("focal spot rating rises from "
                        + ratings.get(i - 1).power() + " to " + power + " at the longer time: it may only fall");
            }
        }
    }

    /**
     * Power allowed at an exposure time: that of the shortest tabulated time that is not under it, so that a time between two
     * tabulated ones gets the lower power. Empty beyond the last tabulated time.
     */
    public Optional<ElectricPower> powerAllowedFor(ExposureTime time) {
        for (var rating : ratings) {
            if (time.compareTo(rating.upTo()) <= 0) {
                return Optional.of(rating.power());
            }
        }
        return Optional.empty();
    }

    /** Whether it may be loaded with that voltage and current for so long; a load just at the rating is allowed. */
    public boolean bears(TubeVoltage kV, TubeCurrent mA, ExposureTime time) {
        double kilowatts = kV.inKilovolts() * mA.inMilliamperes() / 1000;
        return powerAllowedFor(time)
                .map(allowed -> kilowatts <= allowed.inKilowatts() + SAME_POWER)
                .orElse(false);
    }

    public ExposureTime longestTime() {
        return ratings.get(ratings.size() - 1).upTo();
    }
}
