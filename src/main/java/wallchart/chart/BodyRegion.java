package wallchart.chart;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The regions of the body that a chart is read by on pages and sheets, in that order. Our own grouping. */
public enum BodyRegion {
    CHEST("Chest"),
    ABDOMEN_AND_PELVIS("Abdomen and pelvis"),
    SPINE("Spine"),
    HEAD_AND_NECK("Head and neck"),
    UPPER_LIMB("Shoulder and upper limb"),
    LOWER_LIMB("Lower limb");

    private final String label;

    BodyRegion(String label) {
        this.label = label;
    }

    /** Words for people. */
    public String label() {
        return label;
    }

    /** The word used in files and answers. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The region of that slug. */
    public static Optional<BodyRegion> find(String slug) {
        return Arrays.stream(values())
                .filter(region -> region.slug().equals(slug))
                .findFirst();
    }

    static BodyRegion ofSlug(String slug) {
        return find(slug).orElseThrow(() -> new IllegalStateException("no region of the body is called " + slug));
    }
}
