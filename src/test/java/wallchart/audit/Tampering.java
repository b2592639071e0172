package wallchart.audit;

import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import wallchart.store.OwnersTables.Column;

/** The ways in which somebody with the owner's password may tamper with the tables, each time drawn anew. */
final class Tampering {

    /** What is done. */
    enum Kind {
        CHANGED_COLUMN,
        FLIPPED_BIT,
        SWAPPED_VALUES,
        DELETED_ROW,
        INSERTED_ROW,
        DUPLICATED_ROW,
        DATED_BACK,
        CUT_TAIL,
        REWRITTEN_CHAIN,
        MOVED_SIGNATURE,
        OLDER_COPY
    }

    private static final String EVENTS = "audit_event";
    private static final String VERSIONS = "chart_version";
    private static final List<String> SIGNATURE = List.of("signed_by", "printed_name", "role", "signed_at", "meaning");

    private final TableContents untouched;
    private final List<TableContents> older;
    private final Random random;
    private final OtherValues values;

    /** @param older what stood in the tables at earlier times */
    Tampering(TableContents untouched, List<TableContents> older, Random random) {
        this.untouched = untouched;
        this.older = older;
        this.random = random;
        this.values = new OtherValues(random);
    }

    /** @param column which column or, where a kind concerns whole rows, which table it is about, if it has a choice */
    TableContents of(Kind kind, Column column) {
        var tampered = untouched.copy();
        var rows = tampered.rows(column.table());
        int position = tampered.position(column);
        switch (kind) {
            case CHANGED_COLUMN -> any(rows).set(position, other(any(rows), column));
            case FLIPPED_BIT -> {
                var row = any(rows);
                row.set(position, values.flipped(row.get(position)));
            }
            case SWAPPED_VALUES -> swap(any(rows), any(rows), position);
            case DELETED_ROW -> rows.remove(random.nextInt(rows.size()));
            case INSERTED_ROW -> rows.add(invented(any(rows), column.table()));
            case DUPLICATED_ROW -> rows.add(new ArrayList<>(any(rows)));
            case DATED_BACK -> dateBack(tampered, column.table());
            case CUT_TAIL -> cutTail(tampered);
            case REWRITTEN_CHAIN -> rewrite(tampered);
            case MOVED_SIGNATURE -> moveSignature(tampered);
            case OLDER_COPY -> restore(tampered);
        }
        return tampered;
    }

    private List<Object> any(List<List<Object>> rows) {
        return rows.get(random.nextInt(rows.size()));
    }

    private Object other(List<Object> row, Column column) {
        int position = untouched.position(column);
        var neighbours = untouched.rows(column.table()).stream()
                .map(other -> other.get(position))
                .toList();
        return values.insteadOf(row.get(position), column, new ArrayList<>(neighbours));
    }

    private static void swap(List<Object> one, List<Object> another, int position) {
        var value = one.get(position);
        one.set(position, another.get(position));
        another.set(position, value);
    }

    /** A copy of a row with other values in its key and in some more columns. */
    private List<Object> invented(List<Object> row, String table) {
        var columns = untouched.columns(table);
        var added = new ArrayList<>(row);
        for (int changes = 1 + random.nextInt(4); changes > 0; changes--) {
            int position = random.nextInt(columns.size());
            added.set(position, other(added, columns.get(position)));
        }
        return added;
    }

    /** One row's instants, or those of all rows from one on, by the same time. */
    private void dateBack(TableContents tampered, String table) {
        var rows = tampered.rows(table);
        long seconds = 1 + random.nextInt(1_000_000);
        int from = random.nextInt(rows.size());
        int to = random.nextBoolean() ? from + 1 : rows.size();
        for (var row : rows.subList(from, to)) {
            row.replaceAll(value -> value instanceof OffsetDateTime at ? at.minusSeconds(seconds) : value);
        }
    }

    private void cutTail(TableContents tampered) {
        long last = 1 + random.nextInt(tampered.rows(EVENTS).size() - 1);
        int seq = tampered.position(tampered.column(EVENTS, "seq"));
        tampered.rows(EVENTS).removeIf(row -> (Long) row.get(seq) > last);
    }

    /** Another reason in an event and, if it is a signature's, in its version; every hash from there on worked out anew. */
    private void rewrite(TableContents tampered) {
        int seq = tampered.position(tampered.column(EVENTS, "seq"));
        tampered.rows(EVENTS).sort(Comparator.comparing(row -> (Long) row.get(seq)));
        int first = random.nextInt(tampered.rows(EVENTS).size());
        var reason = "Rewritten " + random.nextInt();
        tampered.set(EVENTS, first, "reason", reason);
        var object = (String) tampered.get(EVENTS, first, "object");
        for (int i = 0; i < tampered.rows(VERSIONS).size(); i++) {
            if (object.equals(tampered.get(VERSIONS, i, "room") + "/version/" + tampered.get(VERSIONS, i, "number"))) {
                tampered.set(VERSIONS, i, "reason", reason);
            }
        }
        for (int i = first; i < tampered.rows(EVENTS).size(); i++) {
            var prev = i == 0 ? Event.NONE_BEFORE : (String) tampered.get(EVENTS, i - 1, "hash");
            tampered.set(EVENTS, i, "prev", prev);
            tampered.set(EVENTS, i, "hash", LedgerEncoding.hash(event(tampered, i)));
        }
    }

    static Event event(TableContents contents, int row) {
        return new Event(
                (Long) contents.get(EVENTS, row, "seq"),
                ((OffsetDateTime) contents.get(EVENTS, row, "at")).toInstant(),
                (String) contents.get(EVENTS, row, "actor"),
                (String) contents.get(EVENTS, row, "role"),
                (String) contents.get(EVENTS, row, "action"),
                (String) contents.get(EVENTS, row, "object"),
                Optional.ofNullable((String) contents.get(EVENTS, row, "room")),
                (String) contents.get(EVENTS, row, "reason"),
                (String) contents.get(EVENTS, row, "details"),
                Optional.ofNullable((String) contents.get(EVENTS, row, "request_id")),
                (String) contents.get(EVENTS, row, "prev"),
                (String) contents.get(EVENTS, row, "hash"));
    }

    /** One version gets the signature of another, or both change theirs. */
    private void moveSignature(TableContents tampered) {
        int from = random.nextInt(tampered.rows(VERSIONS).size());
        int to = random.nextInt(tampered.rows(VERSIONS).size());
        boolean both = random.nextBoolean();
        for (var column : SIGNATURE) {
            var moved = tampered.get(VERSIONS, from, column);
            if (both) {
                tampered.set(VERSIONS, from, column, tampered.get(VERSIONS, to, column));
            }
            tampered.set(VERSIONS, to, column, moved);
        }
    }

    /** All tables, or some of them, as they were at an earlier time. */
    private void restore(TableContents tampered) {
        var copy = older.get(random.nextInt(older.size()));
        boolean whole = random.nextBoolean();
        untouched.tables().stream()
                .filter(table -> whole || random.nextBoolean())
                .forEach(table -> tampered.replace(table, copy));
    }
}
