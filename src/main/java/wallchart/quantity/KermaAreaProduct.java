package wallchart.quantity;

/**
 * Air kerma-area product as physics computes it: air kerma, free in air, times the area of the beam, the same anywhere along it
 * (ICRU Report 74, P_KA; by its older name dose-area product, DAP). An estimate of a technique, never a record of a patient.
 *
 * @param micrograyMetresSquared finite and zero or more; 1 uGy m2 is 1 cGy cm2, a hundredth of 1 Gy cm2
 */
public record KermaAreaProduct(double micrograyMetresSquared) {

    private static final double SQUARE_METRES_PER_SQUARE_CENTIMETRE = 1e-4;

    public KermaAreaProduct {
        if (!(micrograyMetresSquared >= 0) || Double.isInfinite(micrograyMetresSquared)) {
            throw new IllegalArgumentException("kerma-area product (uGy m2) is " + micrograyMetresSquared
                    + ": it must be finite and not negative");
        }
    }

    /** Of a kerma over an area in the same plane, free in air: without backscatter. */
    public static KermaAreaProduct of(AirKerma freeInAir, double areaSquareCentimetres) {
        return new KermaAreaProduct(
                freeInAir.micrograys() * areaSquareCentimetres * SQUARE_METRES_PER_SQUARE_CENTIMETRE);
    }

    @Override
    public String toString() {
        return Decimals.significant(micrograyMetresSquared, 4) + " uGy m2";
    }
}
