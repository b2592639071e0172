package wallchart.people;

import java.time.Instant;
import java.util.Optional;
import java.util.OptionalLong;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of sign-ins. */
final class SessionStore {

    /** Ids begin at 1. */
    private static final long NONE = 0;

    void start(Tx tx, long personId, String tokenHash, String csrfHash, Instant ends) {
        tx.handle()
                .createUpdate("INSERT INTO sign_in_session"
                        + " (person_id, token_hash, csrf_hash, started_at, last_seen_at, ends_at)"
                        + " VALUES (:personId, :tokenHash, :csrfHash, :at, :at, :ends)")
                .bind("personId", personId)
                .bind("tokenHash", tokenHash)
                .bind("csrfHash", csrfHash)
                .bind("at", tx.at())
                .bind("ends", ends)
                .execute();
    }

    /** A session nobody ended, of a person who may sign in; it may have run out. */
    Optional<Session> find(ReadTx tx, String tokenHash) {
        return tx.handle()
                .createQuery("SELECT sign_in_session.id AS session_id, csrf_hash, last_seen_at, ends_at,"
                        + " person.id AS person_id, name, printed_name, role, disabled_at, revision"
                        + " FROM sign_in_session JOIN person ON person.id = sign_in_session.person_id"
                        + " WHERE token_hash = :tokenHash AND ended_at IS NULL AND disabled_at IS NULL")
                .bind("tokenHash", tokenHash)
                .map((rows, context) -> new Session(
                        rows.getLong("session_id"),
                        PersonStore.person(rows, "person_id"),
                        rows.getString("csrf_hash"),
                        PersonStore.instant(rows, "last_seen_at").orElseThrow(),
                        PersonStore.instant(rows, "ends_at").orElseThrow()))
                .findOne();
    }

    void seen(Tx tx, long id) {
        tx.handle()
                .createUpdate("UPDATE sign_in_session SET last_seen_at = :at WHERE id = :id AND ended_at IS NULL")
                .bind("at", tx.at())
                .bind("id", id)
                .execute();
    }

    void end(Tx tx, String tokenHash) {
        tx.handle()
                .createUpdate("UPDATE sign_in_session SET ended_at = :at"
                        + " WHERE token_hash = :tokenHash AND ended_at IS NULL")
                .bind("at", tx.at())
                .bind("tokenHash", tokenHash)
                .execute();
    }

    /** @param kept the one session of theirs that goes on */
    void endAllOf(Tx tx, long personId, OptionalLong kept) {
        tx.handle()
                .createUpdate("UPDATE sign_in_session SET ended_at = :at"
                        + " WHERE person_id = :personId AND ended_at IS NULL AND id <> :kept")
                .bind("at", tx.at())
                .bind("personId", personId)
                .bind("kept", kept.orElse(NONE))
                .execute();
    }

    /** Removes what was over before that instant: ended, run out, or not used since {@code unusedSince}. */
    int purge(Tx tx, Instant over, Instant unusedSince) {
        return tx.handle()
                .createUpdate("DELETE FROM sign_in_session"
                        + " WHERE ended_at < :over OR ends_at < :over OR last_seen_at < :unusedSince")
                .bind("over", over)
                .bind("unusedSince", unusedSince)
                .execute();
    }
}
