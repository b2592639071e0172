package wallchart.technique;

import java.util.List;
import java.util.Optional;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;

/** What a row costs at the skin as it is written: its own kV and mAs at its reference thickness. Thread-safe. */
public final class RowDoses {

    private final DoseRule rule;

    /** With the site's reference levels beside each estimate. */
    public RowDoses(ExposureModel model, List<ReferenceLevel> levels) {
        this.rule = new DoseRule(model, levels);
    }

    /**
     * Of an AEC row the upper bound at its back-up.
     *
     * @param how as the row writes it
     * @return empty where the beam model does not reach, or the distance leaves no room for the patient
     */
    public Optional<DoseEstimate> find(Row row, Arrangement how) {
        var setting = row.setting();
        double focusSkin = how.focusSkinCentimetres(row.referenceThickness().inCentimetres());
        return focusSkin > 0
                ? rule.estimate(
                        how,
                        row.key().examination(),
                        focusSkin,
                        setting.kV(),
                        setting.control().mAs(),
                        setting.control() instanceof ExposureControl.Automatic)
                : Optional.empty();
    }
}
