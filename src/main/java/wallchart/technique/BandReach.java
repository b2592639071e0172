package wallchart.technique;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wallchart.chart.ChartContent;
import wallchart.chart.Finding;
import wallchart.chart.Row;
import wallchart.chart.ThicknessMethod;
import wallchart.equipment.Room;
import wallchart.quantity.Decimals;
import wallchart.technique.ConsoleAttempt.Impossible;
import wallchart.technique.ConsoleAttempt.Wish;

/**
 * Whether a row can be set over all of its band: its own rule may ask, towards an end, for more than generator, focal spot or longest
 * time give, and whoever measures such a patient is refused. Asked with the row's own grid and distance, without adjustments. Pure
 * and thread-safe.
 */
public final class BandReach {

    private static final double STEP_CM = 0.1;

    /** Bands are half-open: the last thickness that a person can write. */
    private static final double LAST_CM = 0.01;

    private final ExposureModel model;

    public BandReach(ExposureModel model) {
        this.model = model;
    }

    /** A caution for each end of a band that cannot be set, in the order of the chart. */
    public List<Finding> check(Room room, ChartContent content, Predicate<Row> wanted) {
        return content.rows().stream()
                .filter(wanted)
                .filter(row -> !(row.setting().thicknessMethod() instanceof ThicknessMethod.Fixed))
                .flatMap(row -> check(room, row).stream())
                .toList();
    }

    /** The same of one row; nothing of a row that cannot be set at its reference either, which is another finding. */
    private List<Finding> check(Room room, Row row) {
        var how = Arrangement.find(room, row);
        if (how.isEmpty() || RowUse.of(room, row) instanceof RowUse.Unusable) {
            return List.of();
        }
        var reach = new OfRow(
                room, row, new ArrangedBeam(model, how.get(), how.get().response()));
        var band = row.key().band();
        return Stream.of(
                        reach.end(band.to().inCentimetres() - LAST_CM, "bandToCm"),
                        reach.end(band.from().inCentimetres(), "bandFromCm"))
                .flatMap(Optional::stream)
                .toList();
    }

    /** One row at its console. */
    private record OfRow(Room room, Row row, ArrangedBeam beam) {

        Optional<Finding> end(double end, String field) {
            return objection(end).map(unused -> {
                double first = firstRefused(end);
                return Finding.caution(row.key().toString(), field, sentence(first, end, objection(first)));
            });
        }

        /** From the reference outwards, in steps that a person measures. */
        private double firstRefused(double end) {
            double reference = row.referenceThickness().inCentimetres();
            double step = end > reference ? STEP_CM : -STEP_CM;
            for (int i = 1; Math.abs(i * step) < Math.abs(end - reference); i++) {
                double thickness = Math.round((reference + i * step) * 100) / 100.0;
                if (objection(thickness).isPresent()) {
                    return thickness;
                }
            }
            return end;
        }

        /** Why the console does not give what the row's rule asks there; empty where it does, or nothing is known. */
        private Optional<String> objection(double thickness) {
            double kV = row.setting().kV().inKilovolts();
            double reference = row.referenceThickness().inCentimetres();
            boolean modelled = row.setting().thicknessMethod() instanceof ThicknessMethod.Attenuation;
            if (modelled && (isUnknown(kV, reference) || isUnknown(kV, thickness))) {
                return Optional.empty();
            }
            var wanted = new RowCourse(room, row, beam).byThickness(thickness);
            if (wanted.kV() <= 0) {
                return Optional.of("the row's rule arrives at " + Words.number(wanted.kV()) + " kV");
            }
            var attempt = new Console(room, row)
                    .attempt(new Wish(wanted, row.setting().focalSpot()));
            return attempt instanceof Impossible impossible
                    ? Optional.of(String.join("; ", impossible.reasons()))
                    : Optional.empty();
        }

        private boolean isUnknown(double kV, double thickness) {
            return beam.findObjection(kV, thickness).isPresent();
        }

        private String sentence(double first, double end, Optional<String> reason) {
            boolean thick = end > row.referenceThickness().inCentimetres();
            var from = Decimals.plain(
                    BigDecimal.valueOf(first).setScale(2, RoundingMode.HALF_UP).stripTrailingZeros());
            return "from " + from + " cm " + (thick ? "upwards" : "downwards")
                    + " this row is refused at the console: " + reason.orElse("") + ": "
                    + (thick ? "end the band before" : "begin the band after")
                    + ", or change the row so that it can be set there";
        }
    }
}
