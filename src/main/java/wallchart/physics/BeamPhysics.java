package wallchart.physics;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Optional;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * The door to beam physics: what a tube emits and what reaches skin and receptor. One per program; safe for any number of
 * threads; no I/O once loaded.
 *
 * <p>Results are kept in bounded caches, since a department's consoles have few stations: a miss costs about a millisecond.
 */
public final class BeamPhysics {

    /** What to know where nobody measured a tube's output. The survey is that of {@link OutputSurvey}, at some 3 mm Al. */
    public static final String ERRS_HIGH =
            "An uncalibrated model errs high: it gives 20 to 35 % more than the mean of a survey of some 40 tubes, so the tube"
                    + " probably gives less";

    private static final int SPECTRA_KEPT = 2048;
    private static final int BEAMS_KEPT = 1024;
    private static final int SIGNALS_KEPT = 256;
    private static final int FITS_KEPT = 128;

    private final BeamTables tables;
    private final Cache<SpectrumOf, PerEnergy> spectra = keeping(SPECTRA_KEPT);
    private final Cache<BeamOf, Beam> beams = keeping(BEAMS_KEPT);
    private final Cache<SignalOf, ReceptorSignal> signals = keeping(SIGNALS_KEPT);
    private final Cache<TubeMeasurement, TubeFit> fits = keeping(FITS_KEPT);

    private record SpectrumOf(double kilovolts, double anodeAngleDegrees) {}

    private record BeamOf(TubeVoltage tubeVoltage, double anodeAngleDegrees, Filtration total) {}

    private record SignalOf(
            double anodeAngleDegrees, Filtration total, GridModel grid, FieldSize field, ReceptorResponse response) {}

    private BeamPhysics(BeamTables tables) {
        this.tables = tables;
    }

    /** Reads the tables that ship with the program. */
    public static BeamPhysics load() {
        return new BeamPhysics(new BeamTables());
    }

    /** Evicts on the calling thread: this package starts no threads. */
    private static <K, V> Cache<K, V> keeping(int entries) {
        return Caffeine.newBuilder()
                .maximumSize(entries)
                .executor(Runnable::run)
                .build();
    }

    /** The sentence that says why the model does not hold for this beam; empty if it does. */
    public Optional<String> findObjection(TubeVoltage tubeVoltage, double anodeAngleDegrees, Filtration total) {
        return ModelRange.objectionToBeam(tubeVoltage.inKilovolts(), anodeAngleDegrees, total);
    }

    /** The same for what no tube voltage mends: anode angle and filtration. It needs no tables. */
    public static Optional<String> findTubeObjection(double anodeAngleDegrees, Filtration total) {
        return ModelRange.objectionToTube(anodeAngleDegrees, total);
    }

    /**
     * The beam of a tube at one tube voltage.
     *
     * @param total inherent and added filtration together
     * @throws IllegalArgumentException outside the model's range, with the sentence of {@link #findObjection}
     */
    public Beam beam(TubeVoltage tubeVoltage, double anodeAngleDegrees, Filtration total) {
        ModelRange.refuse(findObjection(tubeVoltage, anodeAngleDegrees, total));
        return beams.get(new BeamOf(tubeVoltage, anodeAngleDegrees, total), this::newBeam);
    }

    private Beam newBeam(BeamOf asked) {
        var fluence = fluence(asked.tubeVoltage().inKilovolts(), asked.anodeAngleDegrees());
        return new Beam(fluence.times(tables.transmission(asked.total())), tables);
    }

    /**
     * Receptor signal behind the patient, at any tube voltage and thickness, for one tube and receptor.
     *
     * @param total inherent and added filtration together
     * @param field in the receptor plane, what the beam is collimated to; a circle of equal area stands for it
     * @throws IllegalArgumentException if the model does not hold for the anode angle or filtration
     */
    public ReceptorSignal receptorSignal(
            double anodeAngleDegrees, Filtration total, GridModel grid, FieldSize field, ReceptorResponse response) {
        ModelRange.refuse(ModelRange.objectionToTube(anodeAngleDegrees, total));
        return signals.get(new SignalOf(anodeAngleDegrees, total, grid, field, response), this::newReceptorSignal);
    }

    private ReceptorSignal newReceptorSignal(SignalOf asked) {
        double equalAreaRadius = Math.sqrt(asked.field().areaSquareCentimetres() / Math.PI);
        var sum = new ReceptorSum(tables, asked.total(), asked.grid(), equalAreaRadius, asked.response());
        return new ReceptorSignal(sum, kilovolts -> fluence(kilovolts, asked.anodeAngleDegrees()));
    }

    /** The sentence that says why no signal is predicted there, whatever the tube; empty if one is. */
    public Optional<String> findSignalObjection(double kilovolts, double thicknessCentimetres) {
        return ModelRange.objectionToSignal(kilovolts, thicknessCentimetres);
    }

    /**
     * The model fitted to a measured tube: filtration from the half-value layer, output from three or more tube voltages. A few
     * milliseconds when first asked for.
     */
    public TubeFit calibrate(TubeMeasurement measured) {
        return fits.get(measured, asked -> new TubeFitting(this, asked).fit());
    }

    /** Photons per cm2 and mAs at one metre, without filter or air. */
    PerEnergy fluence(double kilovolts, double anodeAngleDegrees) {
        return spectra.get(new SpectrumOf(kilovolts, anodeAngleDegrees), asked -> new TungstenTarget(
                        asked.kilovolts(), asked.anodeAngleDegrees(), tables.tungsten())
                .fluenceAtOneMetre());
    }

    BeamTables tables() {
        return tables;
    }
}
