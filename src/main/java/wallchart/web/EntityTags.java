package wallchart.web;

/** Comparison of entity tags as RFC 9110 section 13.1.2 wants it for If-None-Match: weakly. */
final class EntityTags {

    private static final String WEAK = "W/";

    private EntityTags() {}

    /**
     * Whether a header names the tag.
     *
     * @param header value of If-None-Match; null for none
     * @param tag with its quotes; holds no comma
     */
    static boolean match(String header, String tag) {
        if (header == null) {
            return false;
        }
        if (header.strip().equals("*")) {
            return true;
        }
        for (var one : header.split(",")) {
            var given = one.strip();
            if (given.equals(tag)
                    || given.startsWith(WEAK) && given.substring(WEAK.length()).equals(tag)) {
                return true;
            }
        }
        return false;
    }
}
