package wallchart.audit;

import java.util.Optional;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The one row that whoever appends holds until the commit, and that says why nothing may be appended. */
final class TurnStore {

    /**
     * Waits until nobody else is appending; whoever holds the turn keeps it until their commit.
     *
     * @return why nothing may be appended; empty where it may
     */
    Optional<String> take(Tx tx) {
        return tx.handle()
                .createQuery("SELECT stopped FROM audit_turn WHERE id = 1 FOR UPDATE")
                .map((rows, context) -> Optional.ofNullable(rows.getString("stopped")))
                .one();
    }

    /** The same without waiting for the turn. */
    Optional<String> findStop(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT stopped FROM audit_turn WHERE id = 1")
                .map((rows, context) -> Optional.ofNullable(rows.getString("stopped")))
                .one();
    }

    void stop(Tx tx, String reason) {
        tx.handle()
                .createUpdate("UPDATE audit_turn SET stopped = :reason WHERE id = 1")
                .bind("reason", reason)
                .execute();
    }

    void resume(Tx tx) {
        tx.handle()
                .createUpdate("UPDATE audit_turn SET stopped = NULL WHERE id = 1")
                .execute();
    }
}
