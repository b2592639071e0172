package wallchart.audit;

import java.io.UncheckedIOException;
import java.util.List;
import java.util.Optional;
import wallchart.audit.Checkpoints.PutAside;
import wallchart.audit.Reopening.Refused;
import wallchart.audit.Reopening.Reopened;
import wallchart.audit.Verification.Doubtful;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Tx;

/**
 * The way back from a ledger in doubt: an event takes a digest of all that stands before it, the file of checkpoints is put aside,
 * and a new one begins with this event. So only who has the key can acknowledge a doubt.
 *
 * <p>A crash between the commit and the new file leaves the old checkpoints in place: the doubt is found again, and the ledger is
 * to be resumed again.
 */
final class LedgerReopening {

    private static final int MOST_CHARACTERS = 2_000;

    private final Database database;
    private final Checkpoints checkpoints;
    private final List<RecordCheck> records;
    private final TurnStore turn = new TurnStore();
    private final Ledger ledger = new Ledger();

    LedgerReopening(Database database, Checkpoints checkpoints, List<RecordCheck> records) {
        this.database = database;
        this.checkpoints = checkpoints;
        this.records = records;
    }

    /** What was decided in the transaction; where it goes on, with the checkpoint that is to be the first, and the old ones. */
    private record Decided(Reopening outcome, Optional<Checkpoint> first, Optional<PutAside> old) {}

    Reopening reopen(Actor by, String reason) {
        var problem = findReasonProblem(reason);
        if (problem.isPresent()) {
            return new Refused(problem.get());
        }
        try {
            var decided = database.<Decided>write(by, tx -> decide(tx, reason));
            decided.first().ifPresent(first -> checkpoints.beginAnew(first, decided.old()));
            return decided.outcome();
        } catch (UncheckedIOException unusable) {
            return new Refused(
                    unusable.getMessage() + ": " + unusable.getCause().getMessage());
        }
    }

    private static Optional<String> findReasonProblem(String reason) {
        long visible = Reasons.visible(reason);
        if (visible < Review.LEAST_VISIBLE) {
            return Optional.of("the reason has " + visible + " visible characters: write at least "
                    + Review.LEAST_VISIBLE + ", for whoever reads it in a year");
        }
        return reason.length() > MOST_CHARACTERS
                ? Optional.of("the reason has " + reason.length() + " characters: at most " + MOST_CHARACTERS)
                : Ledger.findTextProblem(reason).map(what -> "the reason " + what);
    }

    private Decided decide(Tx tx, String reason) {
        var stopped = turn.take(tx);
        var doubt = new LedgerCheck(records).verify(tx, checkpoints) instanceof Doubtful found
                ? Optional.of(found.what())
                : stopped;
        return doubt.map(what -> FollowedRecords.findDifference(tx, records)
                        .map(record -> refused(record.what()
                                + ": a record that differs is never acknowledged; restore it from a backup"))
                        .orElseGet(() -> acknowledge(tx, reason, what)))
                .orElseGet(() -> refused("the ledger is neither stopped nor in doubt: there is nothing to resume"));
    }

    private static Decided refused(String text) {
        return new Decided(new Refused(text), Optional.empty(), Optional.empty());
    }

    private Decided acknowledge(Tx tx, String reason, String doubt) {
        var old = checkpoints.findToPutAside();
        turn.resume(tx);
        var event = ledger.append(tx, Resumption.act(reason, doubt, Standing.of(tx), old));
        var first = checkpoints.sign(event.seq(), event.hash(), tx.at()); // without the key nothing is entered
        return new Decided(new Reopened(event), Optional.of(first), old);
    }
}
