package wallchart.audit;

import java.time.Instant;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A physicist's look at a stretch of the ledger, to be recorded in it.
 *
 * @param filter what was looked at; its period has both ends
 * @param findings what was found, in the physicist's words, at least {@link #LEAST_VISIBLE} visible characters
 */
public record Review(EventFilter filter, String findings) {

    /** Shorter words say nothing to whoever reads them in a year. */
    public static final int LEAST_VISIBLE = 10;

    public Review {
        if (filter.from().isEmpty() || filter.to().isEmpty()) {
            throw new IllegalArgumentException("the period of a review has a beginning and an end");
        }
        findPeriodProblem(filter.from().get(), filter.to().get())
                .or(() -> findFindingsProblem(findings))
                .ifPresent(problem -> {
                    throw new IllegalArgumentException(problem);
                });
    }

    /** What is wrong with a period. */
    public static Optional<String> findPeriodProblem(Instant from, Instant to) {
        return from.isBefore(to) ? Optional.empty() : Optional.of("the period ends before it begins");
    }

    /** What is wrong with the words of a review. */
    public static Optional<String> findFindingsProblem(String findings) {
        long visible = Reasons.visible(findings);
        return visible >= LEAST_VISIBLE
                ? Ledger.findTextProblem(findings)
                : Optional.of("findings have " + visible + " visible characters: write at least " + LEAST_VISIBLE
                        + ", also where nothing was found");
    }

    /** @param head the newest event when the review was recorded */
    Act act(Event head) {
        var details = new TreeMap<String, Object>();
        details.put("from", filter.from().orElseThrow().toString());
        details.put("to", filter.to().orElseThrow().toString());
        filter.room().ifPresent(room -> details.put("room", room));
        filter.actor().ifPresent(actor -> details.put("actor", actor));
        filter.action().ifPresent(action -> details.put("action", action));
        details.put("findings", findings);
        details.put("headSeq", head.seq());
        details.put("headHash", head.hash());
        return new Act("audit-reviewed", "ledger/" + head.seq(), filter.room(), "", details);
    }
}
