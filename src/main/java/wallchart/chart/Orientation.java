package wallchart.chart;

import java.util.Optional;

/** How the receptor lies to the patient's long axis, or to that of the limb. */
public enum Orientation {
    LENGTHWISE,
    CROSSWISE;

    /** The word used in files and answers. */
    public String slug() {
        return this == LENGTHWISE ? "lengthwise" : "crosswise";
    }

    /** The orientation of that slug. */
    public static Optional<Orientation> find(String slug) {
        return switch (slug) {
            case "lengthwise" -> Optional.of(LENGTHWISE);
            case "crosswise" -> Optional.of(CROSSWISE);
            default -> Optional.empty();
        };
    }
}
