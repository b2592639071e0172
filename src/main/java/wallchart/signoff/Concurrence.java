package wallchart.signoff;

import java.time.Instant;

/**
 * A physicist's word that a large change may be signed. It holds for what was seen only: an edit, or a newer version, makes it void.
 *
 * @param by who concurs
 * @param at when
 * @param impactDigest digest of the impact they saw
 * @param onVersion the newest version then, 0 where there was none
 */
public record Concurrence(Signatory by, Instant at, String impactDigest, int onVersion) {

    /** Whether it was given for that impact on that version. */
    boolean holdsFor(Impact impact, int newest) {
        return impactDigest.equals(impact.digest()) && onVersion == newest;
    }
}
