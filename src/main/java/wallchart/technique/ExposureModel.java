package wallchart.technique;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.equipment.Tube;
import wallchart.physics.BeamPhysics;
import wallchart.physics.ReceptorResponse;
import wallchart.physics.ReceptorSignal;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * What an exposure does at skin and receptor, in one room's own beam: the beam model, brought to the output and the
 * half-value layer that the physicist measured of this tube. A slab of water stands for the patient. Everything is per mAs. Thread-safe.
 *
 * <p>Every method but {@link #findObjection} throws {@link IllegalArgumentException} where that one has something to say.
 */
public final class ExposureModel {

    /** What to know of every figure that comes from here; it stands beside each of them. */
    public static final String LIMITS =
            "Model: a slab of water for the patient, no bone, no lung, no outline; constant potential; 40 to 150 kV; 1.5 mm Al "
                    + "or more. Outside them nothing is predicted. An estimate for a technique, never a patient's dose record.";

    /**
     * Agreement of calculated entrance dose with phantom measurement, 12 to 14 %, taken as 13 %: Compagnone et al., J. Appl. Clin.
     * Med. Phys. 2005. Combined with the uncertainty of the output by root of the sum of squares.
     */
    private static final double METHOD_PERCENT = 13;

    private final BeamPhysics physics;
    private final TubeOutput outputs;

    public ExposureModel(BeamPhysics physics) {
        this.physics = physics;
        this.outputs = new TubeOutput(physics);
    }

    /** The sentence that says why nothing is predicted there; empty where something is. */
    public Optional<String> findObjection(Arrangement how, double kilovolts, double thicknessCentimetres) {
        return findBeamObjection(how, kilovolts)
                .or(() -> physics.findSignalObjection(kilovolts, thicknessCentimetres))
                .or(() -> how.focusSkinCentimetres(thicknessCentimetres) > 0
                        ? Optional.empty()
                        : Optional.of("SID " + how.sid() + " leaves no room for the patient"));
    }

    /** The same for the beam alone, whatever it falls on. */
    Optional<String> findBeamObjection(Arrangement how, double kilovolts) {
        return findBeam(how, station(kilovolts)).isPresent()
                ? Optional.empty()
                : outputs.findObjection(how.room().tube(), station(kilovolts), how.totalFiltration());
    }

    /** The beam of the arrangement; empty where {@link #findBeamObjection} has something to say. */
    Optional<TubeBeam> findBeam(Arrangement how, TubeVoltage kV) {
        return outputs.find(how.room().tube(), kV, how.totalFiltration());
    }

    private TubeBeam beam(Arrangement how, double kilovolts) {
        return findBeam(how, station(kilovolts))
                .orElseThrow(() -> new IllegalArgumentException(
                        findBeamObjection(how, kilovolts).orElseThrow()));
    }

    /** The same for ratios at one tube voltage, which need no measured output. */
    Optional<String> findTubeObjection(Arrangement how, double kilovolts) {
        return physics.findObjection(station(kilovolts), anodeAngle(how), inBeam(how));
    }

    /** Whether the same exposure in both differs by the tube's output alone, whatever the beam falls on. */
    boolean differByOutputAlone(Arrangement one, Arrangement other) {
        return anodeAngle(one) == anodeAngle(other)
                && inBeam(one).equals(inBeam(other))
                && one.gridModel().equals(other.gridModel())
                && one.response() == other.response()
                && one.field().equals(other.field())
                && one.sid().equals(other.sid())
                && one.support().receptorGap().equals(other.support().receptorGap());
    }

    /** All that filters the beam, as the half-value layer of this tube has it: what paper states may differ. */
    public Filtration inBeam(Arrangement how) {
        return outputs.inBeam(how.room().tube(), how.totalFiltration());
    }

    private static double anodeAngle(Arrangement how) {
        return how.room().tube().anodeAngleDegrees().doubleValue();
    }

    /**
     * Signal at the receptor per mAs behind that much water, at the arrangement's distance and with its grid: microgray for air
     * kerma, keV per cm2 for caesium iodide ({@link Arrangement#response}). Distance by the inverse square alone.
     */
    public double signalPerMAs(Arrangement how, double kilovolts, double thicknessCentimetres) {
        return signalPerMAs(how, how.response(), kilovolts, thicknessCentimetres);
    }

    /** The same as another receptor would have it: to compare two that are made differently, ask for air kerma of both. */
    public double signalPerMAs(
            Arrangement how, ReceptorResponse response, double kilovolts, double thicknessCentimetres) {
        var beam = beam(how, kilovolts);
        double measuredOverModel = beam.outputPerMAs() / beam.quality().outputMicroGyPerMAs();
        double ratio = 100 / how.sid().inCentimetres();
        return signal(how, response).perMAs(kilovolts, thicknessCentimetres) * measuredOverModel * ratio * ratio;
    }

    /** The model's own signal at one metre, for ratios at one tube voltage: output and distance fall out of them. */
    ReceptorSignal signal(Arrangement how, ReceptorResponse response) {
        return physics.receptorSignal(anodeAngle(how), inBeam(how), how.gridModel(), how.field(), response);
    }

    /** Air kerma per mAs at one metre, in uGy, free in air, with all that filters the beam. */
    public double outputPerMAs(Arrangement how, double kilovolts) {
        return beam(how, kilovolts).outputPerMAs();
    }

    /** The same of a tube with nothing added to its own filtration; empty where the beam model does not reach. */
    public OptionalDouble findOutputPerMAs(Tube tube, double kilovolts) {
        return outputs.find(tube, station(kilovolts), tube.totalFiltration())
                .map(beam -> OptionalDouble.of(beam.outputPerMAs()))
                .orElse(OptionalDouble.empty());
    }

    /** Entrance surface air kerma per mAs, in uGy, with backscatter. */
    public double entrancePerMAs(Arrangement how, double kilovolts, double thicknessCentimetres) {
        var beam = beam(how, kilovolts);
        double focusSkin = how.focusSkinCentimetres(thicknessCentimetres);
        return beam.incident(1, focusSkin).micrograys() * beam.backscatterFactor(how, focusSkin);
    }

    /** Entrance surface air kerma over incident air kerma, for the field at the skin and the quality of the beam. */
    public double backscatterFactor(Arrangement how, double kilovolts, double thicknessCentimetres) {
        return beam(how, kilovolts).backscatterFactor(how, how.focusSkinCentimetres(thicknessCentimetres));
    }

    /** Where the output comes from, in words. */
    public String outputSource(Arrangement how, double kilovolts) {
        return beam(how, kilovolts).source();
    }

    /** Expanded uncertainty of a kerma there: more beyond what was measured, by tube voltage and by filtration. */
    public int uncertaintyPercent(Arrangement how, double kilovolts) {
        return uncertaintyPercent(beam(how, kilovolts));
    }

    static int uncertaintyPercent(TubeBeam beam) {
        return (int) Math.round(Math.hypot(beam.outputUncertaintyPercent(), METHOD_PERCENT));
    }

    /** Rounded to tenths of a kilovolt, as consoles are set: beams are remembered by it. */
    private static TubeVoltage station(double kilovolts) {
        return new TubeVoltage(BigDecimal.valueOf(kilovolts).setScale(1, RoundingMode.HALF_UP));
    }
}
