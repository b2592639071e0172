package wallchart.equipment;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.Filtration;

/**
 * The X-ray tube of one room.
 *
 * @param anodeAngleDegrees angle of the anode, 5 to 25 degrees, where the beam model holds
 * @param totalFiltration inherent and fixed added filtration, at least 1.5 mm Al
 * @param focalSpots one or two, each name once
 * @param output the physicist's measurement; absent means uncalibrated
 */
public record Tube(
        BigDecimal anodeAngleDegrees,
        Filtration totalFiltration,
        List<FocalSpot> focalSpots,
        Optional<MeasuredOutput> output) {

    private static final BigDecimal SMALLEST_ANGLE = new BigDecimal("5");
    private static final BigDecimal LARGEST_ANGLE = new BigDecimal("25");
    private static final BigDecimal LEAST_ALUMINIUM = new BigDecimal("1.5");

    public Tube {
        if (anodeAngleDegrees.compareTo(SMALLEST_ANGLE) < 0 || anodeAngleDegrees.compareTo(LARGEST_ANGLE) > 0) {
            throw new IllegalArgumentException("anode angle is " + anodeAngleDegrees.toPlainString()
                    + " degrees: it lies within " + SMALLEST_ANGLE + " and " + LARGEST_ANGLE);
        }
        if (totalFiltration.aluminiumMillimetres().compareTo(LEAST_ALUMINIUM) < 0) {
            throw new IllegalArgumentException(
                    "total filtration is " + totalFiltration + ": at least " + LEAST_ALUMINIUM
                            + " mm Al is needed (the beam model and 21 CFR 1020.30(m) half-value layers hold from there)");
        }
        if (focalSpots.isEmpty()
                || focalSpots.stream().map(FocalSpot::name).distinct().count() != focalSpots.size()) {
            throw new IllegalArgumentException("focal spots: one small, one large, or one of the two");
        }
        focalSpots = List.copyOf(focalSpots);
    }

    /** The sentence that says why the beam model does not reach this tube behind that filter, whatever the kV; empty where it does. */
    public Optional<String> findModelObjection(Filtration added) {
        return BeamPhysics.findTubeObjection(anodeAngleDegrees.doubleValue(), totalFiltration.and(added));
    }

    /** The focal spot of that name, where the tube has it. */
    public Optional<FocalSpot> find(FocalSpotName name) {
        for (var spot : focalSpots) {
            if (spot.name() == name) {
                return Optional.of(spot);
            }
        }
        return Optional.empty();
    }
}
