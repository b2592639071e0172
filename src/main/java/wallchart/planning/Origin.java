package wallchart.planning;

import java.util.Optional;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;

/**
 * The technique that a proposed row comes from.
 *
 * @param room id of the room where it is used
 * @param row its row there; absent where it was written out
 * @param thickness at which it holds
 * @param mAs of an AEC row the back-up
 * @param receptor id of the receptor
 * @param entranceMicroGy its entrance air kerma with backscatter; of an AEC row an upper bound
 */
public record Origin(
        String room,
        Optional<RowKey> row,
        PartThickness thickness,
        TubeVoltage kV,
        CurrentTimeProduct mAs,
        String receptor,
        double entranceMicroGy) {

    static Origin of(String room, Optional<RowKey> key, Row row, double entrancePerMAs) {
        var mAs = row.setting().control().mAs();
        return new Origin(
                room,
                key,
                row.referenceThickness(),
                row.setting().kV(),
                mAs,
                row.setting().receptor(),
                entrancePerMAs * mAs.inMilliampereSeconds());
    }
}
