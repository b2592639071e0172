package wallchart.equipment;

import java.util.Arrays;
import java.util.Optional;

/** Measuring field of the automatic exposure control, as the operator facing the receptor sees it. */
public enum Chamber {
    LEFT("left"),
    CENTRE("centre"),
    RIGHT("right");

    private final String slug;

    Chamber(String slug) {
        this.slug = slug;
    }

    /** The word used in files and answers. */
    public String slug() {
        return slug;
    }

    /** The chamber of that slug. */
    public static Optional<Chamber> find(String slug) {
        return Arrays.stream(values())
                .filter(chamber -> chamber.slug.equals(slug))
                .findFirst();
    }
}
