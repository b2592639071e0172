package wallchart.audit;

import static wallchart.chart.ChartFixtures.aRow;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import wallchart.chart.Adjustment;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartFixtures;
import wallchart.chart.Row;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;

/** Draws what the next version of a room's chart holds: rows and adjustments that come, go, change and change places. */
final class VariedContent {

    private static final List<String> PARTS = List.of("LSPINE", "HIP", "PELVIS", "ABDOMEN");
    private static final int NARROWEST = 15;

    private final Random random;

    VariedContent(Random random) {
        this.random = random;
    }

    /** @param note what the rows that change say from now on */
    ChartContent changed(ChartContent before, String note) {
        var rows = new ArrayList<>(before.rows());
        var adjustments = new ArrayList<>(before.adjustments());
        for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
            switch (random.nextInt(5)) {
                case 0 -> Collections.shuffle(rows, random);
                case 1 -> removeOne(adjustments);
                case 2 -> putAdjustment(adjustments);
                default -> putRow(rows, note);
            }
        }
        if (rows.size() > 2 && random.nextInt(3) == 0) {
            removeOne(rows);
        }
        if (rows.isEmpty()) {
            putRow(rows, note);
        }
        return new ChartContent(rows, adjustments);
    }

    private void removeOne(List<?> entries) {
        if (!entries.isEmpty()) {
            entries.remove(random.nextInt(entries.size()));
        }
    }

    private void putRow(List<Row> rows, String note) {
        int from = NARROWEST + 2 * random.nextInt(4);
        var row = varied(aRow().of(PARTS.get(random.nextInt(PARTS.size())), "ap")
                        .withBand(from, from + 2)
                        .withNotes(note))
                .row();
        rows.removeIf(other -> other.key().equals(row.key()));
        rows.add(random.nextInt(rows.size() + 1), row);
    }

    private RowBuilder varied(RowBuilder row) {
        var other = row;
        if (random.nextInt(3) == 0) {
            other = other.withAec(0, "125", Chamber.LEFT, Chamber.RIGHT);
        } else {
            other = other.withMAs(List.of("20", "25", "32", "40").get(random.nextInt(4)));
        }
        if (random.nextInt(3) == 0) {
            other = other.withKVWindow("70", "80");
        }
        if (random.nextInt(3) == 0) {
            other = other.withLongestTime("400").withTargetExposureIndex(200 + random.nextInt(100));
        }
        return random.nextInt(3) == 0 ? other.withoutAngle() : other;
    }

    private void putAdjustment(List<Adjustment> adjustments) {
        var name = "cast-" + random.nextInt(3);
        adjustments.removeIf(other -> other.name().equals(name));
        adjustments.add(
                random.nextBoolean()
                        ? ChartFixtures.addingKV(name, String.valueOf(3 + random.nextInt(5)))
                        : ChartFixtures.timesMAs(
                                name,
                                new BigDecimal(11 + random.nextInt(9))
                                        .movePointLeft(1)
                                        .toString()));
    }
}
