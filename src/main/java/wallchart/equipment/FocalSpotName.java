package wallchart.equipment;

import java.util.Optional;

/** Which of the tube's two focal spots. */
public enum FocalSpotName {
    SMALL,
    LARGE;

    /** The word used in files and answers. */
    public String slug() {
        return this == SMALL ? "small" : "large";
    }

    /** The focal spot of that slug. */
    public static Optional<FocalSpotName> find(String slug) {
        return switch (slug) {
            case "small" -> Optional.of(SMALL);
            case "large" -> Optional.of(LARGE);
            default -> Optional.empty();
        };
    }
}
