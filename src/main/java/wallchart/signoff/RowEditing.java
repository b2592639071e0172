package wallchart.signoff;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.chart.RowReading.Problem;
import wallchart.signoff.Change.Open;
import wallchart.store.Actor;
import wallchart.store.Tx;

/** The part of {@link SignoffDesk} by which authors edit the rows of their changes, one at a time. */
final class RowEditing {

    private final Steps steps;
    private final Proposals proposals;
    private final EditStore edits = new EditStore();

    RowEditing(Steps steps, Proposals proposals) {
        this.steps = steps;
        this.proposals = proposals;
    }

    Outcome putRow(Actor by, long id, int expected, RowKey key, Map<String, String> fields) {
        return steps.editing(by, id, expected, (tx, change) -> {
            var reading = RowTexts.read(fields);
            return reading.row().isEmpty()
                    ? Outcome.unreadable(reading.problems())
                    : put(new Place(tx, change, key), reading.row().get());
        });
    }

    private Outcome put(Place place, Row row) {
        if (!row.key().equals(place.key)) {
            return move(place, row);
        }
        if (place.baseRow().filter(row::equals).isPresent()) {
            return place.edit().isPresent() ? undo(place) : unchanged(place);
        }
        if (place.isFull()) {
            return tooMany();
        }
        var next = begin(place);
        edits.put(place.tx, next.id(), new RowEdit(place.kind(), row, place.base()));
        return told(place, next, place.kind().slug(), Optional.of(row));
    }

    /** The row takes the place of one with another key: that one goes, this one comes. */
    private Outcome move(Place place, Row row) {
        if (place.now().isEmpty()) {
            return unknownRow(place);
        }
        var target = place.at(row.key());
        if (target.now().isPresent()) {
            return Outcome.unreadable(List.of(new Problem(
                    "bandFromCm",
                    "the chart has a row " + row.key() + " already: edit that one, or choose another band")));
        }
        if (target.isFull()) {
            return tooMany();
        }
        var next = begin(place);
        goes(place);
        target.baseRow()
                .filter(row::equals)
                .ifPresentOrElse(
                        same -> edits.remove(place.tx, next.id(), row.key()),
                        () -> edits.put(place.tx, next.id(), new RowEdit(target.kind(), row, place.base())));
        return told(place, next, "move", Optional.of(row));
    }

    Outcome withdrawRow(Actor by, long id, int expected, RowKey key) {
        return steps.editing(by, id, expected, (tx, change) -> {
            var place = new Place(tx, change, key);
            if (place.now().isEmpty()) {
                return unknownRow(place);
            }
            if (place.isFull()) {
                return tooMany();
            }
            var next = begin(place);
            goes(place);
            return told(place, next, RowEdit.Kind.WITHDRAW.slug(), Optional.empty());
        });
    }

    /** A row of the chart is withdrawn; one that only this change has is forgotten. */
    private void goes(Place place) {
        place.baseRow()
                .ifPresentOrElse(
                        row -> edits.put(
                                place.tx, place.change.id(), new RowEdit(RowEdit.Kind.WITHDRAW, row, place.base())),
                        () -> edits.remove(place.tx, place.change.id(), place.key));
    }

    Outcome undoRow(Actor by, long id, int expected, RowKey key) {
        return steps.editing(by, id, expected, (tx, change) -> {
            var place = new Place(tx, change, key);
            return place.edit().isPresent()
                    ? undo(place)
                    : Outcome.notFound("change " + id + " does nothing to row " + key + ": look at its edits");
        });
    }

    private Outcome undo(Place place) {
        var next = begin(place);
        edits.remove(place.tx, next.id(), place.key);
        return told(place, next, "undo", place.baseRow());
    }

    private Open begin(Place place) {
        var next = place.change.edited();
        steps.replace(place.tx, next);
        return next;
    }

    private Outcome told(Place place, Open next, String edit, Optional<Row> after) {
        var details = new TreeMap<String, Object>(Map.of("edit", edit, "row", place.key.toString()));
        details.put("before", ChangeEvents.row(place.now()));
        details.put("after", ChangeEvents.row(after));
        return steps.told(place.tx, next, ChangeEvents.EDITED, "", details);
    }

    private static Outcome tooMany() {
        return Outcome.unreadable(List.of(new Problem(
                "", "a change edits at most " + Edits.MOST_ROWS + " rows: have this one signed, then open another")));
    }

    private static Outcome unchanged(Place place) {
        return new Outcome.Done(place.change);
    }

    private static Outcome unknownRow(Place place) {
        return Outcome.notFound("row " + place.key + " is neither in version " + place.base() + " nor added by change "
                + place.change.id() + ": look at its rows");
    }

    /** Where in a change somebody edits, and what stood there when they began. */
    private final class Place {

        private final Tx tx;
        private final Open change;
        private final RowKey key;
        private final Edits stored;
        private final Optional<Row> baseRow;

        Place(Tx tx, Open change, RowKey key) {
            this(tx, change, key, edits.list(tx, change.id()));
        }

        private Place(Tx tx, Open change, RowKey key, Edits stored) {
            this.tx = tx;
            this.change = change;
            this.key = key;
            this.stored = stored;
            this.baseRow = proposals.content(tx, change, base()).findRow(key);
        }

        /** Another row of the same change. */
        Place at(RowKey other) {
            return new Place(tx, change, other, stored);
        }

        int base() {
            return change.head().baseVersion();
        }

        /** The row as the version has it that the author works on. */
        Optional<Row> baseRow() {
            return baseRow;
        }

        Optional<RowEdit> edit() {
            return stored.find(key);
        }

        /** The row as the change left it before this edit. */
        Optional<Row> now() {
            var edit = edit();
            return edit.isPresent() ? edit.get().wanted() : baseRow();
        }

        /** Whether no further row can be edited; each step reads all that there are. */
        boolean isFull() {
            return edit().isEmpty() && stored.rows().size() >= Edits.MOST_ROWS;
        }

        RowEdit.Kind kind() {
            return baseRow.isPresent() ? RowEdit.Kind.AMEND : RowEdit.Kind.ADD;
        }
    }
}
