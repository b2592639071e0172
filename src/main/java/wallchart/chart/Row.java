package wallchart.chart;

import wallchart.quantity.PartThickness;

/**
 * One line of a chart: the technique for one examination and one band of thickness.
 *
 * @param key identifies the row within a version
 * @param referenceThickness the thickness at which the setting holds as written; within the band, its upper end included
 * @param setting what is set
 * @param positioning the words
 */
public record Row(RowKey key, PartThickness referenceThickness, RowSetting setting, Positioning positioning) {

    public Row {
        boolean inside = key.band().holds(referenceThickness)
                || referenceThickness.equals(key.band().to());
        if (!inside) {
            throw new IllegalArgumentException("reference thickness " + referenceThickness + " lies outside the band "
                    + key.band() + " cm: leave it out for the middle");
        }
    }
}
