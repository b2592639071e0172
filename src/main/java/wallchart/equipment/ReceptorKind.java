package wallchart.equipment;

import java.util.Arrays;
import java.util.Optional;

/** What an image receptor is made of, by the trade's plain terms. */
public enum ReceptorKind {
    CESIUM_IODIDE("csi", "caesium iodide panel"),
    GADOLINIUM_OXYSULPHIDE("gadox", "gadolinium oxysulphide panel"),
    STORAGE_PHOSPHOR("storage-phosphor", "storage-phosphor plate (CR)"),
    FILM_SCREEN("film-screen", "film and screen");

    private final String slug;
    private final String words;

    ReceptorKind(String slug, String words) {
        this.slug = slug;
        this.words = words;
    }

    /** The word used in files and answers. */
    public String slug() {
        return slug;
    }

    public String words() {
        return words;
    }

    static Optional<ReceptorKind> find(String slug) {
        return Arrays.stream(values()).filter(kind -> kind.slug.equals(slug)).findFirst();
    }
}
