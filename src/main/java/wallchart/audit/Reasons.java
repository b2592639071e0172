package wallchart.audit;

/** Words that somebody leaves in the record. */
public final class Reasons {

    private Reasons() {}

    /** How many characters of it a reader sees: blanks of any width, control and format characters say nothing. */
    public static long visible(String text) {
        return text.codePoints()
                .filter(c -> !Character.isWhitespace(c) && !Character.isSpaceChar(c) && !Character.isISOControl(c))
                .filter(c -> Character.getType(c) != Character.FORMAT)
                .count();
    }
}
