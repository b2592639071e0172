package wallchart.store;

import java.util.Locale;

/** What a database was made for; decided once, at its first start, and never changed afterwards. */
public enum Mode {
    /** An invented department to look around in; its passwords are known to everybody. */
    DEMO,
    /** A real department. */
    SITE;

    /** The word stored in the database: {@code demo} or {@code site}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    static Mode ofSlug(String slug) {
        return valueOf(slug.toUpperCase(Locale.ROOT));
    }
}
