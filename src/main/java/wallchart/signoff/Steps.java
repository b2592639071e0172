package wallchart.signoff;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.Function;
import wallchart.audit.Ledger;
import wallchart.chart.Charts;
import wallchart.people.Role;
import wallchart.signoff.Change.Open;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/**
 * What every step on a change has in common: one transaction that holds the change, the revision its caller saw, its next state and
 * its event, or nothing of all that.
 */
final class Steps {

    private final Database database;
    private final Charts charts;
    private final ChangeStore changes = new ChangeStore();
    private final EditStore edits = new EditStore();
    private final Ledger ledger = new Ledger();
    private final ThreadLocal<String> recordBefore = new ThreadLocal<>();

    Steps(Database database, Charts charts) {
        this.database = database;
        this.charts = charts;
    }

    /** Does a step on the change as its caller saw it; a refusal leaves nothing behind. */
    Outcome on(Actor by, long id, int expectedRevision, BiFunction<Tx, Change, Outcome> step) {
        try {
            return database.<Outcome>write(by, tx -> {
                var found = changes.findToChange(tx, id);
                if (found.isEmpty()) {
                    return Outcome.notFound("change " + id + " is unknown: look at the list of changes");
                }
                if (found.get().head().revision() != expectedRevision) {
                    return Outcome.stale(found.get());
                }
                recordBefore.set(record(tx, found.get()));
                return step.apply(tx, found.get());
            });
        } catch (Undone undone) {
            return undone.outcome;
        } finally {
            recordBefore.remove();
        }
    }

    /**
     * The digest of all that was stored of the change when the step under way began. Its event says so, and the event before says what
     * it must have been: what is changed by hand between two steps stays visible after the second.
     */
    Optional<String> recordBefore() {
        return Optional.ofNullable(recordBefore.get());
    }

    /** A step that the author takes on a change that is open. */
    Outcome byAuthor(Actor by, long id, int expectedRevision, String verb, OpenStep step) {
        return on(by, id, expectedRevision, (tx, change) -> {
            if (!isAuthor(by, change)) {
                return Outcome.notAllowed("change " + id + " is "
                        + change.head().author().printedName() + "'s: only its author may have it " + verb);
            }
            return change instanceof Open open ? step.take(tx, open) : Outcome.wrongState(change, verb);
        });
    }

    /** An edit by the author; a revert brings a version back as it was, so nothing in it is edited. */
    Outcome editing(Actor by, long id, int expectedRevision, OpenStep step) {
        return byAuthor(
                by,
                id,
                expectedRevision,
                "edited",
                (tx, change) -> change.head().kind() == ChangeKind.REVERT
                        ? Outcome.wholeRevert(change)
                        : step.take(tx, change));
    }

    /** A step on a change that is open. */
    @FunctionalInterface
    interface OpenStep {
        Outcome take(Tx tx, Open change);
    }

    /** Opens a change; refused where it cannot be. */
    Outcome opening(Actor by, Function<Tx, Outcome> step) {
        try {
            return database.<Outcome>write(by, step::apply);
        } catch (Undone undone) {
            return undone.outcome;
        }
    }

    /** Stores the next state, then its event: the last thing a step does. */
    Outcome done(Tx tx, Change next, String action, String reason, Map<String, ?> details) {
        replace(tx, next);
        return told(tx, next, action, reason, details);
    }

    /** Appends the event of a state that is stored already. */
    Outcome told(Tx tx, Change next, String action, String reason, Map<String, ?> details) {
        var all = new TreeMap<String, Object>(details);
        recordBefore().ifPresent(before -> all.put(ChangeEvents.RECORD_BEFORE, before));
        ledger.append(tx, ChangeEvents.of(action, next, record(tx, next), reason, all));
        return new Outcome.Done(next);
    }

    /** The digest of all that is stored of a change. */
    String record(ReadTx tx, Change change) {
        return ChangeEvents.record(change, edits.list(tx, change.id()), edits.numbers(tx, change.id()));
    }

    /** Stores the next state, if the one before it is still what is stored. */
    void replace(Tx tx, Change next) {
        if (!changes.replace(tx, next)) {
            throw new Undone(Outcome.stale(changes.find(tx, next.id()).orElseThrow()));
        }
    }

    /** Who acts, under the name that is printed for them now; ends the step where their role was taken from them meanwhile. */
    Signatory signatory(Tx tx) {
        var printedName = charts.findPrintedName(tx, tx.by())
                .orElseThrow(() -> new Undone(
                        Outcome.notAllowed(tx.by().name() + " is no " + tx.by().role()
                                + " any more, or may not sign in any more: sign in again, or ask your administrator")));
        return new Signatory(tx.by().personId().orElseThrow(), printedName);
    }

    static boolean isAuthor(Actor by, Change change) {
        return isSame(by, change.head().author());
    }

    static boolean isSame(Actor by, Signatory other) {
        return by.personId().isPresent() && by.personId().getAsLong() == other.personId();
    }

    static boolean isA(Actor by, Role role) {
        return by.role().equals(role.slug());
    }

    /** Takes back what the transaction has written so far. */
    static final class Undone extends RuntimeException {
        private static final long serialVersionUID = 1;
        private final transient Outcome outcome;

        Undone(Outcome outcome) {
            super("nothing is kept of this step", null, false, false);
            this.outcome = outcome;
        }
    }
}
