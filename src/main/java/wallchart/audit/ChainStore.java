package wallchart.audit;

import java.util.List;
import java.util.Optional;
import wallchart.store.ReadTx;

/** The ledger's rows as its check reads them: in pages, so that a ledger of any length takes the same memory. */
final class ChainStore {

    private static final int PAGE = 500;
    private static final String SELECT =
            "SELECT seq, at, actor, role, action, object, room, reason, details, request_id, prev, hash FROM audit_event";

    /** The next events after that number, by ascending number. */
    List<Event> page(ReadTx tx, long after) {
        return tx.handle()
                .createQuery(SELECT + " WHERE seq > :after ORDER BY seq FETCH FIRST " + PAGE + " ROWS ONLY")
                .bind("after", after)
                .map(EventStore::event)
                .list();
    }

    Optional<Event> find(ReadTx tx, long seq) {
        return tx.handle()
                .createQuery(SELECT + " WHERE seq = :seq ORDER BY hash FETCH FIRST 1 ROW ONLY")
                .bind("seq", seq)
                .map(EventStore::event)
                .findOne();
    }

    /** All rows there are, also those that no page would show. */
    long count(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT COUNT(*) FROM audit_event")
                .mapTo(Long.class)
                .one();
    }

    /** Number of the newest event; 0 of an empty ledger. */
    long newest(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT COALESCE(MAX(seq), 0) FROM audit_event")
                .mapTo(Long.class)
                .one();
    }
}
