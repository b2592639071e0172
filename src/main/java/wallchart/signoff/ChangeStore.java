package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of changes. */
final class ChangeStore {

    /** The unique constraint by which a version comes of one change only. */
    static final String VERSION_TAKEN = "chart_change_version_once";

    private static final String SELECT = "SELECT id, room, title, reason, base_version, kind, reverts_to, author,"
            + " author_name, opened_at, revision, state, submitted_at, concurred_by, concurred_name, concurred_at,"
            + " concurred_impact, concurred_on, decided_by, decided_name, decided_at, decided_reason, signed_version,"
            + " second_review_due, reviewed_by, reviewed_name, reviewed_at, review_findings FROM chart_change";

    /** A new change, drafted from now on; its number is in what is returned. */
    Change add(Tx tx, ChangeHead unnumbered) {
        long id = tx.handle()
                .createUpdate("INSERT INTO chart_change (room, title, reason, base_version, kind, reverts_to, author,"
                        + " author_name, opened_at, revision, state)"
                        + " VALUES (:room, :title, :reason, :base_version, :kind, :reverts_to, :author,"
                        + " :author_name, :opened_at, :revision, :state)")
                .bindMap(ChangeColumns.values(new Change.Drafting(unnumbered)))
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(tx, id).orElseThrow();
    }

    Optional<Change> find(ReadTx tx, long id) {
        return tx.handle()
                .createQuery(SELECT + " WHERE id = :id")
                .bind("id", id)
                .map(ChangeColumns::read)
                .findOne();
    }

    /** Holds the row until the commit, so that of two rivals the second sees what the first has done. */
    Optional<Change> findToChange(Tx tx, long id) {
        return tx.handle()
                .createQuery(SELECT + " WHERE id = :id FOR UPDATE")
                .bind("id", id)
                .map(ChangeColumns::read)
                .findOne();
    }

    /**
     * Writes the next state of a change over the one before it.
     *
     * @return false where the stored change is not the one before it any more; nothing is written then
     */
    boolean replace(Tx tx, Change next) {
        return tx.handle()
                        .createUpdate("UPDATE chart_change SET title = :title, reason = :reason,"
                                + " base_version = :base_version, revision = :revision,"
                                + " state = :state, submitted_at = :submitted_at, concurred_by = :concurred_by,"
                                + " concurred_name = :concurred_name, concurred_at = :concurred_at,"
                                + " concurred_impact = :concurred_impact, concurred_on = :concurred_on,"
                                + " decided_by = :decided_by, decided_name = :decided_name, decided_at = :decided_at,"
                                + " decided_reason = :decided_reason, signed_version = :signed_version,"
                                + " second_review_due = :second_review_due, reviewed_by = :reviewed_by,"
                                + " reviewed_name = :reviewed_name, reviewed_at = :reviewed_at,"
                                + " review_findings = :review_findings"
                                + " WHERE id = :id AND revision = :expected")
                        .bindMap(ChangeColumns.values(next))
                        .bind("id", next.id())
                        .bind("expected", next.head().revision() - 1)
                        .execute()
                == 1;
    }

    List<Change> list(ReadTx tx, ChangeFilter filter) {
        var conditions = new ArrayList<>(List.of("id < :before"));
        filter.state().ifPresent(state -> conditions.add("state = :state"));
        filter.room().ifPresent(room -> conditions.add("room = :room"));
        var query = tx.handle()
                .createQuery(SELECT + " WHERE " + String.join(" AND ", conditions)
                        + " ORDER BY id DESC FETCH FIRST :limit ROWS ONLY")
                .bind("before", filter.before().orElse(Long.MAX_VALUE))
                .bind("limit", filter.limit());
        filter.state().ifPresent(state -> query.bind("state", state.slug()));
        filter.room().ifPresent(room -> query.bind("room", room));
        return query.map(ChangeColumns::read).list();
    }

    /**
     * Every change, by ascending number, for the check of the ledger.
     *
     * @throws IllegalStateException where one says what it cannot say in its state
     */
    List<Change> all(ReadTx tx) {
        return tx.handle()
                .createQuery(SELECT + " ORDER BY id")
                .map(ChangeColumns::readWhole)
                .list();
    }

    /** Signed changes with a second review, the earliest due first. */
    List<Change> secondReviews(ReadTx tx, boolean openOnly) {
        return tx.handle()
                .createQuery(SELECT + " WHERE second_review_due IS NOT NULL"
                        + (openOnly ? " AND reviewed_at IS NULL" : "") + " ORDER BY second_review_due, id")
                .map(ChangeColumns::read)
                .list();
    }
}
