package wallchart.signoff;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.audit.Event;
import wallchart.audit.Ledger;
import wallchart.audit.RecordCheck;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.chart.Finding;
import wallchart.chart.RowKey;
import wallchart.equipment.Room;
import wallchart.equipment.Rooms;
import wallchart.grading.ChartPhysics;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.ReadTx;
import wallchart.technique.OutputSinceSigning;

/**
 * Where changes are opened, edited, reviewed and signed. Safe for many threads. Each method is one transaction with its event and
 * cannot be called inside another; every step names the revision its caller saw, and of two rivals one wins.
 */
public final class SignoffDesk {

    private final Database database;
    private final Rooms rooms;
    private final Charts charts;
    private final Proposals proposals;
    private final ImpactCalculation impacts;
    private final ChartPhysics physics;
    private final Period reviewAfter;
    private final Openings openings;
    private final Editing editing;
    private final RowEditing rowEditing;
    private final Decisions decisions;
    private final Steps steps;
    private final ChangeStore changes = new ChangeStore();
    private final Ledger ledger = new Ledger();

    /**
     * The desk of these rooms and charts.
     *
     * @param reviewAfter how long after it comes into force a version is due for review, where its signer names no day
     */
    public SignoffDesk(
            Database database,
            Rooms rooms,
            Charts charts,
            ChartRules rules,
            ImpactCalculation impacts,
            ChartPhysics physics,
            Period reviewAfter) {
        this(database, rooms, charts, new Proposals(rooms, charts, rules, impacts), impacts, physics, reviewAfter);
    }

    private SignoffDesk(
            Database database,
            Rooms rooms,
            Charts charts,
            Proposals proposals,
            ImpactCalculation impacts,
            ChartPhysics physics,
            Period reviewAfter) {
        this.impacts = impacts;
        this.physics = physics;
        this.steps = new Steps(database, charts);
        this.database = database;
        this.rooms = rooms;
        this.charts = charts;
        this.proposals = proposals;
        this.reviewAfter = reviewAfter;
        this.openings = new Openings(rooms, charts, steps);
        this.editing = new Editing(steps, proposals);
        this.rowEditing = new RowEditing(steps, proposals);
        this.decisions = new Decisions(steps, proposals);
    }

    /** How the ledger's check holds changes against their events. */
    public static RecordCheck records() {
        return new ChangeRecords();
    }

    /** The same desk at the instants of another clock: for a history that is told afterwards. */
    public SignoffDesk at(Clock other) {
        return new SignoffDesk(database.at(other), rooms, charts, proposals, impacts, physics, reviewAfter);
    }

    /**
     * Opens a change, ordinary or fast-track, on a version of the room's chart; 0 where the room has none.
     *
     * @throws IllegalArgumentException for a revert: see {@link #revertTo}
     */
    public Outcome open(Actor by, String room, String title, String reason, int baseVersion, ChangeKind kind) {
        return openings.open(by, room, title, reason, baseVersion, kind);
    }

    /**
     * Opens an ordinary change with all its edits in one act: what cannot be read refuses the whole, naming rows and fields, and so
     * does one that would edit more rows than a change may, or none.
     */
    public Outcome prepare(Actor by, String room, String title, String reason, int baseVersion, Preparation wanted) {
        return openings.prepare(by, room, title, reason, baseVersion, wanted);
    }

    /** Prepares, in one step, the change that brings a version back as it was. */
    public Outcome revertTo(Actor by, String room, int version, String reason) {
        return openings.revertTo(by, room, version, reason);
    }

    /** Number of the newest version of a room's chart, in force or not yet; 0 where there is none. */
    public int newest(String room) {
        return database.read(tx -> charts.newest(tx, room));
    }

    /** The change of that number. */
    public Optional<Change> find(long id) {
        return database.read(tx -> changes.find(tx, id));
    }

    /** Changes, newest first. */
    public List<Change> list(ChangeFilter filter) {
        return database.read(tx -> changes.list(tx, filter));
    }

    /** What the ledger says was done to the change, oldest first; the signature is an event of the version it became. */
    public Optional<List<Event>> history(long id) {
        return database.read(tx -> changes.find(tx, id).map(change -> history(tx, change)));
    }

    private List<Event> history(ReadTx tx, Change change) {
        var room = change.head().room();
        var events = new ArrayList<>(ledger.about(tx, room, ChangeEvents.object(change)));
        if (change instanceof Change.Signed signed) {
            events.addAll(ledger.about(tx, room, room + "/version/" + signed.version()));
            events.sort(Comparator.comparingLong(Event::seq));
        }
        return List.copyOf(events);
    }

    /** The change with its edits and what it makes of the chart, all as of one instant. */
    public Optional<Proposal> proposal(long id) {
        return database.read(tx -> changes.find(tx, id).map(change -> proposals.of(tx, change)));
    }

    /** The same with findings and impact; beam physics is worked out when nothing waits for the transaction any more. */
    public Optional<Assessment> assessment(long id) {
        return judged(id).map(assessed -> assessed.with(physics, outputSinceSigning(assessed.proposal())));
    }

