package wallchart.print;

/**
 * The columns of a sheet, from left to right. Some have a width of their own; the others share what is left, those with longer words
 * the larger part of it, so that what is said of a block takes few lines: they, not its bands, make a sheet long.
 */
enum Column {
    EXAMINATION("Examination", 0, 1),
    THICKNESS("Thickness", 70, 0),
    KV("kV", 36, 0),
    EXPOSURE("mAs or AEC", 104, 0),
    REFERENCE("Holds at", 42, 0),
    FOCAL_SPOT("Focal spot", 38, 0),
    GRID("Grid, focal distance", 84, 0),
    SID("SID", 42, 0),
    RECEPTOR("Receptor, field", 0, 1.6f),
    WITHIN("Inside the band", 0, 1.2f);

    private static final float PADDING = 3;

    private final String head;
    private final float fixed;
    private final float parts;

    Column(String head, float fixed, float parts) {
        this.head = head;
        this.fixed = fixed;
        this.parts = parts;
    }

    /** @param unit of the lengths in it */
    String head(String unit) {
        return switch (this) {
            case THICKNESS, REFERENCE, SID -> head + ", " + unit;
            default -> head;
        };
    }

    /** Where the columns stand on a page of which so much may be written on. */
    static Columns over(float left, float width) {
        float fixed = 0;
        float parts = 0;
        for (var column : values()) {
            fixed += column.fixed;
            parts += column.parts;
        }
        return new Columns(left, width, (width - fixed) / parts);
    }

    /**
     * @param left of the first column
     * @param width of all together
     * @param share of one part of what is left to the columns without a width of their own
     */
    record Columns(float left, float width, float share) {

        /** Where the letters of a column begin. */
        float x(Column column) {
            float x = left;
            for (var before : values()) {
                if (before == column) {
                    break;
                }
                x += whole(before);
            }
            return x + PADDING;
        }

        /** How wide a line may be there. */
        float room(Column column) {
            return whole(column) - 2 * PADDING;
        }

        private float whole(Column column) {
            return column.fixed + share * column.parts;
        }
    }
}
