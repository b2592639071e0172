package wallchart.planning;

import java.util.List;
import java.util.Optional;
import wallchart.chart.Row;
import wallchart.quantity.ExposureTime;

/**
 * A row that is proposed, with all that led to it.
 *
 * @param row as it is to be
 * @param origin the technique it comes from
 * @param exactKV tube voltage before it was brought to a station
 * @param exactMAs mAs before it was brought to a station: the proven mAs times all factors; of an AEC row the back-up
 * @param factors in the order they apply
 * @param roundingDeviation dB by which the mAs station moves the receptor exposure
 * @param time of the exposure at the reference thickness; absent for an AEC row
 * @param entranceMicroGy entrance air kerma with backscatter at the reference thickness; of an AEC row for the back-up, so an upper
 *     bound
 * @param ends how far the receptor exposure moves between the middle of the band and its ends
 * @param cautions what to know of this row beyond what holds for all, one sentence each
 */
public record ProposedRow(
        Row row,
        Origin origin,
        double exactKV,
        double exactMAs,
        List<Factor> factors,
        double roundingDeviation,
        Optional<ExposureTime> time,
        double entranceMicroGy,
        BandEnds ends,
        List<String> cautions) {

    public ProposedRow {
        factors = List.copyOf(factors);
        cautions = List.copyOf(cautions);
    }
}
