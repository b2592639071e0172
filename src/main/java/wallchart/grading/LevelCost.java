package wallchart.grading;

import java.util.Comparator;
import java.util.List;
import wallchart.chart.Finding.Severity;
import wallchart.chart.Row;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.technique.DoseEstimate;
import wallchart.technique.ReferenceLevel;

/** What one row costs at the skin, beside one of the site's reference levels; of an AEC row the upper bound at its back-up. */
record LevelCost(ReferenceLevel level, Row row, DoseEstimate dose) {

    /** Of all rows that have an estimate, by ascending thickness. */
    static List<LevelCost> of(ReferenceLevel level, List<RowPhysics> rows) {
        return rows.stream()
                .flatMap(row -> row.dose().map(dose -> new LevelCost(level, row.row(), dose)).stream())
                .sorted(Comparator.comparingDouble(LevelCost::thicknessCm))
                .toList();
    }

    /** The estimate over the level. */
    double share() {
        return level.share(dose);
    }

    boolean isUpperBound() {
        return dose.upperBound();
    }

    boolean isTimesArea() {
        return level.unit().isTimesArea();
    }

    double thicknessCm() {
        return row.referenceThickness().inCentimetres();
    }

    /** Over the level as both are read. */
    boolean isOver() {
        double value = level.value().doubleValue();
        return Figures.shown(share() * value) > value;
    }

    /** The estimate in the level's own quantity and unit. */
    String estimated() {
        return Figures.two(share() * level.value().doubleValue()) + " "
                + level.unit().written();
    }

    /** The level's quantity; a product with the area is that of the field the row names, which people collimate within. */
    String quantity() {
        return level.quantity().words() + (isTimesArea() ? "; " + DoseEstimate.FIELD : "");
    }

    String levelWords() {
        return level.words() + " (" + level.source() + ", " + level.year() + ")";
    }

    String figure() {
        return estimated() + " in " + row.key().band() + " cm";
    }

    PhysicsFinding finding(Kind kind, Severity severity, String field, String reason) {
        return new PhysicsFinding(kind, severity, row.key().toString(), field, figure(), reason);
    }
}
