package wallchart.equipment;

import java.util.regex.Pattern;

/** Short names that people choose and that stand in addresses: lower-case letters, digits and hyphens. */
public final class Slugs {

    private static final Pattern SLUG = Pattern.compile("[a-z0-9](?:[a-z0-9-]{0,30}[a-z0-9])?");

    private Slugs() {}

    public static boolean isSlug(String text) {
        return SLUG.matcher(text).matches();
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
