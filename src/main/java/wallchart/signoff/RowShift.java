package wallchart.signoff;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.quantity.PartThickness;
import wallchart.technique.Prediction;
import wallchart.technique.Predictions;

/**
 * How far a row moves receptor exposure and entrance air kerma from an earlier row, for the thicknesses that both hold.
 *
 * <p>Receptor exposure by the power law of the 15 % rule: 10 log10 of mAs'/mAs x (kV'/kV)^n x (SID/SID')^2 x G/G', both G at kV'. It knows
 * neither filters nor what an AEC makes of its settings: there the shift is not known. Beside it stands the shift that the beam model
 * predicts, since the rule is an average: 25 % more kV behind 25 cm of water gives half of what it says. Thread-safe.
 */
final class RowShift {

    /**
     * 5 % of the kV: there the 15 % rule is off by up to a third of a dB, since a factor of 1.15 in kV gives x 1.55 to x 2.3 by the beam
     * model instead of x 2.
     */
    private static final double MOST_BY_RULE_ALONE = Math.log(1.05);

    private static final String RULE_ALONE =
            "the kV moves where the beam model predicts nothing, and the 15 % rule alone is no comparison: the shift of the"
                    + " receptor exposure is not known";

    private final Predictions predictions;

    RowShift(Predictions predictions) {
        this.predictions = predictions;
    }

    /** The worst over the thicknesses at which two rows of one examination, with bands that overlap, have to be compared. */
    Shift between(Room room, Row before, Row after) {
        boolean same = before.setting().equals(after.setting())
                && before.referenceThickness().equals(after.referenceThickness());
        return same
                ? Shift.NONE
                : thicknesses(before, after).stream()
                        .map(thickness -> at(room, before, after, thickness))
                        .reduce(Shift::and)
                        .orElseThrow();
    }

    /** Both reference thicknesses; and where the rows follow the thickness differently, the ends of what both bands hold. */
    private static Set<PartThickness> thicknesses(Row before, Row after) {
        var from = later(before.key().band().from(), after.key().band().from());
        var to = earlier(before.key().band().to(), after.key().band().to());
        var points = new TreeSet<PartThickness>();
        points.add(before.referenceThickness());
        points.add(after.referenceThickness());
        boolean moved = points.size() > 1
                || !before.setting().thicknessMethod().equals(after.setting().thicknessMethod());
        points.removeIf(point -> point.compareTo(from) < 0 || point.compareTo(to) > 0);
        if (moved || points.isEmpty()) {
            points.add(from);
            points.add(to);
        }
        return points;
    }

    private static PartThickness later(PartThickness one, PartThickness other) {
        return one.compareTo(other) >= 0 ? one : other;
    }

    private static PartThickness earlier(PartThickness one, PartThickness other) {
        return one.compareTo(other) <= 0 ? one : other;
    }

    private Shift at(Room room, Row before, Row after, PartThickness thickness) {
        var earlier = predictions.find(room, before, thickness, Optional.empty());
        var later = predictions.find(room, after, thickness, Optional.empty());
        if (earlier.isEmpty() || later.isEmpty()) {
            return Shift.unknown("at " + thickness + " the " + (later.isEmpty() ? "new" : "old")
                    + " row cannot be worked out in room " + room.id());
        }
        var kerma = isOpen(before, after) ? OptionalDouble.empty() : kerma(earlier.get(), later.get());
        var shift = remarked(
                        new Shift(
                                exposure(before, after, earlier.get(), later.get()),
                                predicted(before, after, earlier.get(), later.get()),
                                kerma,
                                List.of()),
                        before,
                        after)
                .withDoubts(thickness);
        return !isAec(before) && !isAec(after) && isRuleAlone(earlier.get(), later.get())
                ? shift.with(RULE_ALONE)
                : shift;
    }

    private static OptionalDouble exposure(Row before, Row after, Prediction earlier, Prediction later) {
        if (isAec(before) || isAec(after)) {
            return Predictions.endAlike(before, after) ? OptionalDouble.of(0) : OptionalDouble.empty();
        }
        return filtered(before, after) || isRuleAlone(earlier, later)
                ? OptionalDouble.empty()
                : Shift.hundredths(later.decibelsFrom(earlier));
    }

    /** A good deal more or less kV where the beam model says nothing: the rule of thumb by itself is no comparison. */
    private static boolean isRuleAlone(Prediction earlier, Prediction later) {
        return predicted(earlier, later).isEmpty()
                && Math.abs(Math.log(later.kV() / earlier.kV())) > MOST_BY_RULE_ALONE;
    }

    private static OptionalDouble predicted(Row before, Row after, Prediction earlier, Prediction later) {
        if (isAec(before) || isAec(after)) {
            return Predictions.endAlike(before, after) ? OptionalDouble.of(0) : OptionalDouble.empty();
        }
        return predicted(earlier, later);
    }

    static OptionalDouble predicted(Prediction earlier, Prediction later) {
        var shift = later.findModelledDecibelsFrom(earlier);
        return shift.isEmpty() ? shift : Shift.hundredths(shift.getAsDouble());
    }

    static OptionalDouble kerma(Prediction earlier, Prediction later) {
        return earlier.entrance().isEmpty() || later.entrance().isEmpty()
                ? OptionalDouble.empty()
                : Shift.tenths((later.entrance().get().micrograys()
                                        / earlier.entrance().get().micrograys()
                                - 1)
                        * 100);
    }

    private static Shift remarked(Shift shift, Row before, Row after) {
        var said = shift;
        if (isAec(before) || isAec(after)) {
            said = said.with(ControlWords.of(before) + " -> " + ControlWords.of(after));
            if (isOpen(before, after)) {
                return said.with("AEC: what its settings do to receptor exposure and entrance kerma is not known");
            }
            said = said.with("entrance kerma compared at the back-up: an upper bound");
            if (shift.exposureDb().isEmpty()) {
                said = said.with("AEC: what its settings do to the receptor exposure is not known");
            }
        } else if (filtered(before, after)) {
            said = said.with("added filtration changes: the shift of the receptor exposure is not known");
        }
        return shift.kermaPercent().isEmpty()
                ? said.with("entrance kerma is not known: the beam model does not reach one of both")
                : said;
    }

    /** Where AEC ended the exposures and will end them elsewhere: two back-ups say nothing about the two exposures under them. */
    private static boolean isOpen(Row before, Row after) {
        return isAec(before) && !Predictions.endAlike(before, after);
    }

    private static boolean isAec(Row row) {
        return row.setting().control() instanceof ExposureControl.Automatic;
    }

    private static boolean filtered(Row before, Row after) {
        return !before.setting().addedFiltration().equals(after.setting().addedFiltration());
    }
}
