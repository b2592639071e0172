package wallchart.signoff;

import java.time.Instant;
import java.util.Optional;

/**
 * A proposed change of a room's chart. Each state is a type of its own that has the steps it allows and no other; each step counts
 * the revision up.
 */
public sealed interface Change {

    /** What holds in every state. */
    ChangeHead head();

    /** Where it stands, as a word. */
    ChangeState state();

    default long id() {
        return head().id();
    }

    /** A change that its author still works on. */
    sealed interface Open extends Change {

        /** After an edit, or after its author took up a newer version; what is returned keeps the reason until it is handed in. */
        Open with(ChangeHead next);

        default Open edited() {
            return with(head().next());
        }

        default Open caughtUp(int base) {
            return with(head().next(base));
        }

        /** Under another title, for another reason. */
        default Open renamed(String title, String reason) {
            return with(head().next(title, reason));
        }

        default Submitted submitted(Instant at) {
            return new Submitted(head().next(), at, Optional.empty());
        }

        default Withdrawn withdrawn(Decision decision) {
            return new Withdrawn(head().next(), decision);
        }
    }

    /** Its author works on it. */
    record Drafting(ChangeHead head) implements Open {
        @Override
        public Drafting with(ChangeHead next) {
            return new Drafting(next);
        }

        @Override
        public ChangeState state() {
            return ChangeState.DRAFTING;
        }
    }

    /** Its author has it back, with a reason; they edit it, submit it again or withdraw it. */
    record Returned(ChangeHead head, Decision decision) implements Open {
        @Override
        public Returned with(ChangeHead next) {
            return new Returned(next, decision);
        }

        @Override
        public ChangeState state() {
            return ChangeState.RETURNED;
        }
    }

    /**
     * It waits for a signature.
     *
     * @param submittedAt since when
     * @param concurrence the physicist's, where one was given
     */
    record Submitted(ChangeHead head, Instant submittedAt, Optional<Concurrence> concurrence) implements Change {
        @Override
        public ChangeState state() {
            return ChangeState.SUBMITTED;
        }

        Submitted concurred(Concurrence given) {
            return new Submitted(head.next(), submittedAt, Optional.of(given));
        }

        Returned returned(Decision decision) {
            return new Returned(head.next(), decision);
        }

        /** Returned because rows it touches have moved: its base is the newest version from now on. */
        Returned returned(Decision decision, int base) {
            return new Returned(head.next(base), decision);
        }

        Declined declined(Decision decision) {
            return new Declined(head.next(), decision);
        }

        Withdrawn withdrawn(Decision decision) {
            return new Withdrawn(head.next(), decision);
        }

        /** @param holding the concurrence, where it was given for what is signed: one that is void is no part of a signature */
        Signed signed(
                int version, Decision decision, Optional<Concurrence> holding, Optional<SecondReview> secondReview) {
            return new Signed(head.next(), version, decision, holding, secondReview);
        }
    }

    /**
     * It is a version.
     *
     * @param version the version it became
     * @param decision who signed, when, and with which meaning
     * @param concurrence the physicist's, where one was given
     * @param secondReview due for what was signed on the fast track without concurrence
     */
    record Signed(
            ChangeHead head,
            int version,
            Decision decision,
            Optional<Concurrence> concurrence,
            Optional<SecondReview> secondReview)
            implements Change {
        @Override
        public ChangeState state() {
            return ChangeState.SIGNED;
        }

        Signed reviewed(Decision review) {
            return new Signed(head.next(), version, decision, concurrence, secondReview.map(due -> due.doneBy(review)));
        }
    }

    /** It will not be made. */
    record Declined(ChangeHead head, Decision decision) implements Change {
        @Override
        public ChangeState state() {
            return ChangeState.DECLINED;
        }
    }

    /** Its author took it back. */
    record Withdrawn(ChangeHead head, Decision decision) implements Change {
        @Override
        public ChangeState state() {
            return ChangeState.WITHDRAWN;
        }
    }
}
