package wallchart.people;

/** Texts that go into the record as people wrote them. */
final class Lines {

    private Lines() {}

    /** Whether it is one line of at most so many characters that can be written anywhere, and not blank. */
    static boolean isLine(String text, int longest) {
        return !text.isBlank()
                && text.length() <= longest
                && text.codePoints().noneMatch(c -> Character.isISOControl(c) || isHalf(c));
    }

    /** Half of a character: no database and no ledger keeps it. */
    private static boolean isHalf(int codePoint) {
        return Character.getType(codePoint) == Character.SURROGATE;
    }
}
