package wallchart.grading;

import java.util.List;
import java.util.Optional;
import wallchart.chart.Finding.Severity;
import wallchart.chart.Row;
import wallchart.chart.ThicknessMethod;
import wallchart.technique.MostlyLung;

/** Rows whose mAs follows the attenuation of water though the path is mostly lung: too little for thin patients, too much for thick ones. */
final class LungAsWater {

    private LungAsWater() {}

    /** @param rows of one examination, by ascending band */
    static Optional<PhysicsFinding> find(List<Row> rows) {
        var following = rows.stream()
                .filter(row -> row.setting().thicknessMethod() instanceof ThicknessMethod.Attenuation)
                .filter(row -> MostlyLung.is(row.key().examination()))
                .toList();
        return following.isEmpty() ? Optional.empty() : Optional.of(finding(following));
    }

    private static PhysicsFinding finding(List<Row> rows) {
        var first = rows.get(0);
        return new PhysicsFinding(
                PhysicsFinding.Kind.LUNG_AS_WATER,
                Severity.CAUTION,
                first.key().toString(),
                "thicknessMethod",
                figure(first),
                figure(first) + Figures.others(rows, LungAsWater::figure) + ": " + MostlyLung.SENTENCE
                        + ", so thin patients get too little and thick ones too much: follow the thickness by mas-per-cm"
                        + " or kv-per-cm as your own images show");
    }

    private static String figure(Row row) {
        return "the mAs follows the attenuation of water in " + row.key().band() + " cm";
    }
}
