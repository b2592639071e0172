package wallchart.planning;

import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.RowSetting;
import wallchart.chart.ThicknessMethod;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeVoltage;

/** Rows like others, but for what is set. */
final class Rows {

    private Rows() {}

    /** The row with another mAs, or of an AEC row another back-up. */
    static Row with(Row row, CurrentTimeProduct mAs) {
        var setting = row.setting();
        var control = setting.control() instanceof ExposureControl.Automatic automatic
                ? new ExposureControl.Automatic(automatic.chambers(), automatic.density(), mAs)
                : new ExposureControl.Manual(mAs);
        return new Row(
                row.key(),
                row.referenceThickness(),
                with(setting, setting.kV(), control, setting.thicknessMethod()),
                row.positioning());
    }

    /** The setting with another tube voltage, control and thickness method. */
    static RowSetting with(RowSetting setting, TubeVoltage kV, ExposureControl control, ThicknessMethod method) {
        return new RowSetting(
                kV,
                control,
                setting.focalSpot(),
                setting.grid(),
                setting.sid(),
                setting.receptor(),
                setting.field(),
                setting.orientation(),
                setting.addedFiltration(),
                setting.targetExposureIndex(),
                method,
                setting.kVWindow(),
                setting.longestTime());
    }
}
