package wallchart.planning;

import java.util.Optional;
import wallchart.chart.RowKey;

/**
 * A row, or an end of its band, that is not proposed.
 *
 * @param row its key: of a plan as it would have been, of a transfer as it stands in the room it comes from
 * @param place what of which examination it would have answered; absent where that was not worked out
 * @param reason why not: what, the value, the limit
 */
public record LeftOut(String row, Optional<RowKey> place, String reason) {

    static LeftOut of(RowKey place, String reason) {
        return new LeftOut(place.toString(), Optional.of(place), reason);
    }
}
