package wallchart.equipment;

/** Short names that people choose and that stand in addresses: lower-case letters, digits and hyphens. */
public final class Slugs {

    private static final int LONGEST = 32;

    private Slugs() {}

    public static boolean isSlug(String text) {
        int length = text.length();
        if (length == 0 || length > LONGEST || text.charAt(0) == '-' || text.charAt(length - 1) == '-') {
            return false;
        }
        for (int i = 0; i < length; i++) {
            char c = text.charAt(i);
            if (!(c >= 'a' && c <= 'z' || c >= '0' && c <= '9' || c == '-')) {
                return false;
            }
        }
        return true;
    }

    /**
     * The text itself.
     *
     * @throws IllegalArgumentException naming what it is, where it is not a slug
     */
    public static String require(String what, String text) {
        if (!isSlug(text)) {
            throw new IllegalArgumentException(what + " is \"" + text
                    + "\": 1 to 32 lower-case letters, digits and hyphens, no hyphen at the ends");
        }
        return text;
    }
}
