package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import wallchart.chart.ExposureControl;
import wallchart.equipment.Chamber;

/** Automatic exposure control as a row or an answer sets it; chambers in the order left, centre, right. */
public record AecView(List<String> chambers, int density, BigDecimal backupMAs) {

    public static AecView of(ExposureControl.Automatic control) {
        var chambers = control.chambers().stream().sorted().map(Chamber::slug).toList();
        return new AecView(chambers, control.density(), control.backup().milliampereSeconds());
    }
}
