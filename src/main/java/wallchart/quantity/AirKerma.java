package wallchart.quantity;

/**
 * Air kerma as physics computes it, in microgray. An estimate of a technique, never a record of a patient.
 *
 * @param micrograys finite and zero or more
 */
public record AirKerma(double micrograys) implements Comparable<AirKerma> {

    public AirKerma {
        if (!(micrograys >= 0) || Double.isInfinite(micrograys)) {
            throw new IllegalArgumentException(
                    "air kerma (uGy) is " + micrograys + ": it must be finite and not negative");
        }
    }

    /** The value in milligray. */
    public double inMilligrays() {
        return micrograys / 1000;
    }

    @Override
    public int compareTo(AirKerma other) {
        return Double.compare(micrograys, other.micrograys);
    }

    @Override
    public String toString() {
        return Decimals.significant(micrograys, 4) + " uGy";
    }
}
