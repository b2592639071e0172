package wallchart.print;

/** Something at a place on a page, in points from the upper left corner. */
sealed interface Mark {

    /**
     * One line of text.
     *
     * @param y of the feet of the letters
     * @param white on a dark ground
     */
    record Text(float x, float y, Style style, String words, boolean white) implements Mark {}

    /** A filled rectangle; 0 is black, 1 is white. */
    record Box(float x, float y, float width, float height, float brightness) implements Mark {}

    /** A line from left to right. */
    record Rule(float x, float y, float width, float thickness) implements Mark {}

    /** A square code of a text, with its quiet margin. */
    record Code(float x, float y, float side, String text) implements Mark {}
}
