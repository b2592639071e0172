package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.Row;

/** What to know of one row that is brought from another room, beyond what holds for all. */
final class TransferCautions {

    /** Beyond a tenth two figures for one grid are no longer the same grid; common practice, no source. */
    private static final double GRIDS_APART = 0.10;

    private TransferCautions() {}

    static List<String> of(Row row, TransferFactors exchange) {
        var cautions = new ArrayList<>(LungCautions.of(row, exchange));
        double modelled = exchange.gridByModel(row.referenceThickness().inCentimetres());
        double own = exchange.gridByOwnFactors();
        if (Math.abs(own / modelled - 1) > GRIDS_APART) {
            cautions.add("the exchange of the grid is x " + Figures.number(modelled)
                    + " by the model, which is used here, and x " + Figures.number(own)
                    + " by the grids' own factors, which answers use: prove it on a phantom");
        }
        if (exchange.kindsDiffer()) {
            cautions.add("the receptors are of different kinds, "
                    + exchange.before().receptor().kind().words() + " and "
                    + exchange.after().receptor().kind().words()
                    + ": compared by target exposure index and air kerma alone, so prove it on a phantom");
        }
        return cautions;
    }
}
