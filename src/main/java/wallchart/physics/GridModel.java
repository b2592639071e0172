package wallchart.physics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.OptionalInt;

/**
 * The anti-scatter grids that the model knows: focused, aligned, 40 lead lines per cm, fibre interspace, without covers.
 *
 * <p>A department's own grid is stood in for by the {@linkplain #nearest nearest} ratio.
 */
public enum GridModel {
    NONE(0),
    R6(6),
    R8(8),
    R10(10),
    R12(12);

    private final int ratio;

    GridModel(int ratio) {
        this.ratio = ratio;
    }

    /**
     * The modelled grid whose ratio differs least from the one given; of two equally near, the lower. So 5:1 is answered by
     * 6:1, 7:1 by 6:1, 16:1 by 12:1. Never {@link #NONE}: a grid is in the beam.
     *
     * @throws IllegalArgumentException if the ratio is under 1
     */
    public static GridModel nearest(int ratio) {
        if (ratio < 1) {
            throw new IllegalArgumentException(
                    "grid ratio is " + ratio + ": it must be 1 or more; without a grid, ask for NONE");
        }
        return Arrays.stream(values())
                .filter(grid -> grid != NONE)
                .min(Comparator.comparingInt(grid -> Math.abs(grid.ratio - ratio)))
                .orElseThrow();
    }

    /** Height of the lead strips over the space between them; empty for no grid. */
    public OptionalInt ratio() {
        return this == NONE ? OptionalInt.empty() : OptionalInt.of(ratio);
    }

    /** Column of the scatter table for a response behind this grid. */
    String scatterColumn(ReceptorResponse response) {
        return this == NONE ? response.nameInTables() : response.nameInTables() + "_r" + ratio;
    }
}
