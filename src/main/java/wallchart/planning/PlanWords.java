package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import wallchart.chart.RowKey;
import wallchart.planning.BandPlanner.Proven;
import wallchart.quantity.Decimals;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;

/** What a plan says of itself to those who sign it. */
final class PlanWords {

    /** What of a fall may stay inside a band: one R10 step of the mAs, a deviation index of 1 (IEC 62494-1:2008). */
    private static final double STEP_DB = 1;

    /** Nobody measures a patient more finely than half a centimetre. */
    private static final double STEPS_PER_CM = 2;

    private final ExposureModel model;
    private final Arrangement how;
    private final Proven proven;
    private final BandPlan plan;
    private final int version;
    private final List<ProposedRow> rows;

    PlanWords(ExposureModel model, Arrangement how, Proven proven, BandPlan plan, int version, List<ProposedRow> rows) {
        this.model = model;
        this.how = how;
        this.proven = proven;
        this.plan = plan;
        this.version = version;
        this.rows = rows;
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

    /** How steeply at most, and the widest bands that keep it within a step; nothing where none is predicted. */
    private String fall() {
        var perCm = rows.stream().flatMapToDouble(PlanWords::fallPerCm).max();
        if (perCm.isEmpty() || perCm.getAsDouble() <= 0) {
            return "";
        }
        double widest = Math.floor(STEPS_PER_CM * STEP_DB / perCm.getAsDouble()) / STEPS_PER_CM;
        return ", at most " + Decimals.significant(perCm.getAsDouble(), 2) + " dB for each cm: bands of "
                + (widest > 0
                        ? Figures.number(widest) + " cm keep it within 1 dB"
                        : "half a cm would not keep it within 1 dB, plan flat-exposure");
    }

    private static DoubleStream fallPerCm(ProposedRow row) {
        var ends = row.ends();
        var band = row.row().key().band();
        double width = band.to().inCentimetres() - band.from().inCentimetres();
        return ends.lowerDb().isPresent() && ends.upperDb().isPresent()
                ? DoubleStream.of((ends.lowerDb().getAsDouble() - ends.upperDb().getAsDouble()) / width)
                : DoubleStream.empty();
    }

    private String inside() {
        return switch (plan.kind()) {
            case FIXED_KV ->
                "Inside a band the technique stays as it is: exposure falls towards its upper end, by the dB shown"
                        + fall() + ".";
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
