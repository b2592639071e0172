package wallchart.signoff;

import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.Draft;
import wallchart.chart.Publication;
import wallchart.people.Role;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Change.Submitted;
import wallchart.signoff.Steps.Undone;
import wallchart.store.Actor;
import wallchart.store.ConstraintViolated;
import wallchart.store.StoreException;
import wallchart.store.Tx;

/**
 * One signature: change and version are one transaction. Where two changes of a room are signed at once, the second finds the version's
 * number taken and is tried again on top of the first, as if it had come later.
 */
final class Signing {

    private static final int MOST_ATTEMPTS = 5;

    /** The rules that refuse a version's number to the second who wants it. */
    private static final Set<String> TAKEN = Set.of(Charts.NUMBER_TAKEN, ChangeStore.VERSION_TAKEN);

    private final Charts charts;
    private final Steps steps;
    private final Proposals proposals;
    private final Period reviewAfter;
    private final Statement statement;
    private ChartVersion written;

    Signing(Charts charts, Steps steps, Proposals proposals, Period reviewAfter, Statement statement) {
        this.charts = charts;
        this.steps = steps;
        this.proposals = proposals;
        this.reviewAfter = reviewAfter;
        this.statement = statement;
    }

    /** What a signer states. */
    record Statement(
            String meaning, Optional<Instant> inForceFrom, String impactDigest, Optional<LocalDate> reviewDue) {}

    Outcome sign(Actor by, long id, int expected) {
        var outcome = untilNoRival(() -> steps.on(by, id, expected, (tx, change) -> sign(tx, change)));
        if (outcome instanceof Outcome.Done) {
            charts.refresh(written);
        }
        return outcome;
    }

    private static Outcome untilNoRival(Supplier<Outcome> signature) {
        for (int attempt = 1; ; attempt++) {
            try {
                return signature.get();
            } catch (StoreException rival) {
                if (!isRival(rival) || attempt == MOST_ATTEMPTS) {
                    throw rival;
                }
            }
        }
    }

    private static boolean isRival(StoreException failed) {
        return failed.kind() == StoreException.Kind.CONFLICT
                || failed instanceof ConstraintViolated refused && TAKEN.contains(refused.constraint());
    }

    private Outcome sign(Tx tx, Change change) {
        var refused = Reviewers.refusal(tx.by(), change, List.of(Role.LEAD), "signed");
        if (refused.isPresent()) {
            return refused.get();
        }
        if (!(change instanceof Submitted submitted)) {
            return Outcome.wrongState(change, "signed");
        }
        var words = new Words().meaning(statement.meaning());
        return words.problems().isEmpty() ? sign(tx, submitted) : Outcome.unreadable(words.problems());
    }

    private Outcome sign(Tx tx, Submitted change) {
        var assessment = proposals.assess(tx, change);
        if (!assessment.proposal().conflicts().isEmpty()) {
            return returnedForConflicts(tx, change, assessment.proposal());
        }
        var now = assessment.impact().digest();
        if (!now.equals(statement.impactDigest())) {
            return Outcome.impactChanged(statement.impactDigest(), now);
        }
        if (assessment.isBlocked()) {
            return Outcome.blocked(assessment.findings());
        }
        var concurrence = assessment.findConcurrence(change);
        if (concurrence.filter(given -> Steps.isSame(tx.by(), given.by())).isPresent()) {
            return Outcome.notAllowed(tx.by().name() + " concurred with change " + change.id()
                    + ": concurrence and signature are two people's");
        }
        boolean fast = change.head().kind() == ChangeKind.FAST_TRACK;
        boolean waits =
                statement.inForceFrom().filter(from -> from.isAfter(tx.at())).isPresent();
        boolean atOnce = fast && !waits; // what can wait for its day can wait for the physicist
        return assessment.impact().needsPhysicist(start(tx)) && concurrence.isEmpty() && !atOnce
                ? Outcome.concurrenceNeeded(change)
                : write(tx, change, assessment, concurrence);
    }

    private Instant start(Tx tx) {
        return statement.inForceFrom().orElse(tx.at());
    }

    private Outcome write(Tx tx, Submitted change, Assessment assessment, Optional<Concurrence> concurrence) {
        var proposal = assessment.proposal();
        var signature =
                new Decision(steps.signatory(tx), tx.at(), statement.meaning().strip());
        var review = change.head().kind() == ChangeKind.FAST_TRACK && concurrence.isEmpty()
                ? Optional.of(new SecondReview(tx.at().plus(SecondReview.WITHIN), Optional.empty()))
                : Optional.<SecondReview>empty();
        var signed = change.signed(proposal.onVersion() + 1, signature, concurrence, review);
        steps.replace(tx, signed);
        var evidence = ChangeEvents.evidence(signed, steps.record(tx, signed), proposal, assessment.impact());
        steps.recordBefore().ifPresent(before -> evidence.put(ChangeEvents.RECORD_BEFORE, before));
        assessment
                .impact()
                .findEarlyStart(start(tx))
                .ifPresent(early -> evidence.put(ChangeEvents.OVERTAKEN, early.overtakenNumbers()));
        return published(charts.publish(tx, draft(tx, signed, proposal), evidence), signed);
    }

    private Draft draft(Tx tx, Signed signed, Proposal proposal) {
        var from = start(tx);
        var due = statement
                .reviewDue()
                .orElseGet(() -> from.atOffset(ZoneOffset.UTC).toLocalDate().plus(reviewAfter));
        var head = signed.head();
        return new Draft(
                head.room(),
                proposal.onVersion(),
                proposal.after(),
                head.title(),
                head.reason(),
                signed.decision().reason(),
                statement.inForceFrom(),
                due);
    }

    /** Where it is not published, nothing of the signature is kept. */
    private Outcome published(Publication publication, Signed signed) {
        if (publication instanceof Publication.Published published) {
            written = published.version();
            return new Outcome.Done(signed);
        }
        if (publication instanceof Publication.Refused refused) {
            throw new Undone(Outcome.blocked(refused.findings()));
        }
        if (publication instanceof Publication.NotPermitted not) {
            throw new Undone(Outcome.notAllowed(not.reason()));
        }
        throw new IllegalStateException("change " + signed.id()
                + " was signed on the newest version, and it is not the newest: " + publication);
    }

    private Outcome returnedForConflicts(Tx tx, Submitted change, Proposal proposal) {
        var reason = "rows that it touches were changed up to version " + proposal.onVersion() + ": "
                + String.join(", ", proposal.conflicts());
        var decision = new Decision(steps.signatory(tx), tx.at(), shortened(reason));
        var next = change.returned(decision, proposal.onVersion());
        steps.replace(tx, next);
        new Rebasing(tx, proposal).run();
        var details = Map.of("conflicts", proposal.conflicts(), "onVersion", proposal.onVersion());
        steps.told(tx, next, ChangeEvents.RETURNED, decision.reason(), details);
        return Outcome.conflict(
                "change " + change.id() + " is returned to its author, for " + reason, proposal.conflicts());
    }

    /** What its column keeps. */
    private static String shortened(String reason) {
        return reason.length() <= 2000 ? reason : reason.substring(0, 1999) + "…";
    }
}
