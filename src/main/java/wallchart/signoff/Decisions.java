package wallchart.signoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wallchart.people.Role;
import wallchart.signoff.Change.Open;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Change.Submitted;
import wallchart.store.Actor;
import wallchart.store.Tx;

/** The part of {@link SignoffDesk} by which changes are handed in and answered, all but the signature. */
final class Decisions {

    private final Steps steps;
    private final Proposals proposals;

    Decisions(Steps steps, Proposals proposals) {
        this.steps = steps;
        this.proposals = proposals;
    }

    Outcome submit(Actor by, long id, int expected) {
        return steps.byAuthor(by, id, expected, "submitted", (tx, change) -> {
            var assessment = proposals.assess(tx, change);
            if (assessment.isBlocked()) {
                return Outcome.blocked(assessment.findings());
            }
            var details = Map.of(
                    "onVersion", assessment.proposal().onVersion(),
                    "impactDigest", assessment.impact().digest());
            return steps.done(tx, change.submitted(tx.at()), ChangeEvents.SUBMITTED, "", details);
        });
    }

    Outcome giveBack(Actor by, long id, int expected, String reason) {
        return answer(
                by,
                id,
                expected,
                List.of(Role.LEAD, Role.PHYSICIST),
                "returned",
                reason,
                (tx, change) -> steps.done(
                        tx, change.returned(decision(tx, reason)), ChangeEvents.RETURNED, reason.strip(), Map.of()));
    }

    Outcome decline(Actor by, long id, int expected, String reason) {
        return answer(
                by,
                id,
                expected,
                List.of(Role.LEAD),
                "declined",
                reason,
                (tx, change) -> steps.done(
                        tx, change.declined(decision(tx, reason)), ChangeEvents.DECLINED, reason.strip(), Map.of()));
    }

    private Outcome answer(
            Actor by, long id, int expected, List<Role> roles, String verb, String reason, SubmittedStep step) {
        return steps.on(by, id, expected, (tx, change) -> {
            var words = new Words().reason(reason);
            var refused = Reviewers.refusal(by, change, roles, verb);
            if (refused.isPresent()) {
                return refused.get();
            }
            if (!(change instanceof Submitted submitted)) {
                return Outcome.wrongState(change, verb);
            }
            return words.problems().isEmpty() ? step.take(tx, submitted) : Outcome.unreadable(words.problems());
        });
    }

    Outcome withdraw(Actor by, long id, int expected) {
        return steps.on(by, id, expected, (tx, change) -> {
            if (!Steps.isAuthor(by, change)) {
                return Outcome.notAllowed("change " + id + " is "
                        + change.head().author().printedName() + "'s: only its author may withdraw it");
            }
            var decision = decision(tx, "");
            if (change instanceof Open open) {
                return steps.done(tx, open.withdrawn(decision), ChangeEvents.WITHDRAWN, "", Map.of());
            }
            return change instanceof Submitted submitted
                    ? steps.done(tx, submitted.withdrawn(decision), ChangeEvents.WITHDRAWN, "", Map.of())
                    : Outcome.wrongState(change, "withdrawn");
        });
    }

    Outcome concur(Actor by, long id, int expected, Optional<String> seen) {
        return steps.on(by, id, expected, (tx, change) -> {
            var refused = Reviewers.refusal(by, change, List.of(Role.PHYSICIST), "concurred with");
            if (refused.isPresent()) {
                return refused.get();
            }
            return change instanceof Submitted submitted
                    ? concur(tx, submitted, seen)
                    : Outcome.wrongState(change, "concurred with");
        });
    }

    private Outcome concur(Tx tx, Submitted change, Optional<String> seen) {
        var assessment = proposals.assess(tx, change);
        var digest = assessment.impact().digest();
        if (seen.filter(other -> !other.equals(digest)).isPresent()) {
            return Outcome.impactChanged(seen.get(), digest);
        }
        if (assessment.isBlocked()) {
            return Outcome.blocked(assessment.findings());
        }
        int onVersion = assessment.proposal().onVersion();
        var given = new Concurrence(steps.signatory(tx), tx.at(), digest, onVersion);
        var details = Map.of(
                "onVersion",
                onVersion,
                "impactDigest",
                digest,
                "printedName",
                given.by().printedName());
        return steps.done(tx, change.concurred(given), ChangeEvents.CONCURRED, "", details);
    }

    Outcome secondReview(Actor by, long id, int expected, String findings) {
        return steps.on(by, id, expected, (tx, change) -> {
            var refused = Reviewers.refusal(by, change, List.of(Role.PHYSICIST), "reviewed a second time");
            if (refused.isPresent()) {
                return refused.get();
            }
            if (!(change instanceof Signed signed)
                    || signed.secondReview().filter(SecondReview::isOpen).isEmpty()) {
                return Outcome.wrongState(change, "reviewed a second time");
            }
            if (Steps.isSame(by, signed.decision().by())) {
                return Outcome.notAllowed(
                        by.name() + " signed change " + id + ": somebody else has to look at it a second time");
            }
            var words = new Words().findings(findings);
            return words.problems().isEmpty() ? reviewed(tx, signed, findings) : Outcome.unreadable(words.problems());
        });
    }

    private Outcome reviewed(Tx tx, Signed change, String findings) {
        var next = change.reviewed(decision(tx, findings));
        var details = new TreeMap<String, Object>(Map.of("version", change.version()));
        details.put("due", change.secondReview().orElseThrow().due().toString());
        return steps.done(tx, next, ChangeEvents.REVIEWED, findings.strip(), details);
    }

    private Decision decision(Tx tx, String words) {
        return new Decision(steps.signatory(tx), tx.at(), words.strip());
    }

    /** A step on a change that waits for an answer. */
    private interface SubmittedStep {
        Outcome take(Tx tx, Submitted change);
    }
}
