package wallchart.chart;

/**
 * What identifies a row within one version of a chart, written {@code KNEE/ap/adult/table-bucky/10-13}.
 *
 * @param examination all but the band
 * @param band thickness interval
 */
public record RowKey(ExaminationKey examination, Band band) {

    @Override
    public String toString() {
        return examination + "/" + band;
    }
}
