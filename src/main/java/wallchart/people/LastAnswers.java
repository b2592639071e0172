package wallchart.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import wallchart.store.StoreException;

/**
 * What the database last said of each room token, for the time it does not answer: the room page then goes on. Bounded in number
 * and in time; never beyond a revocation that was seen here or asked for here.
 *
 * <p>Waiting for a database that is away takes seconds, so after one failure nobody whose token is known asks for a while.
 */
final class LastAnswers {

    /** A long weekend without anybody to mend the database; a token confirmed longer ago than this needs it again. */
    static final Duration LONGEST = Duration.ofHours(72);

    /** For so long after a failure the database is not asked about a token whose last answer is known. */
    static final Duration BETWEEN_TRIES = Duration.ofSeconds(5);

    private static final int TOKENS = 10_000;

    private final Ticker ticker;
    private final Cache<String, RoomToken> good;
    private final Set<Long> revoked = ConcurrentHashMap.newKeySet();
    private volatile Optional<Long> failedAt = Optional.empty();

    LastAnswers(Ticker ticker) {
        this.ticker = ticker;
        this.good = Caffeine.newBuilder()
                .maximumSize(TOKENS)
                .expireAfterWrite(LONGEST)
                .ticker(ticker)
                .build();
    }

    /**
     * The database's answer, or the last one while it does not answer.
     *
     * @throws StoreException as it came, where there is no good last answer
     */
    Optional<RoomToken> orLast(String tokenHash, Supplier<Optional<RoomToken>> database) {
        var last = find(tokenHash);
        if (last.isPresent() && failedLately()) {
            return last;
        }
        try {
            var answer = database.get();
            failedAt = Optional.empty();
            keep(tokenHash, answer);
            return answer;
        } catch (StoreException failed) {
            if (failed.kind() != StoreException.Kind.UNAVAILABLE) {
                throw failed;
            }
            failedAt = Optional.of(ticker.read());
            return Optional.of(find(tokenHash).orElseThrow(() -> failed));
        }
    }

    /** From now on this token opens nothing without the database; an answer still on its way changes nothing about that. */
    void revoke(long tokenId) {
        revoked.add(tokenId); // numbers are never used again, so this needs no undoing
    }

    private Optional<RoomToken> find(String tokenHash) {
        return Optional.ofNullable(good.getIfPresent(tokenHash)).filter(token -> !revoked.contains(token.id()));
    }

    private boolean failedLately() {
        return failedAt.filter(at -> ticker.read() - at < BETWEEN_TRIES.toNanos())
                .isPresent();
    }

    private void keep(String tokenHash, Optional<RoomToken> answer) {
        answer.ifPresentOrElse(token -> good.put(tokenHash, token), () -> good.invalidate(tokenHash));
    }
}
