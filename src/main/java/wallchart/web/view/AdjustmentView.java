package wallchart.web.view;

import java.math.BigDecimal;
import wallchart.chart.Adjustment;

/** A named adjustment; exactly one of addKV and timesMAs is there. */
public record AdjustmentView(String name, String label, BigDecimal addKV, BigDecimal timesMAs, String notes) {

    public static AdjustmentView of(Adjustment adjustment) {
        BigDecimal addKV = adjustment.effect() instanceof Adjustment.AddKilovolts add ? add.kV() : null;
        BigDecimal times = adjustment.effect() instanceof Adjustment.MultiplyCurrentTime by ? by.factor() : null;
        return new AdjustmentView(adjustment.name(), adjustment.label(), addKV, times, adjustment.notes());
    }
}
