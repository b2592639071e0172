package wallchart.signoff;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.chart.ChartCheck;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.Comparison;
import wallchart.chart.Finding;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.equipment.Rooms;
import wallchart.signoff.Change.Declined;
import wallchart.signoff.Change.Signed;
import wallchart.signoff.Change.Withdrawn;
import wallchart.store.ReadTx;

/** What a change would make of its room's chart, inside the transaction it is given: content, findings, impact. */
final class Proposals {

    private final Rooms rooms;
    private final Charts charts;
    private final ChartRules rules;
    private final ImpactCalculation impacts;
    private final EarlyStarts earlyStarts;
    private final EditStore edits = new EditStore();

    Proposals(Rooms rooms, Charts charts, ChartRules rules, ImpactCalculation impacts) {
        this.rooms = rooms;
        this.charts = charts;
        this.rules = rules;
        this.impacts = impacts;
        this.earlyStarts = new EarlyStarts(charts, impacts);
    }

    /** A proposal with what is said about it, but for beam physics, which keeps no step from being taken. */
    Assessment assess(ReadTx tx, Change change) {
        var proposal = of(tx, change);
        var equipment = equipment(tx, change);
        var room = equipment.room();
        var early = isClosed(change) ? List.<EarlyStart>of() : earlyStarts.of(tx, proposal, room, lookedAt(tx, change));
        var impact = impacts.of(room, proposal.before(), proposal.after())
                .on(proposal.onVersion(), equipment.digest(), early);
        return new Assessment(proposal, room, findings(proposal, room, early), impact);
    }

    Proposal of(ReadTx tx, Change change) {
        if (change instanceof Signed signed) {
            return signed(tx, signed);
        }
        int onVersion = isClosed(change)
                ? change.head().baseVersion()
                : charts.newest(tx, change.head().room());
        return applied(tx, change, onVersion);
    }

    /** Closed without a signature: no version answers for it. */
    private static boolean isClosed(Change change) {
        return change instanceof Declined || change instanceof Withdrawn;
    }

    /** The instant as of which it is judged: now, or when it was signed. */
    private static Instant lookedAt(ReadTx tx, Change change) {
        return change instanceof Signed signed ? signed.decision().at() : tx.at();
    }

    private Proposal signed(ReadTx tx, Signed signed) {
        int before = signed.version() - 1;
        return new Proposal(
                signed,
                edits.list(tx, signed.id()),
                before,
                content(tx, signed, before),
                content(tx, signed, signed.version()),
                List.of());
    }

    private Proposal applied(ReadTx tx, Change change, int onVersion) {
        var before = content(tx, change, onVersion);
        var head = change.head();
        if (head.revertsTo().isPresent()) {
            var moved = head.baseVersion() == onVersion ? List.<String>of() : List.of(Proposal.CHART);
            var after = content(tx, change, head.revertsTo().get());
            return new Proposal(change, Edits.NONE, onVersion, before, after, moved);
        }
        return new Merging(onVersion, before, number -> content(tx, change, number))
                .of(change, edits.list(tx, change.id()));
    }

    /** Rows and adjustments of a version of the change's room; nothing before the first. */
    ChartContent content(ReadTx tx, Change change, int number) {
        var room = change.head().room();
        return number == 0
                ? ChartContent.EMPTY
                : charts.version(tx, room, number)
                        .map(ChartVersion::content)
                        .orElseThrow(() -> new IllegalStateException("change " + change.id() + " speaks of version "
                                + number + " of room " + room + ", which is not there; restore a backup"));
    }

    /** The room as it is equipped now, or was when the change was signed. */
    private RoomRevision equipment(ReadTx tx, Change change) {
        return rooms.revisionInForce(tx, change.head().room(), lookedAt(tx, change))
                .orElseThrow(() -> new IllegalStateException("room "
                        + change.head().room() + " of change " + change.id() + " has no equipment; restore a backup"));
    }

    private List<Finding> findings(Proposal proposal, Room room, List<EarlyStart> early) {
        var findings = new ArrayList<Finding>();
        proposal.conflicts().forEach(key -> findings.add(Finding.blocking(key, "", moved(proposal))));
        if (proposal.before().equals(proposal.after())) {
            findings.add(Finding.blocking(
                    "", "", "nothing differs from version " + proposal.onVersion() + ": edit a row, or withdraw"));
        }
        early.stream().limit(1).map(Proposals::waiting).forEach(findings::add);
        findings.addAll(lost(proposal));
        findings.addAll(ChartCheck.check(proposal.after(), room, rules));
        return List.copyOf(findings);
    }

    /** Whoever signs should know which thicknesses had a technique and get none any more, also at the ends of an examination. */
    private static List<Finding> lost(Proposal proposal) {
        var findings = new ArrayList<Finding>();
        for (var row : Comparison.of(proposal.before(), proposal.after()).withdrawn()) {
            Coverage.lost(row, proposal.after().rows())
                    .ifPresent(lost -> findings.add(Finding.caution(
                            row.key().toString(),
                            "bandToCm",
                            "no row answers " + lost + " any more: add a row for it if it is still examined here")));
        }
        return findings;
    }

    /** Whoever signs should know that they sign on top of a version that does not answer yet, and what it brings with it. */
    private static Finding waiting(EarlyStart early) {
        var newest = early.overtaken().get(early.overtaken().size() - 1);
        var brought = Stream.concat(early.broughtRows().stream(), early.broughtAdjustments().stream())
                .collect(Collectors.joining(", "));
        return Finding.caution(
                "",
                "",
                "version " + newest.number() + " is signed to come into force at " + newest.inForceFrom()
                        + (brought.isEmpty()
                                ? ": if this change starts sooner, that version never answers"
                                : ": if this change starts sooner, it brings into force, earlier than signed: "
                                        + brought));
    }

    private static String moved(Proposal proposal) {
        return "others changed it up to version " + proposal.onVersion()
                + " since this change was made: look at theirs, take up the newest version, then edit it again or undo";
    }
}
