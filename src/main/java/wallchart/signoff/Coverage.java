package wallchart.signoff;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Band;
import wallchart.chart.Row;

/** Whether a band was answered before, or still is, all of it. */
final class Coverage {

    private Coverage() {}

    /** The lowest part of a withdrawn row's band that nothing answers any more, in words; empty where other rows hold it all. */
    static Optional<String> lost(Row withdrawn, List<Row> after) {
        var key = withdrawn.key();
        var holding = after.stream()
                .filter(row -> row.key().examination().equals(key.examination()))
                .filter(row -> row.key().band().overlaps(key.band()))
                .sorted(Comparator.comparing(row -> row.key().band().from()))
                .toList();
        return gap(key.band(), holding);
    }

    /**
     * The lowest part of the band that no row holds, in words; empty where every thickness of it is held.
     *
     * @param rows by ascending lower end, each overlapping the band
     */
    static Optional<String> gap(Band band, List<Row> rows) {
        var reached = band.from();
        for (var row : rows) {
            var held = row.key().band();
            if (held.from().compareTo(reached) > 0) {
                return Optional.of(new Band(reached, held.from()) + " cm");
            }
            if (held.to().compareTo(reached) > 0) {
                reached = held.to();
            }
        }
        return reached.compareTo(band.to()) < 0 ? Optional.of(new Band(reached, band.to()) + " cm") : Optional.empty();
    }
}
