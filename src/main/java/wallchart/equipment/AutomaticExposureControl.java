package wallchart.equipment;

import java.util.List;
import wallchart.quantity.CurrentTimeProduct;

/**
 * What the generator's automatic exposure control (AEC) can be set to.
 *
 * @param densities the density settings, ascending, 0 among them
 * @param largestBackup the largest current-time product at which the generator ends an AEC exposure by itself
 */
public record AutomaticExposureControl(List<Integer> densities, CurrentTimeProduct largestBackup) {

    public AutomaticExposureControl {
        densities = Ascending.require("AEC densities", densities);
        if (!densities.contains(0)) {
            throw new IllegalArgumentException("AEC densities " + densities + ": 0, the normal setting, is missing");
        }
        if (largestBackup.milliampereSeconds().signum() == 0) {
            throw new IllegalArgumentException("largest AEC back-up is 0 mAs: it must be over 0");
        }
    }
}
