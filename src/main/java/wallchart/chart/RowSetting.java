package wallchart.chart;

import java.util.Optional;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.VoltageStations;
import wallchart.quantity.Distance;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * The technical half of a row: what is set at the reference thickness, and how far it may move.
 *
 * @param grid id of a grid of the room, or {@code none}
 * @param sid source-to-image-receptor distance
 * @param receptor id of a receptor of the room
 * @param field cassette size, or the part of the receptor that is exposed
 * @param addedFiltration on top of the tube's total filtration
 * @param targetExposureIndex absent: that of the receptor
 * @param kVWindow absent: only the generator's range limits
 * @param longestTime absent: only the focal spot's rating limits
 */
public record RowSetting(
        TubeVoltage kV,
        ExposureControl control,
        FocalSpotName focalSpot,
        String grid,
        Distance sid,
        String receptor,
        FieldSize field,
        Orientation orientation,
        Filtration addedFiltration,
        Optional<Integer> targetExposureIndex,
        ThicknessMethod thicknessMethod,
        Optional<VoltageWindow> kVWindow,
        Optional<ExposureTime> longestTime) {

    /** The lowest kV that the row may be moved to on a console; over the highest where its window lies beyond the console. */
    public double lowestKilovolts(VoltageStations console) {
        double lowest = console.lowest().inKilovolts();
        return kVWindow.map(window -> Math.max(window.from().inKilovolts(), lowest))
                .orElse(lowest);
    }

    /** The highest kV that the row may be moved to on a console. */
    public double highestKilovolts(VoltageStations console) {
        double highest = console.highest().inKilovolts();
        return kVWindow.map(window -> Math.min(window.to().inKilovolts(), highest))
                .orElse(highest);
    }
}
