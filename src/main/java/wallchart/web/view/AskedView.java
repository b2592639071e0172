package wallchart.web.view;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Adjustment;
import wallchart.equipment.Grid;
import wallchart.technique.Situation;

/** What was asked of the row, with what the row supplied where the question left it open; at is null for now. */
public record AskedView(BigDecimal thicknessCm, BigDecimal sidCm, String grid, List<String> adjustments, Instant at) {

    static AskedView of(Situation used, Optional<Instant> at) {
        return new AskedView(
                used.thickness().centimetres(),
                used.sid().centimetres(),
                grid(used),
                used.adjustments().stream().map(Adjustment::name).toList(),
                at.orElse(null));
    }

    static String grid(Situation used) {
        return used.grid().map(Grid::id).orElse(Grid.NONE);
    }
}
