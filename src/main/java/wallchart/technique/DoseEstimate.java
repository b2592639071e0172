package wallchart.technique;

import java.util.Optional;
import wallchart.quantity.AirKerma;
import wallchart.quantity.CurrentTimeProduct;

/**
 * What a technique costs at the skin: an estimate for the technique, never a record of a patient's dose.
 *
 * @param incident incident air kerma K_i, without backscatter (ICRU Report 74)
 * @param entrance entrance surface air kerma K_e, with backscatter
 * @param backscatterFactor K_e / K_i
 * @param focusSkinCentimetres focus-skin distance
 * @param forMAs the current-time product it was computed for; of an AEC exposure the back-up, so the kerma is an upper bound
 * @param upperBound whether it is the upper bound of an AEC exposure
 * @param outputSource where the tube's output comes from
 * @param uncertaintyPercent expanded uncertainty
 * @param referenceLevel the site's reference level, where it has one
 */
public record DoseEstimate(
        AirKerma incident,
        AirKerma entrance,
        double backscatterFactor,
        double focusSkinCentimetres,
        CurrentTimeProduct forMAs,
        boolean upperBound,
        String outputSource,
        int uncertaintyPercent,
        Optional<ReferenceLevel> referenceLevel) {

    /** The estimate in the quantity that a reference level is given in. */
    AirKerma kerma(ReferenceLevel.Quantity quantity) {
        return quantity == ReferenceLevel.Quantity.INCIDENT_AIR_KERMA ? incident : entrance;
    }
}
