package wallchart.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.ThicknessMethod;
import wallchart.equipment.Grid;
import wallchart.grading.Grade.Rule;
import wallchart.quantity.Decimals;

/** Grades each rule of thumb that one row uses, where the row uses it. */
final class RuleGrades {

    private static final String CM_PER_DOUBLING = "cm per doubling of the mAs";
    private static final String KV_PER_CM = "kV per cm";
    private static final String TIMES_EXPOSURE = "times the exposure for 15 % more kV";
    private static final String TIMES_MAS = "times the mAs";
    private static final double FIFTEEN_PERCENT = 1.15;

    private final Beams beams;
    private final PlacedRow row;
    private final double kV;
    private final double reference;
    private final String place;

    private RuleGrades(Beams beams, PlacedRow row) {
        this.beams = beams;
        this.row = row;
        this.kV = row.kV();
        this.reference = row.reference();
        this.place = "at " + Figures.plain(kV) + " kV behind " + Figures.plain(reference) + " cm ";
    }

    /** Thickness, the 15 % rule, then each other grid of the support. */
    static List<Grade> of(PlacedRow row, Beams beams) {
        var grades = new RuleGrades(beams, row);
        var found = new ArrayList<Grade>();
        found.add(grades.thickness());
        found.add(grades.fifteenPercent());
        row.how().support().grids().stream()
                .filter(grid -> !grid.equals(row.setting().grid()))
                .map(grades::grid)
                .forEach(found::add);
        return found;
    }

    private Grade grade(
            Rule rule, String about, double ratio, double tellable, double instead, String unit, String text) {
        var margin = Tellable.words(row.beam().response(), tellable);
        return Grade.of(rule, about, ratio, tellable, instead, unit, text + margin);
    }

    private Grade thickness() {
        var method = row.setting().thicknessMethod();
        boolean byVoltage = method instanceof ThicknessMethod.KilovoltsPerCentimetre;
        var unit = byVoltage ? KV_PER_CM : CM_PER_DOUBLING;
        var objection = row.findBeamObjection(kV, reference);
        if (objection.isPresent()) {
            return Grade.notPredicted(Rule.THICKNESS, method.slug(), unit, objection.get());
        }
        var worst = worstEnd();
        if (worst.isEmpty()) {
            return Grade.notPredicted(
                    Rule.THICKNESS, method.slug(), unit, "both ends of the band lie outside the beam model");
        }
        double end = worst.get();
        double instead = byVoltage
                ? LocalPhysics.kilovoltsPerCentimetre(row.beam(), kV, reference)
                : LocalPhysics.centimetresPerDoubling(row.beam(), kV, reference);
        return grade(
                Rule.THICKNESS,
                method.slug(),
                ratioAt(end),
                byVoltage
                        ? row.tellable(
                                Math.min(kV, row.course().byThickness(end).kV()))
                        : row.tellable(),
                instead,
                unit,
                place + says(method, instead) + "; at " + Figures.plain(end) + " cm the receptor gets "
                        + Figures.moreOrLess(ratioAt(end)));
    }

    /** The end of the band at which the thickness rule alone is further off; empty where neither is predicted. */
    private Optional<Double> worstEnd() {
        var band = row.row().key().band();
        return Stream.of(band.from().inCentimetres(), band.to().inCentimetres())
                .filter(end -> end != reference && row.findMethodObjection(end).isEmpty())
                .max(Comparator.comparingDouble(end -> Math.abs(ratioAt(end) - 1)));
    }

    private static String says(ThicknessMethod method, double instead) {
        var number = Figures.two(instead);
        if (method instanceof ThicknessMethod.KilovoltsPerCentimetre linear) {
            return number + " kV per cm keep the exposure, the row says " + Decimals.plain(linear.kVPerCm());
        }
        var physics = "mAs doubles per " + number + " cm";
        return method.rate()
                .map(rate -> physics + ", the row says " + Decimals.plain(rate))
                .orElseGet(() -> physics
                        + (method instanceof ThicknessMethod.Fixed
                                ? ", the row keeps the same technique"
                                : ", which the row follows"));
    }

