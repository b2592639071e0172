package wallchart.web.view;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import wallchart.chart.Adjustment;
import wallchart.equipment.Grid;
import wallchart.technique.Situation;

/** What was asked, with what the row supplied where the question left it open; at is when it was asked for. */
public record AskedView(
        String bodyPart,
        String projection,
        String patientGroup,
        String support,
        BigDecimal thicknessCm,
        BigDecimal sidCm,
        String grid,
        List<String> adjustments,
        Instant at) {

    static AskedView of(Situation used, Instant at) {
        var examination = used.row().key().examination();
        return new AskedView(
                examination.bodyPart(),
                examination.projection(),
                examination.patientGroup(),
                examination.support().slug(),
                used.thickness().centimetres(),
                used.sid().centimetres(),
                grid(used),
                used.adjustments().stream().map(Adjustment::name).toList(),
                at);
    }

    static String grid(Situation used) {
        return used.grid().map(Grid::id).orElse(Grid.NONE);
    }
}