    /** Whoever signs makes the tube as it is now the one to compare with: here they are told what they take over. */
    private Optional<Finding> outputSinceSigning(Proposal proposal) {
        var room = proposal.change().head().room();
        var at = proposal.change() instanceof Change.Signed signed
                ? signed.decision().at()
                : database.clock().instant();
        return charts.version(room, proposal.onVersion())
                .flatMap(version -> rooms.revisionInForce(room, at)
                        .flatMap(now -> physics.since(version, now, rooms.revisions(room))))
                .flatMap(OutputSinceSigning::finding);
    }

    /** What it would do to a room, as it is equipped now, if its chart said the one instead of the other. */
    public Impact impact(Room room, ChartContent before, ChartContent after) {
        return impacts.of(room, before, after);
    }

    /** What beam physics would say of it that it does not say now: jumps, slopes, reference levels. */
    public List<Finding> findings(Room room, ChartContent before, ChartContent after) {
        return physics.compare(room, before, after).brought();
    }

    /** The impact alone. */
    public Optional<Impact> impact(long id) {
        return judged(id).map(Assessment::impact);
    }

    /** The change as it is judged by whoever signs: with its impact, and without what beam physics says, which takes far longer. */
    public Optional<Assessment> judged(long id) {
        return database.read(tx -> changes.find(tx, id).map(change -> proposals.assess(tx, change)));
    }

    /** Gives the change another title and reason, as after it was returned for them. */
    public Outcome rename(Actor by, long id, int expectedRevision, String title, String reason) {
        return editing.rename(by, id, expectedRevision, title, reason);
    }

    /**
     * Adds or amends a row.
     *
     * @param key the row that is edited; a key that the chart has not is added
     * @param fields by the names of {@code RowFields}, the whole row; where their key is another one, this row takes the place of
     *     the one edited
     */
    public Outcome putRow(Actor by, long id, int expectedRevision, RowKey key, Map<String, String> fields) {
        return rowEditing.putRow(by, id, expectedRevision, key, fields);
    }

    /** Withdraws a row of the chart; a row that this change adds is taken back. */
    public Outcome withdrawRow(Actor by, long id, int expectedRevision, RowKey key) {
        return rowEditing.withdrawRow(by, id, expectedRevision, key);
    }

    /** Takes back what the change does to a row. */
    public Outcome undoRow(Actor by, long id, int expectedRevision, RowKey key) {
        return rowEditing.undoRow(by, id, expectedRevision, key);
    }

    /** Gives all named adjustments anew, each by the names of {@code RowFields.ADJUSTMENT_NAMES}. */
    public Outcome putAdjustments(Actor by, long id, int expectedRevision, List<Map<String, String>> adjustments) {
        return editing.putAdjustments(by, id, expectedRevision, adjustments);
    }

    /** Takes back what the change does to the named adjustments. */
    public Outcome undoAdjustments(Actor by, long id, int expectedRevision) {
        return editing.undoAdjustments(by, id, expectedRevision);
    }

    /**
     * Takes the newest version as the base of the change. Edits of rows that others moved meanwhile stay in conflict until the
     * author puts or undoes each of them.
     */
    public Outcome catchUp(Actor by, long id, int expectedRevision) {
        return editing.catchUp(by, id, expectedRevision);
    }

    /** Hands the change in for a signature. */
    public Outcome submit(Actor by, long id, int expectedRevision) {
        return decisions.submit(by, id, expectedRevision);
    }

    /** Gives the change back to its author; a lead may, and a physicist who does not concur. */
    public Outcome giveBack(Actor by, long id, int expectedRevision, String reason) {
        return decisions.giveBack(by, id, expectedRevision, reason);
    }

    /** Says no to the change. */
    public Outcome decline(Actor by, long id, int expectedRevision, String reason) {
        return decisions.decline(by, id, expectedRevision, reason);
    }

    /** Takes the change back for good. */
    public Outcome withdraw(Actor by, long id, int expectedRevision) {
        return decisions.withdraw(by, id, expectedRevision);
    }

    /**
     * The physicist concurs.
     *
     * @param impactDigest digest of the impact they saw; absent: with the impact as it is
     */
    public Outcome concur(Actor by, long id, int expectedRevision, Optional<String> impactDigest) {
        return decisions.concur(by, id, expectedRevision, impactDigest);
    }

    /**
     * Signs the change: it becomes the next version of the chart.
     *
     * @param meaning what the signature states
     * @param inForceFrom first instant at which the version answers; absent: from now
     * @param impactDigest digest of the impact the signer saw
     * @param reviewDue day by which the version is to be reviewed; absent: the site's interval after it comes into force
     */
    public Outcome sign(
            Actor by,
            long id,
            int expectedRevision,
            String meaning,
            Optional<Instant> inForceFrom,
            String impactDigest,
            Optional<LocalDate> reviewDue) {
        var statement = new Signing.Statement(meaning, inForceFrom, impactDigest, reviewDue);
        return new Signing(charts, steps, proposals, reviewAfter, statement).sign(by, id, expectedRevision);
    }

    /** Signed fast-track changes with a second review, the earliest due first; only those still open, or all. */
    public List<Change.Signed> secondReviews(boolean openOnly) {
        return database.read(tx -> changes.secondReviews(tx, openOnly).stream()
                .map(Change.Signed.class::cast)
                .toList());
    }

    /** A physicist, not its author, records what they found in a fast-track change. */
    public Outcome recordSecondReview(Actor by, long id, int expectedRevision, String findings) {
        return decisions.secondReview(by, id, expectedRevision, findings);
    }
}
