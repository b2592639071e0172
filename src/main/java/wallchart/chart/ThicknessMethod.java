package wallchart.chart;

import java.math.BigDecimal;
import java.util.Optional;
import wallchart.quantity.Decimals;

/** How a row's technique follows the measured thickness away from the reference thickness. */
public sealed interface ThicknessMethod {

    /** Kilovolts per centimetre where a chart names no rate; common practice, no source. */
    BigDecimal DEFAULT_KV_PER_CM = new BigDecimal("2.0");

    /** Centimetres per doubling of the mAs where a chart names none; common practice, no source. */
    BigDecimal DEFAULT_CM_PER_DOUBLING = new BigDecimal("5");

    /** The word used in files and answers. */
    String slug();

    /** The rate in the method's own unit, where it has one. */
    Optional<BigDecimal> rate();

    /** So many kilovolts more for each centimetre more; over 0, at most 10. */
    record KilovoltsPerCentimetre(BigDecimal kVPerCm) implements ThicknessMethod {
        public KilovoltsPerCentimetre {
            kVPerCm = within("kV per cm", kVPerCm, BigDecimal.TEN);
        }

        @Override
        public String slug() {
            return "kv-per-cm";
        }

        @Override
        public Optional<BigDecimal> rate() {
            return Optional.of(kVPerCm);
        }
    }

    /** The mAs doubles over so many centimetres; over 0, at most 20. */
    record CentimetresPerDoubling(BigDecimal cmPerDoubling) implements ThicknessMethod {
        private static final BigDecimal MOST = new BigDecimal("20");

        public CentimetresPerDoubling {
            cmPerDoubling = within("cm per doubling of the mAs", cmPerDoubling, MOST);
        }

        @Override
        public String slug() {
            return "mas-per-cm";
        }

        @Override
        public Optional<BigDecimal> rate() {
            return Optional.of(cmPerDoubling);
        }
    }

    /** The technique is the same over the whole band. */
    record Fixed() implements ThicknessMethod {
        @Override
        public String slug() {
            return "fixed";
        }

        @Override
        public Optional<BigDecimal> rate() {
            return Optional.empty();
        }
    }

    /** The mAs follows the modelled receptor signal behind water of that thickness. */
    record Attenuation() implements ThicknessMethod {
        @Override
        public String slug() {
            return "attenuation";
        }

        @Override
        public Optional<BigDecimal> rate() {
            return Optional.empty();
        }
    }

    /**
     * The method of that slug with that rate, or with its default rate.
     *
     * @throws IllegalArgumentException for an unknown slug, a rate out of range, or a rate on a method that has none
     */
    static ThicknessMethod of(String slug, Optional<BigDecimal> rate) {
        return switch (slug) {
            case "kv-per-cm" -> new KilovoltsPerCentimetre(rate.orElse(DEFAULT_KV_PER_CM));
            case "mas-per-cm" -> new CentimetresPerDoubling(rate.orElse(DEFAULT_CM_PER_DOUBLING));
            case "fixed" -> withoutRate(new Fixed(), rate);
            case "attenuation" -> withoutRate(new Attenuation(), rate);
            default ->
                throw new IllegalArgumentException(
                        "thickness method is \"" + slug + "\": write kv-per-cm, mas-per-cm, fixed or attenuation");
        };
    }

    private static ThicknessMethod withoutRate(ThicknessMethod method, Optional<BigDecimal> rate) {
        if (rate.isPresent()) {
            throw new IllegalArgumentException("thickness method " + method.slug() + " takes no rate, but "
                    + rate.get().toPlainString() + " is given");
        }
        return method;
    }

    private static BigDecimal within(String what, BigDecimal rate, BigDecimal most) {
        if (rate.signum() <= 0
                || rate.compareTo(most) > 0
                || rate.stripTrailingZeros().scale() > 2) {
            throw new IllegalArgumentException(what + " is " + rate.toPlainString() + ": over 0, at most "
                    + Decimals.plain(most) + ", at most 2 decimal places");
        }
        return rate.setScale(2);
    }
}
