package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    private final EditStore edits = new EditStore();

    Proposals(Rooms rooms, Charts charts, ChartRules rules, ImpactCalculation impacts) {
        this.rooms = rooms;
        this.charts = charts;
        this.rules = rules;
        this.impacts = impacts;
    }

    /** A proposal with what is said about it, but for beam physics, which keeps no step from being taken. */
    Assessment assess(ReadTx tx, Change change) {
        var proposal = of(tx, change);
        var equipment = equipment(tx, change);
        var room = equipment.room();
        var impact = impacts.of(room, proposal.before(), proposal.after()).on(proposal.onVersion(), equipment.digest());
        return new Assessment(proposal, room, findings(tx, proposal, room), impact);
    }

    Proposal of(ReadTx tx, Change change) {
        if (change instanceof Signed signed) {
            return signed(tx, signed);
        }
        boolean closed = change instanceof Declined || change instanceof Withdrawn;
        int onVersion = closed
                ? change.head().baseVersion()
                : charts.newest(tx, change.head().room());
        return applied(tx, change, onVersion);
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
        var at = change instanceof Signed signed ? signed.decision().at() : tx.at();
        return rooms.revisionInForce(tx, change.head().room(), at)
                .orElseThrow(() -> new IllegalStateException("room "
                        + change.head().room() + " of change " + change.id() + " has no equipment; restore a backup"));
    }

    private List<Finding> findings(ReadTx tx, Proposal proposal, Room room) {
        var findings = new ArrayList<Finding>();
        proposal.conflicts().forEach(key -> findings.add(Finding.blocking(key, "", moved(proposal))));
        if (proposal.before().equals(proposal.after())) {
            findings.add(Finding.blocking(
                    "", "", "nothing differs from version " + proposal.onVersion() + ": edit a row, or withdraw"));
        }
        findWaiting(tx, proposal).ifPresent(findings::add);
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
    private Optional<Finding> findWaiting(ReadTx tx, Proposal proposal) {
        return charts.version(tx, proposal.change().head().room(), proposal.onVersion())
                .map(ChartVersion::head)
                .filter(head -> head.inForceFrom().isAfter(tx.at()))
                .map(head -> Finding.caution(
                        "",
                        "",
                        "version " + head.number() + " is signed to come into force at " + head.inForceFrom()
                                + ": its rows come into force with this change where that is sooner: "
                                + String.join(
                                        ", ",
                                        Comparison.of(answering(tx, proposal), proposal.before())
                                                .names())));
    }

    /** What the room is told now, below the versions that wait for their day. */
    private ChartContent answering(ReadTx tx, Proposal proposal) {
        int number = proposal.onVersion();
        while (number > 0 && waits(tx, proposal.change(), number)) {
            number--;
        }
        return content(tx, proposal.change(), number);
    }

    private boolean waits(ReadTx tx, Change change, int number) {
        return charts.version(tx, change.head().room(), number)
                .filter(version -> version.head().inForceFrom().isAfter(tx.at()))
                .isPresent();
    }

    private static String moved(Proposal proposal) {
        return "others changed it up to version " + proposal.onVersion()
                + " since this change was made: look at theirs, take up the newest version, then edit it again or undo";
    }
}
