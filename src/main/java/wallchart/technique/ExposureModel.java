package wallchart.technique;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Tube;
import wallchart.physics.BeamPhysics;
import wallchart.physics.ReceptorResponse;
import wallchart.physics.ReceptorSignal;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * What an exposure does at skin and receptor, in one room's own beam: the beam model, brought to the output that the physicist
 * measured of this tube. A slab of water stands for the patient. Everything is per mAs. Thread-safe.
 *
 * <p>Every method but {@link #findObjection} throws {@link IllegalArgumentException} where that one has something to say.
 */
public final class ExposureModel {

    /** What to know of every figure that comes from here; it stands beside each of them. */
    public static final String LIMITS =
            "Model: a slab of water for the patient, no bone, no lung, no outline; constant potential; 40 to 150 kV; 1.5 mm Al "
                    + "or more. Outside them nothing is predicted. An estimate for a technique, never a patient's dose record.";

    /** Real tubes differ from the beam model by up to this much; expanded, in percent. */
    private static final int UNCALIBRATED_PERCENT = 30;

    /**
     * Agreement of calculated entrance dose with phantom measurement, 12 to 14 %, taken as 13 %: Compagnone et al., J. Appl. Clin.
     * Med. Phys. 2005. Combined with the uncertainty of the measured output by root of the sum of squares.
     */
    private static final double METHOD_PERCENT = 13;

    private final BeamPhysics physics;

    public ExposureModel(BeamPhysics physics) {
        this.physics = physics;
    }

    /** The sentence that says why nothing is predicted there; empty where something is. */
    public Optional<String> findObjection(Arrangement how, double kilovolts, double thicknessCentimetres) {
        return findBeamObjection(how, kilovolts)
                .or(() -> signal(how, how.response()).findObjection(kilovolts, thicknessCentimetres))
                .or(() -> how.focusSkinCentimetres(thicknessCentimetres) > 0
                        ? Optional.empty()
                        : Optional.of("SID " + how.sid() + " leaves no room for the patient"));
    }

    /** The same for the beam alone, whatever it falls on. */
    Optional<String> findBeamObjection(Arrangement how, double kilovolts) {
        return findTubeObjection(how, kilovolts).or(() -> how.room()
                .tube()
                .output()
                .map(MeasuredOutput::totalFiltration)
                .filter(measured -> !measured.equals(how.totalFiltration()))
                .flatMap(measured -> physics.findObjection(station(kilovolts), anodeAngle(how), measured)));
    }

    /** The same for ratios at one tube voltage, which need no measured output. */
    Optional<String> findTubeObjection(Arrangement how, double kilovolts) {
        return physics.findObjection(station(kilovolts), anodeAngle(how), how.totalFiltration());
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
        var kV = station(kilovolts);
        var total = how.totalFiltration();
        double measuredOverModel =
                output(how.room().tube(), kV, total) / modelled(how.room().tube(), kV, total);
        double ratio = 100 / how.sid().inCentimetres();
        return signal(how, response).perMAs(kilovolts, thicknessCentimetres) * measuredOverModel * ratio * ratio;
    }

    /** The model's own signal at one metre, for ratios at one tube voltage: output and distance fall out of them. */
    ReceptorSignal signal(Arrangement how, ReceptorResponse response) {
        return physics.receptorSignal(anodeAngle(how), how.totalFiltration(), how.gridModel(), how.field(), response);
    }

    /** Air kerma per mAs at one metre, in uGy, free in air, with all that filters the beam. */
    public double outputPerMAs(Arrangement how, double kilovolts) {
        return output(how.room().tube(), station(kilovolts), how.totalFiltration());
    }

    /** The same of a tube with nothing added to its own filtration; empty where the beam model does not reach. */
    OptionalDouble findOutputPerMAs(Tube tube, double kilovolts) {
        var kV = station(kilovolts);
        var reached = physics.findObjection(kV, tube.anodeAngleDegrees().doubleValue(), tube.totalFiltration());
        return reached.isEmpty() ? OptionalDouble.of(output(tube, kV, tube.totalFiltration())) : OptionalDouble.empty();
    }

    /** Incident air kerma per mAs, in uGy, without backscatter. */
    public double incidentPerMAs(Arrangement how, double kilovolts, double thicknessCentimetres) {
        return ExposureArithmetic.incidentAirKermaMicroGy(
                outputPerMAs(how, kilovolts), 1, how.focusSkinCentimetres(thicknessCentimetres));
    }

    /** Entrance surface air kerma per mAs, in uGy, with backscatter. */
    public double entrancePerMAs(Arrangement how, double kilovolts, double thicknessCentimetres) {
        return incidentPerMAs(how, kilovolts, thicknessCentimetres)
                * backscatterFactor(how, kilovolts, thicknessCentimetres);
    }

    /** Entrance surface air kerma over incident air kerma, for the field at the skin and the quality of the beam. */
    public double backscatterFactor(Arrangement how, double kilovolts, double thicknessCentimetres) {
        double focusSkin = how.focusSkinCentimetres(thicknessCentimetres);
        return physics.beam(station(kilovolts), anodeAngle(how), how.totalFiltration())
                .backscatterFactor(how.fieldDiameterAtSkin(focusSkin), focusSkin);
    }

    /** Where the output comes from, in words. */
    public String outputSource(Arrangement how, double kilovolts) {
        return how.room()
                .tube()
                .output()
                .map(measured -> "measured " + measured.measuredOn() + extended(measured, kilovolts)
                        + (measured.totalFiltration().equals(how.totalFiltration())
                                ? ""
                                : ", brought to " + how.totalFiltration() + " by the beam model"))
                .orElse("beam model, uncalibrated");
    }

    private static String extended(MeasuredOutput measured, double kilovolts) {
        return measured.covers(kilovolts) ? "" : ", extended beyond " + measured.lowest() + " to " + measured.highest();
    }

    /** Expanded uncertainty of a kerma in this room. */
    public int uncertaintyPercent(Arrangement how) {
        return how.room()
                .tube()
                .output()
                .map(measured -> (int)
                        Math.round(Math.hypot(measured.uncertaintyPercent().doubleValue(), METHOD_PERCENT)))
                .orElse(UNCALIBRATED_PERCENT);
    }

    /** Output in uGy/mAs at 1 m: the tube's own measurement, brought by the model to the filtration used; else the model alone. */
    private double output(Tube tube, TubeVoltage kV, Filtration used) {
        if (tube.output().isEmpty()) {
            return modelled(tube, kV, used);
        }
        var measured = tube.output().get();
        double asMeasured = measured.microGyPerMAs(kV.inKilovolts());
        var filtration = measured.totalFiltration();
        return filtration.equals(used)
                ? asMeasured
                : asMeasured * modelled(tube, kV, used) / modelled(tube, kV, filtration);
    }

    private double modelled(Tube tube, TubeVoltage kV, Filtration total) {
        return physics.beam(kV, tube.anodeAngleDegrees().doubleValue(), total).outputMicroGyPerMAs();
    }

    /** Rounded to tenths of a kilovolt, as consoles are set: beams are remembered by it. */
    private static TubeVoltage station(double kilovolts) {
        return new TubeVoltage(BigDecimal.valueOf(kilovolts).setScale(1, RoundingMode.HALF_UP));
    }
}
