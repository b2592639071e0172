package wallchart.grading;

import java.util.Optional;
import wallchart.chart.Row;
import wallchart.quantity.AirKerma;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;

/** What each row costs at the skin, as it is written, at its reference thickness. */
final class Kermas {

    private final ExposureModel model;

    Kermas(ExposureModel model) {
        this.model = model;
    }

    /** Of an AEC row the upper bound at its back-up; empty where the beam model does not reach. */
    Optional<EntranceKerma> find(Row row, Arrangement how) {
        double kV = row.setting().kV().inKilovolts();
        double thickness = row.referenceThickness().inCentimetres();
        if (model.findObjection(how, kV, thickness).isPresent()) {
            return Optional.empty();
        }
        double mAs = row.setting().control().mAs().inMilliampereSeconds();
        double incident = model.incidentPerMAs(how, kV, thickness) * mAs;
        return Optional.of(new EntranceKerma(
                new AirKerma(incident),
                new AirKerma(incident * model.backscatterFactor(how, kV, thickness)),
                PlacedRow.isAutomatic(row),
                model.uncertaintyPercent(how),
                model.outputSource(how, kV)));
    }
}
