package wallchart.physics;

import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/** A process that does nothing but one beam: what the first question after a start pays. Prints nanoseconds, comma-separated. */
final class FirstSpectrum {

    private static final double ANODE = 12;

    private FirstSpectrum() {}

    public static void main(String[] none) {
        long start = System.nanoTime();
        var physics = BeamPhysics.load();
        long loaded = System.nanoTime();
        double photons = physics.fluence(80, ANODE).sum();
        long first = System.nanoTime();
        physics.beam(TubeVoltage.kilovolts(81), ANODE, Filtration.aluminium("3"));
        long beam = System.nanoTime();
        if (!(photons > 0)) {
            throw new IllegalStateException("no photons at 80 kV");
        }
        System.out.println((loaded - start) + "," + (first - loaded) + "," + (beam - first));
    }
}
