package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import wallchart.equipment.DistanceRange;
import wallchart.equipment.Grid;
import wallchart.quantity.Distance;

/** An anti-scatter grid; focalDistanceCm is null for a parallel one. */
public record GridView(
        String id,
        BigDecimal ratio,
        BigDecimal linesPerCm,
        BigDecimal focalDistanceCm,
        List<BigDecimal> focalRangeCm,
        List<FactorView> factors) {

    /** mAs with the grid over mAs without. */
    public record FactorView(BigDecimal kV, BigDecimal factor) {}

    static GridView of(Grid grid) {
        return new GridView(
                grid.id(),
                grid.ratio(),
                grid.linesPerCentimetre(),
                grid.focalDistance().map(Distance::centimetres).orElse(null),
                grid.focalRange().map(GridView::ends).orElse(null),
                grid.factors().stream()
                        .map(factor -> new FactorView(factor.kV().kilovolts(), factor.factor()))
                        .toList());
    }

    static List<BigDecimal> ends(DistanceRange range) {
        return List.of(range.from().centimetres(), range.to().centimetres());
    }
}
