package wallchart.print;

/**
 * The sizes of letters on a sheet, in points.
 *
 * <p>What is set at the console is read at arm's length, 60 cm: letters of 16 minutes of arc, the least that ISO 9241-303 asks for (from
 * memory), are 2.8 mm high there, which Liberation Sans has at 11.5 pt (its capitals are 0.69 of the size). Everything else is read by
 * stepping closer: 9 pt has the same angle at 47 cm.
 *
 * @param bold whether the letters are bold
 * @param size of the letters, in points
 */
record Style(boolean bold, float size) {

    /** The smallest letters that a sheet may have. */
    static final float SMALLEST = 9;

    /** The smallest letters of what is set. */
    static final float SMALLEST_SET = 11.5f;

    static final Style SET = new Style(true, 12);
    static final Style ROOM = new Style(true, 22);
    static final Style TITLE = new Style(true, 11);
    static final Style HEAD = new Style(true, SMALLEST);
    static final Style TEXT = new Style(false, SMALLEST);

    private static final float LINE = 1.2f;
    private static final float ASCENT = 0.92f;

    /** From one line of text to the next. */
    float lineHeight() {
        return size * LINE;
    }

    /** From the top of a line to the feet of its letters. */
    float ascent() {
        return size * ASCENT;
    }
}
