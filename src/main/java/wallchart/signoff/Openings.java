package wallchart.signoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.Finding;
import wallchart.chart.RowReading.Problem;
import wallchart.equipment.Rooms;
import wallchart.people.Role;
import wallchart.store.Actor;
import wallchart.store.Tx;

/** The part of {@link SignoffDesk} that opens changes. */
final class Openings {

    private static final List<Role> PROPOSERS = List.of(Role.RADIOGRAPHER, Role.LEAD, Role.PHYSICIST);

    /** Somewhat under what an event's column keeps, which also holds state, revision and digests. */
    private static final int LONGEST_DETAILS = 950_000;

    /** Of the newest drafts of the room. */
    private static final int MOST_COMPARED = 200;

    private final Rooms rooms;
    private final Charts charts;
    private final Steps steps;
    private final ChangeStore changes = new ChangeStore();
    private final EditStore edits = new EditStore();

    Openings(Rooms rooms, Charts charts, Steps steps) {
        this.rooms = rooms;
        this.charts = charts;
        this.steps = steps;
    }

    Outcome open(Actor by, String room, String title, String reason, int baseVersion, ChangeKind kind) {
        if (kind == ChangeKind.REVERT) {
            throw new IllegalArgumentException("a revert is prepared with the version it brings back");
        }
        return opened(by, room, new Words().title(title).reason(reason), tx -> {
            int newest = charts.newest(tx, room);
            return exists(baseVersion, newest)
                    ? add(tx, head(tx, room, title, reason, baseVersion, kind, Optional.empty()))
                    : Outcome.notFound(noVersion(room, baseVersion, newest));
        });
    }

    /** Opens an ordinary change that is drafted already, with all its edits or not at all. */
    Outcome prepare(Actor by, String room, String title, String reason, int baseVersion, Preparation wanted) {
        return opened(by, room, new Words().title(title).reason(reason), tx -> {
            int newest = charts.newest(tx, room);
            if (!exists(baseVersion, newest)) {
                return Outcome.notFound(noVersion(room, baseVersion, newest));
            }
            var before = content(tx, room, baseVersion);
            var prepared = new PreparedEdits(before, baseVersion).take(wanted);
            if (!prepared.problems().isEmpty()) {
                return Outcome.unreadable(prepared.problems());
            }
            var head = head(tx, room, title, reason, baseVersion, ChangeKind.ORDINARY, Optional.empty());
            if (prepared.edits().equals(Edits.NONE)) {
                return nothingDiffers(baseVersion);
            }
            return findSame(tx, head, prepared.edits())
                    .<Outcome>map(Outcome::alreadyDrafted)
                    .orElseGet(() -> add(tx, head, prepared.edits(), before));
        });
    }

    /** Whoever sends the same twice, for want of an answer, gets one change. */
    private Optional<Change> findSame(Tx tx, ChangeHead head, Edits wanted) {
        var drafting = new ChangeFilter(
                Optional.of(ChangeState.DRAFTING), Optional.of(head.room()), Optional.empty(), MOST_COMPARED);
        return changes.list(tx, drafting).stream()
                .filter(other -> other.head().author().equals(head.author()))
                .filter(other -> other.head().title().equals(head.title())
                        && other.head().baseVersion() == head.baseVersion())
                .filter(other -> edits.list(tx, other.id()).equals(wanted))
                .findFirst();
    }

    private ChartContent content(Tx tx, String room, int version) {
        return version == 0
                ? ChartContent.EMPTY
                : charts.version(tx, room, version).orElseThrow().content();
    }

    private static Outcome nothingDiffers(int version) {
        return Outcome.blocked(List.of(Finding.blocking(
                "", "rows", "what is prepared says what version " + version + " says already: nothing to propose")));
    }

    Outcome revertTo(Actor by, String room, int version, String reason) {
        return opened(by, room, new Words().reason(reason), tx -> {
            int newest = charts.newest(tx, room);
            var wanted = version > 0 ? charts.version(tx, room, version) : Optional.<ChartVersion>empty();
            if (wanted.isEmpty()) {
                return Outcome.notFound(noVersion(room, version, newest));
            }
            var now = charts.version(tx, room, newest).orElseThrow();
            if (now.content().equals(wanted.get().content())) {
                return Outcome.blocked(List.of(Finding.blocking(
                        "", "version", "version " + newest + " says what version " + version + " says already")));
            }
            var title = "Back to version " + version;
            return add(tx, head(tx, room, title, reason, newest, ChangeKind.REVERT, Optional.of(version)));
        });
    }

    private Outcome opened(Actor by, String room, Words words, Function<Tx, Outcome> opening) {
        if (PROPOSERS.stream().noneMatch(role -> Steps.isA(by, role))) {
            return Outcome.notAllowed(
                    by.name() + " (" + by.role() + ") may not propose changes: ask a radiographer, lead or physicist");
        }
        if (rooms.find(room).isEmpty()) {
            return Outcome.notFound("room " + room + " is unknown: look at the list of rooms");
        }
        return words.problems().isEmpty() ? steps.opening(by, opening) : Outcome.unreadable(words.problems());
    }

    private ChangeHead head(
            Tx tx, String room, String title, String reason, int base, ChangeKind kind, Optional<Integer> revertsTo) {
        return new ChangeHead(
                0, room, title.strip(), reason.strip(), base, kind, revertsTo, steps.signatory(tx), tx.at(), 1);
    }

    private Outcome add(Tx tx, ChangeHead unnumbered) {
        var added = changes.add(tx, unnumbered);
        return steps.told(tx, added, ChangeEvents.OPENED, unnumbered.reason(), details(unnumbered));
    }

    private Outcome add(Tx tx, ChangeHead unnumbered, Edits prepared, ChartContent before) {
        var details = details(unnumbered);
        details.putAll(ChangeEvents.prepared(prepared, before));
        if (EditTexts.canonical(details).text().length() > LONGEST_DETAILS) {
            return Outcome.unreadable(List.of(new Problem(
                    "rows",
                    "these rows hold more than the ledger keeps of one act, " + LONGEST_DETAILS
                            + " characters: prepare fewer at a time")));
        }
        var added = changes.add(tx, unnumbered);
        prepared.rows().forEach(edit -> edits.put(tx, added.id(), edit));
        prepared.adjustments().ifPresent(edit -> edits.put(tx, added.id(), edit));
        return steps.told(tx, added, ChangeEvents.OPENED, unnumbered.reason(), details);
    }

    private static TreeMap<String, Object> details(ChangeHead head) {
        var details = new TreeMap<String, Object>(Map.of(
                "title",
                head.title(),
                "baseVersion",
                head.baseVersion(),
                "kind",
                head.kind().slug()));
        head.revertsTo().ifPresent(version -> details.put("revertsTo", version));
        return details;
    }

    private static boolean exists(int baseVersion, int newest) {
        return baseVersion == 0 ? newest == 0 : baseVersion > 0 && baseVersion <= newest;
    }

    private static String noVersion(String room, int asked, int newest) {
        return newest == 0
                ? "room " + room + " has no version yet: name 0 as the base"
                : "room " + room + " has no version " + asked + ": name one of 1 to " + newest;
    }
}
