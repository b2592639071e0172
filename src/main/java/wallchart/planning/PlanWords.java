package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.RowKey;
import wallchart.planning.BandPlanner.Proven;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;

/** What a plan says of itself to those who sign it. */
final class PlanWords {

    private final ExposureModel model;
    private final Arrangement how;
    private final Proven proven;
    private final BandPlan plan;
    private final int version;

    PlanWords(ExposureModel model, Arrangement how, Proven proven, BandPlan plan, int version) {
        this.model = model;
        this.how = how;
        this.proven = proven;
        this.plan = plan;
        this.version = version;
    }

    List<String> assumptions() {
        var sentences = new ArrayList<String>();
        sentences.add("Everything follows from one technique, " + technique()
                + ": if that is not right for its thickness, none of these bands is.");
        sentences.add("The mAs of each band keeps the modelled signal at the receptor ("
                + how.receptor().kind().words() + ") that this technique has.");
        sentences.add(inside());
        sentences.add("Entrance air kerma: output " + model.outputSource(how, proven.kV()) + ", within "
                + model.uncertaintyPercent(how, proven.kV()) + " %, with backscatter.");
        sentences.add(ExposureModel.LIMITS);
        return sentences;
    }

    private String inside() {
        return switch (plan.kind()) {
            case FIXED_KV ->
                "Inside a band the technique stays as it is: exposure falls towards its upper end, by the dB shown.";
            case VARIABLE_KV ->
                "Inside a band the tube voltage follows the thickness at the same rate and the mAs stays: what that"
                        + " leaves at its ends is shown in dB.";
            case FLAT_EXPOSURE ->
                "Inside a band the mAs follows the modelled attenuation, so the modelled exposure does not move.";
        };
    }

    String statement(List<RowKey> withdrawn, LeftOutWords leftOut) {
        var words = new StringBuilder("Drafted by the beam model, plan " + plan + ", from " + technique() + ". ");
        if (!withdrawn.isEmpty()) {
            words.append("Withdraws the bands in its way: ")
                    .append(Figures.list(
                            withdrawn.stream().map(key -> key.band() + " cm").toList()))
                    .append(". ");
        }
        return words.append(leftOut.words())
                .append("Output ")
                .append(model.outputSource(how, proven.kV()))
                .append(". ")
                .append(ChartProposal.LIMITS)
                .toString();
    }

    private String technique() {
        var setting = proven.row().setting();
        return proven.from()
                        .map(key -> "row " + key + " of version " + version + ", ")
                        .orElse("") + setting.kV() + " with "
                + setting.control().mAs() + " at " + proven.row().referenceThickness() + ", SID " + setting.sid()
                + ", grid " + setting.grid() + ", receptor " + setting.receptor();
    }
}
