package wallchart.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;

/**
 * How often a password was tried for a name from an address, within a sliding window; in memory, bounded, per node. An
 * attempt counts from its beginning, so that many at once gain nothing; the right password forgives them all.
 */
final class WrongPasswords {

    private static final int NAMES_AND_ADDRESSES = 50_000;

    private final int allowed;
    private final long windowNanos;
    private final Ticker ticker;
    private final Cache<Who, Deque<Long>> attempts;

    WrongPasswords(SignInSettings settings, Ticker ticker) {
        this.allowed = settings.wrongPasswords();
        this.windowNanos = settings.window().toNanos();
        this.ticker = ticker;
        this.attempts = Caffeine.newBuilder()
                .maximumSize(NAMES_AND_ADDRESSES)
                .expireAfterWrite(settings.window())
                .ticker(ticker)
                .build();
    }

    /** Counts an attempt and returns zero, or returns how long to wait, in whole seconds, and counts nothing. */
    Duration waitBefore(String name, String address) {
        var now = ticker.read();
        var wait = new long[1];
        attempts.asMap().compute(new Who(name, address), (who, before) -> {
            var recent = before == null ? new ArrayDeque<Long>() : new ArrayDeque<>(before);
            recent.removeIf(attempt -> now - attempt >= windowNanos);
            if (recent.size() < allowed) {
                recent.addLast(now);
            } else {
                wait[0] = recent.getFirst() + windowNanos - now;
            }
            return recent;
        });
        return wholeSeconds(wait[0]);
    }

    void forgive(String name, String address) {
        attempts.invalidate(new Who(name, address));
    }

    private static Duration wholeSeconds(long nanos) {
        var second = Duration.ofSeconds(1).toNanos();
        return Duration.ofSeconds((nanos + second - 1) / second);
    }

    private record Who(String name, String address) {}
}