    /** Receptor exposure there over that at the reference, by the thickness rule alone. */
    private double ratioAt(double thickness) {
        return row.exposure(row.course().byThickness(thickness), thickness)
                / row.exposure(row.course().byThickness(reference), reference);
    }

    /** Upwards; where that leaves the model, downwards. */
    private Grade fifteenPercent() {
        boolean up = row.findBeamObjection(kV * FIFTEEN_PERCENT, reference).isEmpty();
        double other = up ? kV * FIFTEEN_PERCENT : kV / FIFTEEN_PERCENT;
        var about = Figures.plain(other) + " kV";
        var objection = row.findBeamObjection(kV, reference).or(() -> row.findBeamObjection(other, reference));
        if (objection.isPresent()) {
            return Grade.notPredicted(Rule.FIFTEEN_PERCENT, about, TIMES_EXPOSURE, objection.get());
        }
        double times = row.beam().signalPerMAs(Math.max(kV, other), reference)
                / row.beam().signalPerMAs(Math.min(kV, other), reference);
        double ratio = up ? times / 2 : 2 / times;
        return grade(
                Rule.FIFTEEN_PERCENT,
                about,
                ratio,
                row.tellable(Math.min(kV, other)),
                times,
                TIMES_EXPOSURE,
                place + (up ? "15 % more kV gives x " : "kV divided by 1.15 takes away x ") + Figures.two(times)
                        + ", the rule says 2: with " + (up ? "half" : "double") + " the mAs the receptor gets "
                        + Figures.moreOrLess(ratio) + inUse());
    }

    /** Where an answer by this row works with the 15 % rule. */
    private String inUse() {
        var band = row.row().key().band();
        if (isLimited(band.from().inCentimetres()) || isLimited(band.to().inCentimetres())) {
            return "; in use where the kV meets its limit inside the band";
        }
        return row.how().room().generator().kV().has(row.setting().kV())
                ? ""
                : "; in use, as " + row.setting().kV() + " is no station";
    }

    /** By the other methods the kV stays what the row says. */
    private boolean isLimited(double thickness) {
        if (!(row.setting().thicknessMethod() instanceof ThicknessMethod.KilovoltsPerCentimetre)) {
            return false;
        }
        var wanted = row.course().byThickness(thickness);
        return wanted.kV() != row.course().limited(wanted).kV();
    }

    private Grade grid(String name) {
        var grid = row.how().room().findGrid(name);
        var other = beams.of(row.how().with(grid), row.beam().response());
        var objection = unknown(name, grid)
                .or(() -> row.findBeamObjection(kV, reference))
                .or(() -> other.findObjection(kV, reference))
                .or(() -> outOfFocus(grid))
                .or(() -> outOfFocus(row.how().grid()));
        if (objection.isPresent()) {
            return Grade.notPredicted(Rule.GRID, name, TIMES_MAS, objection.get());
        }
        double factors = factor(grid) / factor(row.how().grid());
        double model = row.beam().signalPerMAs(kV, reference) / other.signalPerMAs(kV, reference);
        return grade(
                Rule.GRID,
                name,
                factors / model,
                row.tellable(),
                model,
                TIMES_MAS,
                place + (name.equals(Grid.NONE) ? "no grid" : "grid " + name) + " instead of "
                        + row.setting().grid() + " needs x " + Figures.two(model) + " the mAs, the grid factors say x "
                        + Figures.two(factors) + ": the receptor gets " + Figures.moreOrLess(factors / model));
    }

    private static Optional<String> unknown(String name, Optional<Grid> grid) {
        return grid.isEmpty() && !name.equals(Grid.NONE)
                ? Optional.of("the room has no grid " + name)
                : Optional.empty();
    }

    /** A grid is modelled as focused to the distance it is used at. */
    private Optional<String> outOfFocus(Optional<Grid> grid) {
        var sid = row.setting().sid();
        return grid.flatMap(used -> used.focalRange()
                .filter(range -> !range.contains(sid))
                .map(range ->
                        "outside the focal range of grid " + used.id() + ", " + range + ", with an SID of " + sid));
    }

    private double factor(Optional<Grid> grid) {
        return grid.map(used -> used.factorAt(kV)).orElse(1.0);
    }
}
