package wallchart.technique;

import java.util.List;
import java.util.Optional;
import wallchart.quantity.AirKerma;
import wallchart.quantity.KermaAreaProduct;

/** Rule 9: incident and entrance air kerma of a setting. Thread-safe. */
final class DoseRule {

    private final ExposureModel model;
    private final ReferenceLevels levels;

    DoseRule(ExposureModel model, List<ReferenceLevel> levels) {
        this.model = model;
        this.levels = new ReferenceLevels(levels);
    }

    /** Empty where the beam model does not reach the tube voltage or the filtration. */
    Optional<DoseEstimate> estimate(Situation situation, ConsoleSetting set) {
        var how = Arrangement.of(situation);
        return model.findBeam(how, set.kV()).map(beam -> estimate(situation, set, how, beam));
    }

    private DoseEstimate estimate(Situation situation, ConsoleSetting set, Arrangement how, TubeBeam beam) {
        double focusSkin = situation.focusSkinCentimetres();
        var incident = beam.incident(set.mAs().inMilliampereSeconds(), focusSkin);
        double backscatter = beam.backscatterFactor(how, focusSkin);
        var examination = situation.row().key().examination();
        return new DoseEstimate(
                incident,
                new AirKerma(incident.micrograys() * backscatter),
                KermaAreaProduct.of(incident, how.areaAtSkin(focusSkin)),
                backscatter,
                focusSkin,
                set.mAs(),
                set instanceof ConsoleSetting.Automatic,
                beam.source(),
                model.uncertaintyPercent(how),
                levels.findKerma(examination),
                levels.findAreaProduct(examination));
    }

    /** Entrance air kerma in uGy for each mAs at any tube voltage; empty where the beam model does not reach. */
    Optional<Double> findEntrancePerMAs(Situation situation, double kilovolts) {
        var how = Arrangement.of(situation);
        return model.findBeamObjection(how, kilovolts).isPresent()
                ? Optional.empty()
                : Optional.of(model.entrancePerMAs(
                        how, kilovolts, situation.thickness().inCentimetres()));
    }
}
