package wallchart.print;

/** The columns of a sheet, from left to right; those without a width of their own share what is left. */
enum Column {
    EXAMINATION("Examination", 0),
    THICKNESS("Thickness", 70),
    KV("kV", 36),
    EXPOSURE("mAs or AEC", 112),
    REFERENCE("Holds at", 44),
    FOCAL_SPOT("Focal spot", 40),
    GRID("Grid, focal distance", 86),
    SID("SID", 50),
    RECEPTOR("Receptor, field", 0),
    WITHIN("Inside the band", 0);

    private static final float PADDING = 3;

    private final String head;
    private final float fixed;

    Column(String head, float fixed) {
        this.head = head;
        this.fixed = fixed;
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
        int sharing = 0;
        for (var column : values()) {
            fixed += column.fixed;
            sharing += column.fixed == 0 ? 1 : 0;
        }
        return new Columns(left, width, (width - fixed) / sharing);
    }

    /**
     * @param left of the first column
     * @param width of all together
     * @param share of each column without a width of its own
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
            return column.fixed == 0 ? share : column.fixed;
        }
    }
}
