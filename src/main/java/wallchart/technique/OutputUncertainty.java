package wallchart.technique;

import wallchart.equipment.Calibrations;
import wallchart.equipment.Tube;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * How well the output of a tube is known at one tube voltage and filtration, expanded, in percent: what the physicist states within
 * the measured tube voltages, and more beyond them or behind another filter, by root of the sum of squares.
 */
final class OutputUncertainty {

    /** Real tubes differ from the beam model by up to this much. */
    private static final double UNCALIBRATED = 30;

    /** Beyond the measured tube voltages, by the fitted model. Our own allowance: the fit is twice as uncertain as within them, 5 %. */
    private static final double BEYOND = 10;

    /** Beyond them by extending two measured points, which bends away from every tube. Our own allowance. */
    private static final double EXTENDED = 20;

    /** With another filtration than measured, by the model's attenuation. Our own allowance. */
    private static final double BROUGHT = 5;

    private OutputUncertainty() {}

    /** @param stated filtration in the beam, as paper states it */
    static double percent(Tube tube, Calibrations calibrations, TubeVoltage kV, Filtration stated) {
        if (tube.output().isEmpty()) {
            return UNCALIBRATED;
        }
        var measured = tube.output().get();
        double known = measured.uncertaintyPercent().doubleValue();
        if (!measured.covers(kV.inKilovolts())) {
            known = Math.hypot(known, calibrations.find(tube).isPresent() ? BEYOND : EXTENDED);
        }
        return measured.totalFiltration().equals(stated) ? known : Math.hypot(known, BROUGHT);
    }
}
