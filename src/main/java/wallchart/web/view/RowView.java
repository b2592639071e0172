package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.quantity.ExposureTime;

/** One line of a chart as it was signed. A manual row has mAs and no aec, an AEC row the other way round. */
public record RowView(
        String key,
        String bodyPart,
        String projection,
        String patientGroup,
        String support,
        List<BigDecimal> bandCm,
        BigDecimal referenceThicknessCm,
        String measureAt,
        BigDecimal kV,
        BigDecimal mAs,
        AecView aec,
        String focalSpot,
        String grid,
        BigDecimal sidCm,
        String receptor,
        String fieldCm,
        String orientation,
        String addedFiltration,
        Integer targetExposureIndex,
        BigDecimal centralRayAngleDeg,
        String centring,
        String breathing,
        String shielding,
        String thicknessMethod,
        BigDecimal thicknessRate,
        List<BigDecimal> kVWindow,
        BigDecimal longestTimeMs,
        String notes) {

    public static RowView of(Row row) {
        var key = row.key().examination();
        var band = row.key().band();
        var set = row.setting();
        var words = row.positioning();
        return new RowView(
                row.key().toString(),
                key.bodyPart(),
                key.projection(),
                key.patientGroup(),
                key.support().slug(),
                List.of(band.from().centimetres(), band.to().centimetres()),
                row.referenceThickness().centimetres(),
                words.measureAt(),
                set.kV().kilovolts(),
                manualMAs(set.control()),
                aec(set.control()),
                set.focalSpot().slug(),
                set.grid(),
                set.sid().centimetres(),
                set.receptor(),
                set.field().toString(),
                set.orientation().slug(),
                set.addedFiltration().toString(),
                set.targetExposureIndex().orElse(null),
                words.centralRayAngleDegrees().orElse(null),
                words.centring(),
                words.breathing(),
                words.shielding(),
                set.thicknessMethod().slug(),
                set.thicknessMethod().rate().orElse(null),
                set.kVWindow()
                        .map(window ->
                                List.of(window.from().kilovolts(), window.to().kilovolts()))
                        .orElse(null),
                set.longestTime().map(ExposureTime::milliseconds).orElse(null),
                words.notes());
    }

    private static BigDecimal manualMAs(ExposureControl control) {
        return control instanceof ExposureControl.Manual manual ? manual.mAs().milliampereSeconds() : null;
    }

    private static AecView aec(ExposureControl control) {
        return control instanceof ExposureControl.Automatic automatic ? AecView.of(automatic) : null;
    }
}
