package wallchart.signoff;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import wallchart.chart.RowKey;
import wallchart.signoff.Edits.AdjustmentsEdit;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The tables of what changes do to rows and adjustments. */
final class EditStore {

    /** In the order of the first edit of each row. */
    Edits list(ReadTx tx, long change) {
        var rows = tx
                .handle()
                .createQuery("SELECT row_key, kind, fields, based_on FROM chart_change_row"
                        + " WHERE change_id = :change ORDER BY id")
                .bind("change", change)
                .map((row, context) -> new Keyed(
                        row.getString("row_key"),
                        new RowEdit(
                                RowEdit.Kind.ofSlug(row.getString("kind")),
                                EditTexts.row(row.getString("fields")),
                                basedOn(row))))
                .list()
                .stream()
                .map(Keyed::edit)
                .toList();
        return new Edits(rows, findAdjustments(tx, change));
    }

    private static int basedOn(ResultSet row) throws SQLException {
        return Objects.requireNonNull(row.getObject("based_on", Integer.class), "an edit is based on no version");
    }

    /** An edit under the key by which it is found. */
    private record Keyed(String key, RowEdit edit) {
        Keyed {
            if (!key.equals(edit.key().toString())) {
                throw new IllegalStateException(
                        "an edit of row " + edit.key() + " is stored as one of " + key + "; restore a backup");
            }
        }
    }

    /** The numbers by which edits stand in their order. */
    List<Long> numbers(ReadTx tx, long change) {
        return tx.handle()
                .createQuery("SELECT id FROM chart_change_row WHERE change_id = :change ORDER BY id")
                .bind("change", change)
                .mapTo(Long.class)
                .list();
    }

    private static Optional<AdjustmentsEdit> findAdjustments(ReadTx tx, long change) {
        return tx.handle()
                .createQuery("SELECT wanted, based_on FROM chart_change_adjustments WHERE change_id = :change")
                .bind("change", change)
                .map((row, context) ->
                        new AdjustmentsEdit(EditTexts.adjustments(row.getString("wanted")), basedOn(row)))
                .findOne();
    }

    /** Puts an edit in the place of the one of the same key, or after all others. */
    void put(Tx tx, long change, RowEdit edit) {
        if (tx.handle()
                        .createUpdate("UPDATE chart_change_row SET kind = :kind, fields = :fields, based_on = :basedOn"
                                + " WHERE change_id = :change AND row_key = :key")
                        .bind("change", change)
                        .bind("key", edit.key().toString())
                        .bind("kind", edit.kind().slug())
                        .bind("fields", EditTexts.of(edit.row()))
                        .bind("basedOn", edit.basedOn())
                        .execute()
                == 0) {
            add(tx, change, edit);
        }
    }

    private static void add(Tx tx, long change, RowEdit edit) {
        tx.handle()
                .createUpdate("INSERT INTO chart_change_row (change_id, row_key, kind, fields, based_on)"
                        + " VALUES (:change, :key, :kind, :fields, :basedOn)")
                .bind("change", change)
                .bind("key", edit.key().toString())
                .bind("kind", edit.kind().slug())
                .bind("fields", EditTexts.of(edit.row()))
                .bind("basedOn", edit.basedOn())
                .execute();
    }

    void remove(Tx tx, long change, RowKey key) {
        tx.handle()
                .createUpdate("DELETE FROM chart_change_row WHERE change_id = :change AND row_key = :key")
                .bind("change", change)
                .bind("key", key.toString())
                .execute();
    }

    void put(Tx tx, long change, AdjustmentsEdit edit) {
        removeAdjustments(tx, change);
        tx.handle()
                .createUpdate("INSERT INTO chart_change_adjustments (change_id, wanted, based_on)"
                        + " VALUES (:change, :wanted, :basedOn)")
                .bind("change", change)
                .bind("wanted", EditTexts.of(edit.wanted()))
                .bind("basedOn", edit.basedOn())
                .execute();
    }

    void removeAdjustments(Tx tx, long change) {
        tx.handle()
                .createUpdate("DELETE FROM chart_change_adjustments WHERE change_id = :change")
                .bind("change", change)
                .execute();
    }

    /** Numbers of all changes that something is stored for. */
    List<Long> changes(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT change_id FROM chart_change_row"
                        + " UNION SELECT change_id FROM chart_change_adjustments ORDER BY change_id")
                .mapTo(Long.class)
                .list();
    }
}
