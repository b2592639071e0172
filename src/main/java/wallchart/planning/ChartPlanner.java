package wallchart.planning;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.Row;
import wallchart.chart.RowReading.Problem;
import wallchart.chart.Texts;
import wallchart.equipment.Room;
import wallchart.equipment.Rooms;
import wallchart.physics.BeamPhysics;
import wallchart.planning.BandPlanner.Proven;
import wallchart.signoff.Edits;
import wallchart.signoff.Outcome;
import wallchart.signoff.SignoffDesk;
import wallchart.store.Actor;

/**
 * Where charts are drafted by the beam model: worked out to look at, or opened as a change that its author edits, hands in and has
 * signed as any other. Safe for many threads.
 */
public final class ChartPlanner {

    /** What a change keeps of its reason. */
    private static final int LONGEST_REASON = 2000;

    /** As of any change: what the draft says of itself is no reason of its author. */
    private static final int LEAST_REASON = 10;

    private final Rooms rooms;
    private final Charts charts;
    private final ChartRules rules;
    private final Models models;
    private final SignoffDesk desk;

    public ChartPlanner(Rooms rooms, Charts charts, ChartRules rules, BeamPhysics physics, SignoffDesk desk) {
        this.rooms = rooms;
        this.charts = charts;
        this.rules = rules;
        this.models = Models.of(physics);
        this.desk = desk;
    }

    /** A set of bands for a room, from one proven technique. */
    public Planned preview(String room, PlanRequest asked) {
        return on(room, asked.baseVersion(), (base, version, before) -> plan(base, version, before, asked));
    }

    /** The same, opened as a change. */
    public Planned open(Actor by, String room, String title, String reason, PlanRequest asked) {
        return opened(by, title, reason, preview(room, asked));
    }

    /**
     * The rows of another room, as they would be in this one.
     *
     * @param baseVersion the version of this room's chart that it is made for; absent: the newest
     */
    public Planned preview(String room, Optional<Integer> baseVersion, RoomTransfer asked) {
        return on(room, baseVersion, (to, version, before) -> transfer(to, version, before, asked));
    }

    /** The same, opened as a change. */
    public Planned open(
            Actor by, String room, String title, String reason, Optional<Integer> baseVersion, RoomTransfer asked) {
        return opened(by, title, reason, preview(room, baseVersion, asked));
    }

    private interface Work {
        Planned of(Room room, int version, ChartContent before);
    }

    private Planned on(String id, Optional<Integer> baseVersion, Work work) {
        var room = rooms.find(id);
        if (room.isEmpty()) {
            return Planned.missing("room " + id + " is unknown: look at the list of rooms");
        }
        int version = baseVersion.orElseGet(() -> desk.newest(id));
        var content = version == 0
                ? Optional.of(ChartContent.EMPTY)
                : charts.version(id, version).map(ChartVersion::content);
        return content.map(before -> compared(room.get(), work.of(room.get(), version, before)))
                .orElseGet(() -> Planned.missing(
                        "room " + id + " has no version " + version + ": look at the list of versions"));
    }

    private Planned compared(Room room, Planned planned) {
        if (planned instanceof Planned.Drawn drawn) {
            var proposal = drawn.proposal();
            var impact = desk.impact(room, proposal.before(), proposal.after());
            var origins = proposal.rows().stream().map(row -> row.origin().room());
            var equipment = Stream.concat(Stream.of(room.id()), origins)
                    .distinct()
                    .map(id -> id + " revision " + rooms.revisions(id).size())
                    .toList();
            var findings = desk.findings(room, proposal.before(), proposal.after());
            return new Planned.Drawn(
                    proposal.with(impact, findings, " Equipment as of " + String.join(", ", equipment) + "."));
        }
        return planned;
    }

    private Planned plan(Room room, int version, ChartContent before, PlanRequest asked) {
        var planner = new BandPlanner(models, rules);
        if (asked.technique() instanceof PlanRequest.Named named) {
            return findRow(before, named.row())
                    .map(row ->
                            planner.plan(room, version, before, new Proven(row, Optional.of(row.key())), asked.plan()))
                    .orElseGet(() -> Planned.wrong(
                            "row", "version " + version + " of room " + room.id() + " has no such row: see its rows"));
        }
        var fields = ((PlanRequest.Written) asked.technique()).fields();
        var reading = ProvenReader.read(fields, room, rules);
        return reading.row()
                .map(row -> planner.plan(room, version, before, new Proven(row, Optional.empty()), asked.plan()))
                .orElseGet(() -> refused(reading.problems()));
    }

    private static Planned refused(List<Problem> problems) {
        return new Planned.Refused(Outcome.unreadable(problems));
    }

    private static Optional<Row> findRow(ChartContent content, String key) {
        return content.rows().stream()
                .filter(row -> row.key().toString().equals(key))
                .findFirst();
    }

    private Planned transfer(Room to, int version, ChartContent before, RoomTransfer asked) {
        var from = rooms.find(asked.fromRoom());
        if (from.isEmpty()) {
            return Planned.wrong("fromRoom", "there is no such room: look at the list of rooms");
        }
        var theirs = charts.version(asked.fromRoom(), asked.fromVersion());
        if (theirs.isEmpty()) {
            return Planned.wrong("fromVersion", "room " + asked.fromRoom() + " has no such version: see its versions");
        }
        if (asked.fromRoom().equals(to.id()) && asked.fromVersion() == version) {
            return Planned.wrong(
                    "fromVersion",
                    "is the very version that the change would start from: name another room, or another version of"
                            + " this one");
        }
        var content = theirs.get().content();
        var selection = TransferSelection.of(content, from.get(), to, asked);
        if (!selection.problems().isEmpty()) {
            return refused(selection.problems());
        }
        var proposal = new TransferCalculation(models, rules, from.get(), to, asked, before)
                .proposal(selection.rows(), content.adjustments(), version);
        return proposal.edits() > Edits.MOST_ROWS ? tooMany(proposal) : new Planned.Drawn(proposal);
    }

    private static Planned tooMany(ChartProposal proposal) {
        return Planned.wrong(
                "bodyPart",
                "this would edit " + proposal.edits() + " rows, a change takes at most " + Edits.MOST_ROWS
                        + ": name a body part, one after the other");
    }

    private Planned opened(Actor by, String title, String reason, Planned planned) {
        return planned instanceof Planned.Drawn drawn ? opened(by, title, reason, drawn.proposal()) : planned;
    }

    private static String sentence(String words) {
        return words.endsWith(".") || words.endsWith("!") || words.endsWith("?") ? words : words + ".";
    }

    private Planned opened(Actor by, String title, String reason, ChartProposal proposal) {
        if (proposal.rows().isEmpty()) {
            return Planned.nothingLeft(proposal.leftOut());
        }
        int left = LONGEST_REASON - proposal.statement().length() - 2;
        var words = Texts.problems(reason.strip(), LEAST_REASON, left);
        if (!words.isEmpty()) {
            return Planned.wrong("reason", words.get(0) + "; what the draft rests on stands beside it");
        }
        var outcome = desk.prepare(
                by,
                proposal.room(),
                title,
                sentence(reason.strip()) + " " + proposal.statement(),
                proposal.baseVersion(),
                proposal.preparation());
        return outcome instanceof Outcome.Done done
                ? new Planned.Opened(proposal, done.change())
                : new Planned.Refused((Outcome.Refused) outcome);
    }
}
