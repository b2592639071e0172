package wallchart.web.view;

import wallchart.audit.Verification;

/**
 * Whether the ledger is sound.
 *
 * @param events how many there are; null where it is not sound
 * @param head the hash of the last; null where it is not sound
 * @param firstBad the first event that cannot be trusted; null where it is sound
 */
public record VerificationView(boolean sound, Long events, String head, FirstBad firstBad) {

    /** Where the doubt begins. */
    public record FirstBad(long seq, String what) {}

    public static VerificationView of(Verification verification) {
        if (verification instanceof Verification.Sound sound) {
            return new VerificationView(true, sound.events(), sound.head(), null);
        }
        var doubtful = (Verification.Doubtful) verification;
        return new VerificationView(false, null, null, new FirstBad(doubtful.seq(), doubtful.what()));
    }
}
