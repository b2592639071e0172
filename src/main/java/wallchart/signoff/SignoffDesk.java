package wallchart.signoff;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.chart.Finding;
import wallchart.chart.RowKey;
import wallchart.equipment.Rooms;
import wallchart.store.Actor;
import wallchart.store.Database;

/**
 * Where changes are opened, edited, reviewed and signed. Safe for many threads. Each method is one transaction with its event and
 * cannot be called inside another; every step names the revision its caller saw, and of two rivals one wins.
 */
public final class SignoffDesk {

    /** The desk of these rooms and charts. */
    public SignoffDesk(Database database, Rooms rooms, Charts charts, ChartRules rules, Impacts impacts) {}

    /** The same desk at the instants of another clock: for a history that is told afterwards. */
    public SignoffDesk at(Clock other) {
        throw new UnsupportedOperationException();
    }

    /** Opens a change, ordinary or fast-track, on a version of the room's chart; 0 where the room has none. */
    public Outcome open(Actor by, String room, String title, String reason, int baseVersion, ChangeKind kind) {
        throw new UnsupportedOperationException();
    }

    /** Prepares, in one step, the change that brings a version back as it was. */
    public Outcome revertTo(Actor by, String room, int version, String reason) {
        throw new UnsupportedOperationException();
    }

    /** The change of that number. */
    public Optional<Change> find(long id) {
        throw new UnsupportedOperationException();
    }

    /** Changes, newest first. */
    public List<Change> list(ChangeFilter filter) {
        throw new UnsupportedOperationException();
    }

    /** The change with its edits and what it makes of the chart, all as of one instant. */
    public Optional<Proposal> proposal(long id) {
        throw new UnsupportedOperationException();
    }

    /** What is to be said about that chart in the room as it is now; conflicts with newer versions are among it. */
    public Optional<List<Finding>> findings(long id) {
        throw new UnsupportedOperationException();
    }

    /** What the change does to the room's exposures; its digest is what concurrence and signature name. */
    public Optional<Impact> impact(long id) {
        throw new UnsupportedOperationException();
    }

    /**
     * Adds or amends a row.
     *
     * @param key the row that is edited; a key that the chart has not is added
     * @param fields by the names of {@code RowFields}, the whole row; where their key is another one, this row takes the place of
     *     the one edited
     */
    public Outcome putRow(Actor by, long id, int expectedRevision, RowKey key, Map<String, String> fields) {
        throw new UnsupportedOperationException();
    }

    /** Withdraws a row of the chart; a row that this change adds is taken back. */
    public Outcome withdrawRow(Actor by, long id, int expectedRevision, RowKey key) {
        throw new UnsupportedOperationException();
    }

    /** Takes back what the change does to a row. */
    public Outcome undoRow(Actor by, long id, int expectedRevision, RowKey key) {
        throw new UnsupportedOperationException();
    }

    /** Gives all named adjustments anew, each by the names of {@code RowFields.ADJUSTMENT_NAMES}. */
    public Outcome putAdjustments(Actor by, long id, int expectedRevision, List<Map<String, String>> adjustments) {
        throw new UnsupportedOperationException();
    }

    /** Takes back what the change does to the named adjustments. */
    public Outcome undoAdjustments(Actor by, long id, int expectedRevision) {
        throw new UnsupportedOperationException();
    }

    /**
     * Takes the newest version as the base of the change. Edits of rows that others moved meanwhile stay in conflict until the
     * author puts or undoes each of them.
     */
    public Outcome catchUp(Actor by, long id, int expectedRevision) {
        throw new UnsupportedOperationException();
    }

    /** Hands the change in for a signature. */
    public Outcome submit(Actor by, long id, int expectedRevision) {
        throw new UnsupportedOperationException();
    }

    /** Gives the change back to its author. */
    public Outcome giveBack(Actor by, long id, int expectedRevision, String reason) {
        throw new UnsupportedOperationException();
    }

    /** Says no to the change. */
    public Outcome decline(Actor by, long id, int expectedRevision, String reason) {
        throw new UnsupportedOperationException();
    }

    /** Takes the change back for good. */
    public Outcome withdraw(Actor by, long id, int expectedRevision) {
        throw new UnsupportedOperationException();
    }

    /**
     * The physicist concurs.
     *
     * @param impactDigest digest of the impact they saw; absent: with the impact as it is
     */
    public Outcome concur(Actor by, long id, int expectedRevision, Optional<String> impactDigest) {
        throw new UnsupportedOperationException();
    }

    /**
     * Signs the change: it becomes the next version of the chart.
     *
     * @param meaning what the signature states
     * @param inForceFrom first instant at which the version answers; absent: from now
     * @param impactDigest digest of the impact the signer saw
     * @param reviewDue day by which the version is to be reviewed; absent: a year after it comes into force
     */
    public Outcome sign(
            Actor by,
            long id,
            int expectedRevision,
            String meaning,
            Optional<Instant> inForceFrom,
            String impactDigest,
            Optional<LocalDate> reviewDue) {
        throw new UnsupportedOperationException();
    }

    /** Signed fast-track changes with a second review, the earliest due first; only those still open, or all. */
    public List<Change.Signed> secondReviews(boolean open) {
        throw new UnsupportedOperationException();
    }

    /** A physicist, neither author nor signer, records what they found in a fast-track change. */
    public Outcome recordSecondReview(Actor by, long id, int expectedRevision, String findings) {
        throw new UnsupportedOperationException();
    }
}
