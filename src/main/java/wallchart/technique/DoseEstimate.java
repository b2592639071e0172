package wallchart.technique;

import java.util.Optional;
import wallchart.quantity.AirKerma;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.KermaAreaProduct;

/**
 * What a technique costs at the skin: an estimate for the technique, never a record of a patient's dose.
 *
 * @param incident incident air kerma K_i, without backscatter (ICRU Report 74)
 * @param entrance entrance surface air kerma K_e, with backscatter
 * @param areaProduct kerma-area product of the field that the row names; a closer collimated one has less
 * @param backscatterFactor K_e / K_i
 * @param focusSkinCentimetres focus-skin distance
 * @param forMAs the current-time product it was computed for; of an AEC exposure the back-up, so the kerma is an upper bound
 * @param upperBound whether it is the upper bound of an AEC exposure
 * @param outputSource where the tube's output comes from
 * @param uncertaintyPercent expanded uncertainty
 * @param referenceLevel the site's reference level of a kerma, where it has one
 * @param areaLevel the site's reference level of the kerma-area product, where it has one
 */
public record DoseEstimate(
        AirKerma incident,
        AirKerma entrance,
        KermaAreaProduct areaProduct,
        double backscatterFactor,
        double focusSkinCentimetres,
        CurrentTimeProduct forMAs,
        boolean upperBound,
        String outputSource,
        int uncertaintyPercent,
        Optional<ReferenceLevel> referenceLevel,
        Optional<ReferenceLevel> areaLevel) {

    /** Of which field a kerma-area product is. */
    public static final String FIELD = "of the field the row names, a closer collimated one has less";

    /** The estimate in the quantity that a reference level is given in: microgray, or microgray times square metres. */
    double inBase(ReferenceLevel.Quantity quantity) {
        return switch (quantity) {
            case ENTRANCE_SURFACE_AIR_KERMA -> entrance.micrograys();
            case INCIDENT_AIR_KERMA -> incident.micrograys();
            case KERMA_AREA_PRODUCT -> areaProduct.micrograyMetresSquared();
        };
    }
}
