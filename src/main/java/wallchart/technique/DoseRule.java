package wallchart.technique;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wallchart.chart.ExaminationKey;
import wallchart.quantity.AirKerma;

/** Rule 9: incident and entrance air kerma of a setting. Thread-safe. */
final class DoseRule {

    private final ExposureModel model;
    private final Map<String, ReferenceLevel> levels;

    DoseRule(ExposureModel model, List<ReferenceLevel> levels) {
        this.model = model;
        this.levels = levels.stream()
                .collect(Collectors.toUnmodifiableMap(
                        level -> level.bodyPart() + "/" + level.projection() + "/" + level.patientGroup(),
                        Function.identity()));
    }

    /** Empty where the beam model does not reach the tube voltage or the filtration. */
    Optional<DoseEstimate> estimate(Situation situation, ConsoleSetting set) {
        var how = Arrangement.of(situation);
        double kV = set.kV().inKilovolts();
        if (model.findBeamObjection(how, kV).isPresent()) {
            return Optional.empty();
        }
        double thickness = situation.thickness().inCentimetres();
        double incident = model.incidentPerMAs(how, kV, thickness) * set.mAs().inMilliampereSeconds();
        double backscatter = model.backscatterFactor(how, kV, thickness);
        return Optional.of(new DoseEstimate(
                new AirKerma(incident),
                new AirKerma(incident * backscatter),
                backscatter,
                situation.focusSkinCentimetres(),
                set.mAs(),
                set instanceof ConsoleSetting.Automatic,
                model.outputSource(how, kV),
                model.uncertaintyPercent(how),
                findLevel(situation.row().key().examination())));
    }

    /** Entrance air kerma in uGy for each mAs at any tube voltage; empty where the beam model does not reach. */
    Optional<Double> findEntrancePerMAs(Situation situation, double kilovolts) {
        var how = Arrangement.of(situation);
        return model.findBeamObjection(how, kilovolts).isPresent()
                ? Optional.empty()
                : Optional.of(model.entrancePerMAs(
                        how, kilovolts, situation.thickness().inCentimetres()));
    }

    private Optional<ReferenceLevel> findLevel(ExaminationKey examination) {
        return Optional.ofNullable(
                levels.get(examination.bodyPart() + "/" + examination.projection() + "/" + examination.patientGroup()));
    }
}
