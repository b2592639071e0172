package wallchart.people;

import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.ReentrantLock;
import wallchart.store.StoreException;

/**
 * All room tokens that open something, held in memory: on the way of every request of a room page. One short look at the table
 * twice a second notices what was issued or revoked on another node; what was done here counts at once.
 *
 * <p>While the database is away, a token goes on being worth what it was last found to be, bounded in time and never beyond a
 * revocation that was seen here or asked for here. Waiting for a database that is away takes seconds, so after one failure nobody
 * asks it for a while.
 *
 * <p>Thread-safe. One thread looks, the others go on.
 */
final class TokensInUse {

    static final Duration BETWEEN_LOOKS = Duration.ofMillis(500);

    /** For so long after a failure the database is not asked. */
    static final Duration BETWEEN_TRIES = Duration.ofSeconds(5);

    /** A long weekend without anybody to mend the database. */
    static final Duration LONGEST = Duration.ofHours(72);

    /** Tokens are only ever added, and revoked once: these two numbers tell one state of the table from every other. */
    record State(long issued, long revoked) {}

    /** The table of tokens; both throw {@link StoreException}. */
    interface Table {
        State state();

        /** The tokens that are not revoked, by the hash of their secret. */
        Map<String, RoomToken> inUse();
    }

    /** What the table said. */
    private record Known(Map<String, RoomToken> byHash, State state, long generation, long confirmedAt) {}

    private final Ticker ticker;
    private final Table table;
    private final ReentrantLock looking = new ReentrantLock();
    private final AtomicLong generation = new AtomicLong(1);
    private final Set<Long> revokedHere = ConcurrentHashMap.newKeySet();
    private volatile Known known;
    private volatile long lookedAt;
    private volatile long looks; // written under the lock only
    private volatile Optional<StoreException> failure = Optional.empty();

    TokensInUse(Ticker ticker, Table table) {
        this.ticker = ticker;
        this.table = table;
        this.lookedAt = ticker.read();
        this.known = new Known(Map.of(), new State(0, 0), 0, lookedAt);
    }

    /**
     * The token of a secret with that hash; empty if none.
     *
     * @throws StoreException where the database is away and no good last answer is known
     */
    Optional<RoomToken> find(String hash) {
        lookIfDue();
        var last = known;
        var token = Optional.ofNullable(last.byHash().get(hash));
        failure.ifPresent(away -> {
            boolean good =
                    token.isPresent() && !revokedHere.contains(token.get().id());
            if (!good || ticker.read() - last.confirmedAt() >= LONGEST.toNanos()) {
                throw away;
            }
        });
        return token;
    }

    /** Something was changed here: the next question looks again. */
    void changed() {
        generation.incrementAndGet();
    }

    /** From now on this token opens nothing without the database. */
    void revoke(long tokenId) {
        revokedHere.add(tokenId); // numbers are never used again, so this needs no undoing
        changed();
    }

    private void lookIfDue() {
        long seen = looks;
        var pause = failure.isPresent() ? BETWEEN_TRIES : BETWEEN_LOOKS;
        boolean due = ticker.read() - lookedAt >= pause.toNanos();
        if (isChangedHere() && (failure.isEmpty() || due)) {
            looking.lock();
        } else if (!due || !looking.tryLock()) {
            return;
        }
        try {
            boolean doneByAnother = looks != seen && (failure.isPresent() || !isChangedHere());
            if (!doneByAnother) {
                look();
            }
        } finally {
            looking.unlock();
        }
    }

    private boolean isChangedHere() {
        return known.generation() != generation.get();
    }

    private void look() {
        long now = ticker.read();
        lookedAt = now;
        looks++;
        long before = generation.get();
        try {
            var state = table.state(); // first, so that tokens newer than it are read once more, never missed
            boolean same = state.equals(known.state()) && known.generation() == before;
            known = new Known(same ? known.byHash() : table.inUse(), state, before, now);
            failure = Optional.empty();
        } catch (StoreException failed) {
            if (failed.kind() != StoreException.Kind.UNAVAILABLE) {
                throw failed;
            }
            failure = Optional.of(failed);
        }
    }
}
