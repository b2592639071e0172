package wallchart.chart;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jdbi.v3.core.statement.PreparedBatch;
import wallchart.equipment.Chamber;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.SupportKind;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Distance;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;

/** How a row stands in its columns. */
final class RowColumns {

    private RowColumns() {}

    static void bind(PreparedBatch insert, Row row) {
        bindKey(insert, row);
        bindControl(insert, row.setting().control());
        bindSetting(insert, row.setting());
        bindLimits(insert, row.setting());
        bindPositioning(insert, row.positioning());
    }

    private static void bindKey(PreparedBatch insert, Row row) {
        var examination = row.key().examination();
        insert.bind("bodyPart", examination.bodyPart())
                .bind("projection", examination.projection())
                .bind("patientGroup", examination.patientGroup())
                .bind("support", examination.support().slug())
                .bind("bandFrom", row.key().band().from())
                .bind("bandTo", row.key().band().to())
                .bind("reference", row.referenceThickness());
    }

    private static void bindControl(PreparedBatch insert, ExposureControl control) {
        var automatic = control instanceof ExposureControl.Automatic aec ? aec : null;
        insert.bind("mAs", automatic == null ? control.mAs() : null)
                .bind("chambers", automatic == null ? null : automatic.chamberWords())
                .bind("density", automatic == null ? null : (Integer) automatic.density())
                .bind("backup", automatic == null ? null : automatic.backup());
    }

    private static void bindSetting(PreparedBatch insert, RowSetting setting) {
        insert.bind("kV", setting.kV())
                .bind("focalSpot", setting.focalSpot().slug())
                .bind("grid", setting.grid())
                .bind("sid", setting.sid())
                .bind("receptor", setting.receptor())
                .bind("field", setting.field())
                .bind("orientation", setting.orientation().slug())
                .bind("aluminium", setting.addedFiltration().aluminiumMillimetres())
                .bind("copper", setting.addedFiltration().copperMillimetres())
                .bind("target", setting.targetExposureIndex().orElse(null));
    }

    private static void bindLimits(PreparedBatch insert, RowSetting setting) {
        insert.bind("method", setting.thicknessMethod().slug())
                .bind("rate", setting.thicknessMethod().rate().orElse(null))
                .bind("kVFrom", decimal(setting.kVWindow().map(VoltageWindow::from)))
                .bind("kVTo", decimal(setting.kVWindow().map(VoltageWindow::to)))
                .bind(
                        "longestTime",
                        setting.longestTime().map(ExposureTime::milliseconds).orElse(null));
    }

    private static BigDecimal decimal(Optional<TubeVoltage> kV) {
        return kV.map(TubeVoltage::kilovolts).orElse(null);
    }

    private static void bindPositioning(PreparedBatch insert, Positioning words) {
        insert.bind("measureAt", words.measureAt())
                .bind("angle", words.centralRayAngleDegrees().orElse(null))
                .bind("centring", words.centring())
                .bind("breathing", words.breathing())
                .bind("shielding", words.shielding())
                .bind("notes", words.notes());
    }

    static Placed<Row> read(ResultSet rows, SharedRows shared) throws SQLException {
        var key = new RowKey(
                new ExaminationKey(
                        rows.getString("body_part"),
                        rows.getString("projection"),
                        rows.getString("patient_group"),
                        SupportKind.find(rows.getString("support")).orElseThrow()),
                new Band(
                        new PartThickness(rows.getBigDecimal("band_from_cm")),
                        new PartThickness(rows.getBigDecimal("band_to_cm"))));
        var reference = new PartThickness(rows.getBigDecimal("reference_cm"));
        return new Placed<>(
                rows.getLong("id"),
                rows.getLong("ordinal"),
                shared.of(new Row(key, reference, setting(rows), positioning(rows))));
    }

    private static RowSetting setting(ResultSet rows) throws SQLException {
        return new RowSetting(
                new TubeVoltage(rows.getBigDecimal("kv")),
                control(rows),
                FocalSpotName.find(rows.getString("focal_spot")).orElseThrow(),
                rows.getString("grid"),
                new Distance(rows.getBigDecimal("sid_cm")),
                rows.getString("receptor"),
                FieldSize.parse(rows.getString("field_cm")),
                Orientation.find(rows.getString("orientation")).orElseThrow(),
                new Filtration(rows.getBigDecimal("added_al_mm"), rows.getBigDecimal("added_cu_mm")),
                Optional.ofNullable(rows.getObject("target_exposure_index", Integer.class)),
                ThicknessMethod.of(rows.getString("thickness_method"), decimal(rows, "thickness_rate")),
                window(rows),
                decimal(rows, "longest_time_ms").map(ExposureTime::new));
    }

    private static ExposureControl control(ResultSet rows) throws SQLException {
        var mAs = rows.getBigDecimal("mas");
        return mAs != null
                ? new ExposureControl.Manual(new CurrentTimeProduct(mAs))
                : new ExposureControl.Automatic(
                        chambers(rows.getString("aec_chambers")),
                        rows.getInt("aec_density"),
                        new CurrentTimeProduct(rows.getBigDecimal("backup_mas")));
    }

    private static Set<Chamber> chambers(String words) {
        return Arrays.stream(words.split("\\+"))
                .map(word -> Chamber.find(word).orElseThrow())
                .collect(Collectors.toSet());
    }

    private static Optional<VoltageWindow> window(ResultSet rows) throws SQLException {
        var to = decimal(rows, "kv_to").map(TubeVoltage::new);
        return decimal(rows, "kv_from").map(from -> new VoltageWindow(new TubeVoltage(from), to.orElseThrow()));
    }

    private static Positioning positioning(ResultSet rows) throws SQLException {
        return new Positioning(
                rows.getString("measure_at"),
                decimal(rows, "central_ray_deg"),
                rows.getString("centring"),
                rows.getString("breathing"),
                rows.getString("shielding"),
                rows.getString("notes"));
    }

    static Optional<BigDecimal> decimal(ResultSet rows, String column) throws SQLException {
        return Optional.ofNullable(rows.getBigDecimal(column));
    }
}
