package wallchart.chart;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Decimals;

/**
 * A row, and an adjustment, as named texts: the fields of the chart file in its order, numbers in plain decimal digits, an empty
 * text where the row says nothing. Comparison, digest and export all speak of a row in these words.
 */
public final class RowFields {

    /** The fields of a row in the order of the chart file. */
    public static final List<String> NAMES = List.of(
            "bodyPart",
            "projection",
            "patientGroup",
            "support",
            "bandFromCm",
            "bandToCm",
            "referenceThicknessCm",
            "measureAt",
            "kV",
            "mAs",
            "aecChambers",
            "aecDensity",
            "backupMAs",
            "focalSpot",
            "grid",
            "sidCm",
            "receptor",
            "fieldCm",
            "orientation",
            "addedFiltration",
            "targetExposureIndex",
            "centralRayAngleDeg",
            "centring",
            "breathing",
            "shielding",
            "thicknessMethod",
            "thicknessRate",
            "kVFrom",
            "kVTo",
            "longestTimeMs",
            "notes");

    /** The fields of an adjustment in the order of the adjustments file. */
    public static final List<String> ADJUSTMENT_NAMES = List.of("name", "label", "addKv", "timesMas", "notes");

    private RowFields() {}

    /** Every field of the row by its name, in file order. */
    public static Map<String, String> of(Row row) {
        var fields = new LinkedHashMap<String, String>();
        NAMES.forEach(name -> fields.put(name, ""));
        putKey(fields, row);
        putSetting(fields, row.setting());
        putControl(fields, row.setting().control());
        putLimits(fields, row.setting());
        putPositioning(fields, row.positioning());
        if (fields.size() != NAMES.size()) {
            throw new IllegalStateException("a field of the row is missing in the list of names: " + fields.keySet());
        }
        return Collections.unmodifiableMap(fields);
    }

    private static void putKey(Map<String, String> fields, Row row) {
        var examination = row.key().examination();
        fields.put("bodyPart", examination.bodyPart());
        fields.put("projection", examination.projection());
        fields.put("patientGroup", examination.patientGroup());
        fields.put("support", examination.support().slug());
        fields.put("bandFromCm", Decimals.plain(row.key().band().from().centimetres()));
        fields.put("bandToCm", Decimals.plain(row.key().band().to().centimetres()));
        fields.put(
                "referenceThicknessCm", Decimals.plain(row.referenceThickness().centimetres()));
    }

    private static void putSetting(Map<String, String> fields, RowSetting setting) {
        fields.put("kV", Decimals.plain(setting.kV().kilovolts()));
        fields.put("focalSpot", setting.focalSpot().slug());
        fields.put("grid", setting.grid());
        fields.put("sidCm", Decimals.plain(setting.sid().centimetres()));
        fields.put("receptor", setting.receptor());
        fields.put("fieldCm", setting.field().toString());
        fields.put("orientation", setting.orientation().slug());
        fields.put("addedFiltration", setting.addedFiltration().toString());
        fields.put(
                "targetExposureIndex",
                setting.targetExposureIndex().map(String::valueOf).orElse(""));
    }

    private static void putControl(Map<String, String> fields, ExposureControl control) {
        if (control instanceof ExposureControl.Automatic automatic) {
            fields.put("aecChambers", automatic.chamberWords());
            fields.put("aecDensity", String.valueOf(automatic.density()));
            fields.put("backupMAs", plain(automatic.backup()));
        } else {
            fields.put("mAs", plain(control.mAs()));
        }
    }

    private static void putLimits(Map<String, String> fields, RowSetting setting) {
        var method = setting.thicknessMethod();
        fields.put("thicknessMethod", method.slug());
        fields.put("thicknessRate", method.rate().map(Decimals::plain).orElse(""));
        var window = setting.kVWindow();
        fields.put(
                "kVFrom", window.map(w -> Decimals.plain(w.from().kilovolts())).orElse(""));
        fields.put("kVTo", window.map(w -> Decimals.plain(w.to().kilovolts())).orElse(""));
        fields.put(
                "longestTimeMs",
                setting.longestTime()
                        .map(time -> Decimals.plain(time.milliseconds()))
                        .orElse(""));
    }

    private static void putPositioning(Map<String, String> fields, Positioning words) {
        fields.put("measureAt", words.measureAt());
        fields.put(
                "centralRayAngleDeg",
                words.centralRayAngleDegrees().map(Decimals::plain).orElse(""));
        fields.put("centring", words.centring());
        fields.put("breathing", words.breathing());
        fields.put("shielding", words.shielding());
        fields.put("notes", words.notes());
    }

    /** Every field of the adjustment by its name, in file order. */
    public static Map<String, String> of(Adjustment adjustment) {
        var fields = new LinkedHashMap<String, String>();
        fields.put("name", adjustment.name());
        fields.put("label", adjustment.label());
        fields.put(
                "addKv",
                adjustment.effect() instanceof Adjustment.AddKilovolts added ? Decimals.plain(added.kV()) : "");
        fields.put(
                "timesMas",
                adjustment.effect() instanceof Adjustment.MultiplyCurrentTime times
                        ? Decimals.plain(times.factor())
                        : "");
        fields.put("notes", adjustment.notes());
        return Collections.unmodifiableMap(fields);
    }

    private static String plain(CurrentTimeProduct mAs) {
        return Decimals.plain(mAs.milliampereSeconds());
    }
}
