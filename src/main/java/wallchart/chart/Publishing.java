package wallchart.chart;

import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.audit.Ledger;
import wallchart.equipment.Room;
import wallchart.equipment.Rooms;
import wallchart.store.Actor;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The part of {@link Charts} that makes the next version, inside the transaction it is given. */
final class Publishing {

    private static final String LEAD = "lead";

    private final Rooms rooms;
    private final ChartRules rules;
    private final VersionStore versions = new VersionStore();
    private final SharedRows shared = new SharedRows();
    private final RowStore rows = new RowStore(shared);
    private final Ledger ledger = new Ledger();
    private final AdjustmentStore adjustments = new AdjustmentStore();
    private final RecordsDigestStore recordsDigests = new RecordsDigestStore();
    private final ContentStore contents = new ContentStore(rows, adjustments);

    Publishing(Rooms rooms, ChartRules rules) {
        this.rooms = rooms;
        this.rules = rules;
    }

    Publication publish(Tx tx, Draft asked, Map<String, ?> evidence) {
        var draft = inMicroseconds(asked);
        var printedName = findPrintedName(tx, tx.by());
        if (!tx.by().role().equals(LEAD) || printedName.isEmpty()) {
            return new Publication.NotPermitted(tx.by().name() + " (" + tx.by().role()
                    + ") may not publish a chart: ask a lead radiographer to sign it");
        }
        var newest = versions.findNewest(tx, draft.room());
        int current = newest.map(VersionHead::number).orElse(0);
        if (draft.baseVersion() != current) {
            return new Publication.Outdated(current);
        }
        var findings = check(tx, draft, newest);
        return ChartCheck.blocks(findings)
                ? new Publication.Refused(findings)
                : write(tx, draft, printedName.get(), findings, evidence);
    }

    /** What the columns keep. */
    private static Draft inMicroseconds(Draft draft) {
        return new Draft(
                draft.room(),
                draft.baseVersion(),
                draft.content(),
                draft.title().strip(),
                draft.reason().strip(),
                draft.meaning().strip(),
                draft.inForceFrom().map(from -> from.truncatedTo(ChronoUnit.MICROS)),
                draft.reviewDue());
    }

    Optional<String> findPrintedName(Tx tx, Actor actor) {
        var person = actor.personId();
        return person.isPresent() ? versions.findPrintedName(tx, person.getAsLong(), actor.role()) : Optional.empty();
    }

    List<Finding> check(ChartContent content, Room room) {
        return ChartCheck.check(content, room, rules);
    }

    private List<Finding> check(ReadTx tx, Draft draft, Optional<VersionHead> newest) {
        var findings = new ArrayList<>(DraftChecks.check(draft, tx.at(), newest));
        rooms.inForce(tx, draft.room(), draft.inForceFrom().orElse(tx.at()))
                .ifPresentOrElse(
                        room -> findings.addAll(ChartCheck.check(draft.content(), room, rules)),
                        () -> findings.add(Finding.blocking(
                                "",
                                "room",
                                "\"" + draft.room()
                                        + "\" is no room of this department: install its equipment first")));
        if (newest.isPresent() && draft.content().equals(content(tx, newest.get()))) {
            findings.add(Finding.blocking(
                    "", "", "nothing differs from version " + draft.baseVersion() + ": change a row or leave it"));
        }
        return findings;
    }

    private Publication write(Tx tx, Draft draft, String printedName, List<Finding> cautions, Map<String, ?> evidence) {
        int base = draft.baseVersion();
        var head = head(tx, draft, printedName);
        versions.add(tx, head);
        var rowEdit = ValidityEdit.between(
                rows.list(tx, draft.room(), base), draft.content().rows(), Row::key);
        rows.apply(tx, draft.room(), head.number(), rowEdit);
        var adjustmentEdit = ValidityEdit.between(
                adjustments.list(tx, draft.room(), base), draft.content().adjustments(), Adjustment::name);
        adjustments.apply(tx, draft.room(), head.number(), adjustmentEdit);
        var recordsDigest = recordsDigests.of(tx, VersionNumber.of(head)); // last, when the tables have given their ids
        ledger.append(tx, VersionEvent.of(head, recordsDigest, evidence));
        return new Publication.Published(new ChartVersion(head, draft.content()), cautions);
    }

    private static VersionHead head(Tx tx, Draft draft, String printedName) {
        int number = draft.baseVersion() + 1;
        return new VersionHead(
                draft.room(),
                number,
                ContentDigest.of(draft.room(), number, draft.content()),
                draft.title(),
                draft.reason(),
                draft.inForceFrom().orElse(tx.at()),
                draft.reviewDue(),
                new Signature(
                        tx.by().personId().orElseThrow(), printedName, tx.by().role(), tx.at(), draft.meaning()));
    }

    List<String> rooms(ReadTx tx) {
        return versions.rooms(tx);
    }

    /** Heads of one room, oldest first. */
    List<VersionHead> heads(ReadTx tx, String room) {
        return versions.list(tx, room);
    }

    Optional<VersionHead> find(ReadTx tx, String room, int number) {
        return versions.find(tx, room, number);
    }

    int newest(ReadTx tx, String room) {
        return versions.findNewest(tx, room).map(VersionHead::number).orElse(0);
    }

    ChartVersion version(ReadTx tx, VersionHead head) {
        return new ChartVersion(head, shared.of(content(tx, head)));
    }

    /** What was signed; a table to which something was added since must not answer in its name. */
    private ChartContent content(ReadTx tx, VersionHead head) {
        var content = contents.stored(tx, head);
        if (!ContentStore.isSigned(head, content)) {
            throw new IllegalStateException("version " + head.number() + " of room " + head.room()
                    + " is not what was signed any more: its rows do not match its digest; restore a backup");
        }
        return content;
    }
}
