package wallchart.equipment;

import java.util.Arrays;
import java.util.Optional;

/** Where receptor and patient are. */
public enum SupportKind {
    TABLETOP("tabletop"),
    TABLE_BUCKY("table-bucky"),
    WALL_BUCKY("wall-bucky"),
    MOBILE("mobile");

    private final String slug;

    SupportKind(String slug) {
        this.slug = slug;
    }

    /** The word used in files, row keys and answers. */
    public String slug() {
        return slug;
    }

    /** The support of that slug. */
    public static Optional<SupportKind> find(String slug) {
        return Arrays.stream(values()).filter(kind -> kind.slug.equals(slug)).findFirst();
    }
}
