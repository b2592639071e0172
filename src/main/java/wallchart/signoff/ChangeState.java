package wallchart.signoff;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Where a change stands, as a word; what can be done there is for the types of {@link Change} to say. */
public enum ChangeState {
    DRAFTING,
    SUBMITTED,
    RETURNED,
    SIGNED,
    DECLINED,
    WITHDRAWN;

    /** The word in the database and the interface: {@code drafting}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The state with that slug. */
    public static Optional<ChangeState> find(String slug) {
        return Arrays.stream(values())
                .filter(state -> state.slug().equals(slug))
                .findFirst();
    }
}
