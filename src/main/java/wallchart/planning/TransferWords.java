package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.Adjustment;
import wallchart.chart.ExaminationKey;
import wallchart.chart.ExposureControl;
import wallchart.chart.RowKey;
import wallchart.equipment.Receptor;
import wallchart.equipment.Room;
import wallchart.technique.ExposureModel;
import wallchart.technique.MostlyLung;

/** What a transfer says of itself to those who sign it. */
final class TransferWords {

    private final OutputWords outputs;
    private final Room from;
    private final Room to;
    private final RoomTransfer asked;
    private final List<ProposedRow> rows;

    TransferWords(Models models, Room from, Room to, RoomTransfer asked, List<ProposedRow> rows) {
        this.outputs = new OutputWords(models, from, to);
        this.from = from;
        this.to = to;
        this.asked = asked;
        this.rows = rows;
    }

    List<String> assumptions(List<Adjustment> taken, List<Adjustment> theirs) {
        var sentences = new ArrayList<String>();
        sentences.add(
                "Each row keeps, at its reference thickness, the modelled signal at the receptor relative to the target"
                        + " exposure index that it has in room " + from.id()
                        + "; both rooms as they are equipped now.");
        sentences.addAll(outputs.assumptions());
        if (!lungs().isEmpty()) {
            sentences.add("Of " + Figures.list(lungs()) + ", " + MostlyLung.SENTENCE
                    + ": only the room is exchanged, at the thickness the row has; each such row says what that"
                    + " leaves open.");
        }
        if (kindsDiffer()) {
            sentences.add(
                    "Receptors of different kinds are compared by target exposure index and air kerma alone: their"
                            + " speed and noise differ, so prove these rows on a phantom before anybody signs.");
        }
        sentences.add(
                "A grid that is not named is met by one in focus at the SID, then by the nearest ratio; an SID by the"
                        + " nearest that the support allows. Grids are modelled aligned, by ratio; the signal counts scatter too, so a"
                        + " weaker grid keeps the exposure and costs contrast.");
        if (hasAutomatic()) {
            sentences.add(
                    "Of AEC rows the back-up is scaled, density is 0; what ends the exposure is the calibration of room "
                            + to.id() + "'s own AEC, which nothing here knows.");
        }
        sentences.add(adjustments(taken, theirs));
        sentences.add(
                "Positioning, breathing, shielding, kV windows, longest times and notes are taken over as they stand.");
        sentences.add(ExposureModel.LIMITS);
        return sentences;
    }

    private String adjustments(List<Adjustment> taken, List<Adjustment> theirs) {
        if (!taken.isEmpty()) {
            return "Named adjustments are taken along, since room " + to.id() + " has none: "
                    + String.join(", ", taken.stream().map(Adjustment::name).toList()) + ".";
        }
        return theirs.isEmpty()
                ? "Room " + from.id() + " has no named adjustments."
                : "Named adjustments stay those of room " + to.id() + ": its own are not touched.";
    }

    private List<String> lungs() {
        return rows.stream()
                .map(row -> row.row().key().examination())
                .filter(MostlyLung::is)
                .map(ExaminationKey::toString)
                .distinct()
                .toList();
    }

    private boolean kindsDiffer() {
        return rows.stream().anyMatch(row -> {
            var there = from.findReceptor(row.origin().receptor()).map(Receptor::kind);
            return !there.equals(to.findReceptor(row.row().setting().receptor()).map(Receptor::kind));
        });
    }

    private boolean hasAutomatic() {
        return rows.stream().anyMatch(row -> row.row().setting().control() instanceof ExposureControl.Automatic);
    }

    String statement(List<RowKey> withdrawn, LeftOutWords leftOut) {
        var words = new StringBuilder("Drafted by the beam model from version " + asked.fromVersion() + " of room "
                + from.id() + ": receptor signal relative to target kept. ");
        words.append(outputs.statement());
        if (kindsDiffer()) {
            words.append("Receptors of different kinds: to be proven on a phantom. ");
        }
        if (!lungs().isEmpty()) {
            words.append("Mostly lung, exchanged as water: ")
                    .append(Figures.list(lungs()))
                    .append(". ");
        }
        if (!withdrawn.isEmpty()) {
            words.append("Withdraws rows in their way: ")
                    .append(Figures.list(
                            withdrawn.stream().map(RowKey::toString).toList()))
                    .append(". ");
        }
        return words.append(leftOut.words()).append(ChartProposal.LIMITS).toString();
    }
}
