package wallchart.grading;

import wallchart.quantity.AirKerma;
import wallchart.technique.ReferenceLevel;

/**
 * What a row costs at the skin at its reference thickness, with the kV and mAs that it writes: an estimate of a technique.
 *
 * @param incident without backscatter
 * @param entrance with backscatter
 * @param upperBound whether it is what an AEC exposure comes to at its back-up
 * @param uncertaintyPercent expanded uncertainty
 * @param outputSource where the tube's output comes from
 */
public record EntranceKerma(
        AirKerma incident, AirKerma entrance, boolean upperBound, int uncertaintyPercent, String outputSource) {

    /** In the quantity that a reference level is given in. */
    AirKerma in(ReferenceLevel.Quantity quantity) {
        return quantity == ReferenceLevel.Quantity.INCIDENT_AIR_KERMA ? incident : entrance;
    }
}
