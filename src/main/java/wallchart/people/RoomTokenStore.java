package wallchart.people;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jdbi.v3.core.mapper.RowMapper;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of the workstations' tokens. */
final class RoomTokenStore {

    private static final String SELECT = "SELECT id, room, label, issued_at, issued_by, revoked_at FROM room_token ";

    private static final RowMapper<RoomToken> TOKEN = (rows, context) -> new RoomToken(
            rows.getLong("id"),
            rows.getString("room").intern(), // the same few ids stand in every look-up
            rows.getString("label"),
            PersonStore.instant(rows, "issued_at").orElseThrow(),
            rows.getString("issued_by"),
            PersonStore.instant(rows, "revoked_at"));

    RoomToken add(Tx tx, String room, String label, String tokenHash) {
        long id = tx.handle()
                .createUpdate("INSERT INTO room_token (room, label, token_hash, issued_at, issued_by)"
                        + " VALUES (:room, :label, :tokenHash, :at, :by)")
                .bind("room", room)
                .bind("label", label)
                .bind("tokenHash", tokenHash)
                .bind("at", tx.at())
                .bind("by", tx.by().name())
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(tx, id).orElseThrow();
    }

    Optional<RoomToken> find(ReadTx tx, long id) {
        return tx.handle()
                .createQuery(SELECT + "WHERE id = :id")
                .bind("id", id)
                .map(TOKEN)
                .findOne();
    }

    /** By the hash of the secret. */
    Map<String, RoomToken> inUse(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT token_hash, id, room, label, issued_at, issued_by, revoked_at FROM room_token"
                        + " WHERE revoked_at IS NULL")
                .map((rows, context) -> Map.entry(rows.getString("token_hash"), TOKEN.map(rows, context)))
                .collect(Collectors.toUnmodifiableMap(Map.Entry::getKey, Map.Entry::getValue));
    }

    TokensInUse.State state(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT COUNT(*) AS issued, COUNT(revoked_at) AS revoked FROM room_token")
                .map((rows, context) -> new TokensInUse.State(rows.getLong("issued"), rows.getLong("revoked")))
                .one();
    }

    List<RoomToken> list(ReadTx tx) {
        return tx.handle().createQuery(SELECT + "ORDER BY room, id").map(TOKEN).list();
    }

    /** Every token, column by column. */
    List<StoredRecord> records(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT id, room, label, token_hash, issued_at, issued_by, revoked_at, revoked_by"
                        + " FROM room_token ORDER BY id")
                .map((rows, context) -> StoredRecordColumns.read(
                        rows,
                        AccountEvents.tokenObject(rows.getLong("id")),
                        "token_hash",
                        "room",
                        "label",
                        "issued_at",
                        "issued_by",
                        "revoked_at",
                        "revoked_by"))
                .list();
    }

    /** Keeps who and when of the first time, and returns false, where it is revoked already. */
    boolean revoke(Tx tx, long id) {
        return tx.handle()
                        .createUpdate("UPDATE room_token SET revoked_at = :at, revoked_by = :by"
                                + " WHERE id = :id AND revoked_at IS NULL")
                        .bind("at", tx.at())
                        .bind("by", tx.by().name())
                        .bind("id", id)
                        .execute()
                == 1;
    }
}
