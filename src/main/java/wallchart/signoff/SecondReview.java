package wallchart.signoff;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;

/**
 * The look that a physicist takes at a fast-track change after it was signed.
 *
 * @param due until when
 * @param done who looked, when, and what they found; absent until then
 */
public record SecondReview(Instant due, Optional<Decision> done) {

    /** How long after the signature it is due. Our own choice: three days reach over a weekend. */
    public static final Duration WITHIN = Duration.ofHours(72);

    public boolean isOpen() {
        return done.isEmpty();
    }

    SecondReview doneBy(Decision review) {
        return new SecondReview(due, Optional.of(review));
    }
}
