package wallchart.web.view;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wallchart.signoff.Change;
import wallchart.signoff.Concurrence;
import wallchart.signoff.Decision;
import wallchart.signoff.SecondReview;
import wallchart.signoff.Signatory;

/**
 * A change as it stands.
 *
 * @param revertsTo the version it brings back; null but for a revert
 * @param submittedAt since when it waits for a signature; null unless it does
 * @param decision why it was returned, declined or signed, or that it was withdrawn; null before
 * @param concurrence the physicist's; null where there is none
 * @param secondReview null but for what was signed on the fast track without concurrence
 * @param signedVersion the version it became; null unless it is signed
 */
public record ChangeView(
        long id,
        String room,
        String title,
        String reason,
        int baseVersion,
        String kind,
        Integer revertsTo,
        SignatoryView author,
        Instant openedAt,
        int revision,
        String state,
        Instant submittedAt,
        DecisionView decision,
        ConcurrenceView concurrence,
        SecondReviewView secondReview,
        Integer signedVersion) {

    /** Somebody who took a step; their name as it was printed then. */
    public record SignatoryView(long personId, String printedName) {
        static SignatoryView of(Signatory signatory) {
            return new SignatoryView(signatory.personId(), signatory.printedName());
        }
    }

    /** What somebody decided; the reason of a signature is its meaning, of a second review what was found. */
    public record DecisionView(SignatoryView by, Instant at, String reason) {
        static DecisionView of(Decision decision) {
            return new DecisionView(SignatoryView.of(decision.by()), decision.at(), decision.reason());
        }
    }

    /** A physicist's word on the impact of that digest, seen on that version. */
    public record ConcurrenceView(SignatoryView by, Instant at, String impactDigest, int onVersion) {
        static ConcurrenceView of(Concurrence given) {
            return new ConcurrenceView(
                    SignatoryView.of(given.by()), given.at(), given.impactDigest(), given.onVersion());
        }
    }

    /** A look afterwards; {@code done} is null while it is open. */
    public record SecondReviewView(Instant due, DecisionView done) {
        static SecondReviewView of(SecondReview review) {
            return new SecondReviewView(
                    review.due(), review.done().map(DecisionView::of).orElse(null));
        }
    }

    /**
     * Changes, newest first.
     *
     * @param next what to send as {@code before} for the next page; null where this page was not full
     */
    public record Page(List<ChangeView> changes, Long next) {
        public static Page of(List<Change> changes, int limit) {
            return new Page(
                    changes.stream().map(ChangeView::of).toList(),
                    changes.size() < limit
                            ? null
                            : changes.get(changes.size() - 1).id());
        }
    }

    /** Signed changes with a second review, the earliest due first. */
    public record SecondReviews(List<ChangeView> changes) {
        public static SecondReviews of(List<Change.Signed> changes) {
            return new SecondReviews(changes.stream().map(ChangeView::of).toList());
        }
    }

    public static ChangeView of(Change change) {
        var head = change.head();
        return new ChangeView(
                head.id(),
                head.room(),
                head.title(),
                head.reason(),
                head.baseVersion(),
                head.kind().slug(),
                head.revertsTo().orElse(null),
                SignatoryView.of(head.author()),
                head.openedAt(),
                head.revision(),
                change.state().slug(),
                change instanceof Change.Submitted waiting ? waiting.submittedAt() : null,
                decision(change).map(DecisionView::of).orElse(null),
                concurrence(change).map(ConcurrenceView::of).orElse(null),
                change instanceof Change.Signed signed
                        ? signed.secondReview().map(SecondReviewView::of).orElse(null)
                        : null,
                change instanceof Change.Signed signed ? signed.version() : null);
    }

    private static Optional<Decision> decision(Change change) {
        return switch (change.state()) {
            case DRAFTING, SUBMITTED -> Optional.empty();
            case RETURNED -> Optional.of(((Change.Returned) change).decision());
            case SIGNED -> Optional.of(((Change.Signed) change).decision());
            case DECLINED -> Optional.of(((Change.Declined) change).decision());
            case WITHDRAWN -> Optional.of(((Change.Withdrawn) change).decision());
        };
    }

    private static Optional<Concurrence> concurrence(Change change) {
        return switch (change.state()) {
            case SUBMITTED -> ((Change.Submitted) change).concurrence();
            case SIGNED -> ((Change.Signed) change).concurrence();
            case DRAFTING, RETURNED, DECLINED, WITHDRAWN -> Optional.empty();
        };
    }
}
