package wallchart.people;

import java.util.Arrays;
import java.util.Locale;

/** What somebody is in the department, and with it what they may do. */
public enum Role {
    /** A room's workstation: reads its own room and reports its own exposures. Never the role of a person. */
    WORKSTATION,
    /** Takes exposures, proposes changes with a reason. */
    RADIOGRAPHER,
    /** Keeps the charts: signs changes or returns them. */
    LEAD,
    /** Keeps the equipment data, concurs with large changes, audits. */
    PHYSICIST,
    /** Manages accounts and room tokens. */
    ADMINISTRATOR;

    /** The stable word in the database, the record and the interface: {@code radiographer}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /**
     * The role with that slug.
     *
     * @throws IllegalArgumentException naming the word and the roles there are
     */
    public static Role ofSlug(String slug) {
        return Arrays.stream(values())
                .filter(role -> role.slug().equals(slug))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("role is \"" + slug + "\": known are "
                        + Arrays.stream(values()).map(Role::slug).toList()));
    }
}
