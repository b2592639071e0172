package wallchart.print;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** The paper a sheet is printed on, lying; in points of 1/72 inch (ISO 216 A4 210 x 297 mm; letter 8.5 x 11 in). */
public enum PaperSize {
    A4(842, 595),
    LETTER(792, 612);

    private final int width;
    private final int height;

    PaperSize(int width, int height) {
        this.width = width;
        this.height = height;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    /** The word used in addresses and answers. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The paper of that slug. */
    public static Optional<PaperSize> find(String slug) {
        return Arrays.stream(values()).filter(size -> size.slug().equals(slug)).findFirst();
    }
}
