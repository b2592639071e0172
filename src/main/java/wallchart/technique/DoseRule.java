package wallchart.technique;

import java.util.List;
import java.util.Optional;
import wallchart.chart.ExaminationKey;
import wallchart.quantity.AirKerma;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.KermaAreaProduct;
import wallchart.quantity.TubeVoltage;

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
        return estimate(
                Arrangement.of(situation),
                situation.row().key().examination(),
                situation.focusSkinCentimetres(),
                set.kV(),
                set.mAs(),
                set instanceof ConsoleSetting.Automatic);
    }

    /**
     * The same for any setting.
     *
     * @param focusSkin in cm, over 0
     * @param upperBound whether AEC ends the exposure, so that the mAs is a back-up
     */
    Optional<DoseEstimate> estimate(
            Arrangement how,
            ExaminationKey examination,
            double focusSkin,
            TubeVoltage kV,
            CurrentTimeProduct mAs,
            boolean upperBound) {
        return model.findBeam(how, kV).map(beam -> {
            var incident = beam.incident(mAs.inMilliampereSeconds(), focusSkin);
            double backscatter = beam.backscatterFactor(how, focusSkin);
            return new DoseEstimate(
                    incident,
                    new AirKerma(incident.micrograys() * backscatter),
                    KermaAreaProduct.of(incident, how.areaAtSkin(focusSkin)),
                    backscatter,
                    focusSkin,
                    mAs,
                    upperBound,
                    beam.source(),
                    ExposureModel.uncertaintyPercent(beam),
                    levels.findKerma(examination),
                    levels.findAreaProduct(examination));
        });
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
