package wallchart.signoff;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Why a change takes the way it takes. */
public enum ChangeKind {
    /** Concurrence, where it is needed, comes before the signature. */
    ORDINARY,
    /** For safety: signed at once, and a physicist looks at it afterwards, within {@link SecondReview#WITHIN}. */
    FAST_TRACK,
    /** Brings an earlier version back, whole. */
    REVERT;

    /** The word in the database, the record and the interface: {@code fast-track}. */
    public String slug() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The kind with that slug. */
    public static Optional<ChangeKind> find(String slug) {
        return Arrays.stream(values()).filter(kind -> kind.slug().equals(slug)).findFirst();
    }
}
