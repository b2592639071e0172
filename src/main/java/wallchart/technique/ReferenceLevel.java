package wallchart.technique;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import wallchart.quantity.Decimals;

/**
 * A reference level the site has chosen for one radiograph. It is a 75th percentile over sites (ICRP Publication 135), not a
 * limit and not for one patient.
 *
 * @param bodyPart DICOM Body Part Examined term
 * @param projection projection slug
 * @param patientGroup patient group id
 * @param quantity which quantity it is; an estimate is compared with it in this quantity alone
 * @param value over 0
 * @param unit a unit of that quantity
 * @param year of the set it belongs to
 * @param source what people look up to check it
 */
public record ReferenceLevel(
        String bodyPart,
        String projection,
        String patientGroup,
        Quantity quantity,
        BigDecimal value,
        LevelUnit unit,
        int year,
        String source) {

    /** No radiograph's level comes near: 100 Gy cm2 and 1 Gy, so what is over them is in another unit. */
    private static final BigDecimal MOST = new BigDecimal("10000");

    private static final BigDecimal MOST_KERMA = new BigDecimal("1000000");

    /** The quantities in use. The two kermas are about a factor 1.35 apart, and never compared with each other as they stand. */
    public enum Quantity {
        ENTRANCE_SURFACE_AIR_KERMA("entrance-surface-air-kerma", "entrance surface air kerma, with backscatter"),
        INCIDENT_AIR_KERMA("incident-air-kerma", "incident air kerma, without backscatter"),
        KERMA_AREA_PRODUCT("kerma-area-product", "air kerma-area product, without backscatter");

        private final String slug;
        private final String words;

        Quantity(String slug, String words) {
            this.slug = slug;
            this.words = words;
        }

        /** The word used in settings. */
        public String slug() {
            return slug;
        }

        /** The words used in answers. */
        public String words() {
            return words;
        }

        /** The other kerma; of the kerma-area product there is no other. */
        Optional<Quantity> otherKerma() {
            return switch (this) {
                case ENTRANCE_SURFACE_AIR_KERMA -> Optional.of(INCIDENT_AIR_KERMA);
                case INCIDENT_AIR_KERMA -> Optional.of(ENTRANCE_SURFACE_AIR_KERMA);
                case KERMA_AREA_PRODUCT -> Optional.empty();
            };
        }

        /** The quantity of that slug. */
        public static Optional<Quantity> find(String slug) {
            return Arrays.stream(values())
                    .filter(quantity -> quantity.slug.equals(slug))
                    .findFirst();
        }
    }

    public ReferenceLevel {
        var written = value.toPlainString() + " " + unit.written();
        boolean timesArea = quantity == Quantity.KERMA_AREA_PRODUCT;
        if (value.signum() <= 0) {
            throw new IllegalArgumentException("reference level is " + written + ": it must be over 0");
        }
        if (unit.isTimesArea() != timesArea) {
            throw new IllegalArgumentException("reference level is " + written + ", no unit of " + quantity.slug()
                    + ": write " + LevelUnit.choices(timesArea));
        }
        if (unit.inBase(value).compareTo(timesArea ? MOST : MOST_KERMA) > 0) {
            throw new IllegalArgumentException("reference level is " + written + ": no radiograph has one over "
                    + (timesArea ? "100 Gy cm2" : "1000 mGy") + ", check the unit");
        }
    }

    /** A kerma in milligray. */
    public BigDecimal inMilligrays() {
        return unit.inBase(value).movePointLeft(3).stripTrailingZeros();
    }

    /** In microgray, or in microgray times square metres. */
    public double inBase() {
        return unit.inBase(value).doubleValue();
    }

    /** An estimate over this level, in the level's own quantity; 1 is as much as the level. */
    public double share(DoseEstimate estimate) {
        return estimate.inBase(quantity) / inBase();
    }

    /**
     * What this level is in the other kerma, by the backscatter factor of the estimate: for reading beside a level of another set.
     *
     * @return empty for a kerma-area product
     */
    public Optional<Converted> converted(DoseEstimate estimate) {
        return quantity.otherKerma()
                .map(other -> new Converted(
                        other,
                        inBase() * estimate.inBase(other) / estimate.inBase(quantity) / 1000,
                        estimate.backscatterFactor()));
    }

    /**
     * A level brought to the other kerma.
     *
     * @param quantity the quantity it was brought to
     * @param milliGy the level in it
     * @param backscatterFactor the factor between the two
     */
    public record Converted(Quantity quantity, double milliGy, double backscatterFactor) {}

    /** The value with its unit: {@code 10 mGy}. */
    public String words() {
        return Decimals.plain(value) + " " + unit.written();
    }
}
