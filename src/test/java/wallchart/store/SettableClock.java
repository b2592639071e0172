package wallchart.store;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands still until a test moves it; safe to read from other threads. */
public final class SettableClock extends Clock {

    private volatile Instant now;

    public SettableClock(Instant now) {
        this.now = now;
    }

    /** A clock standing at that instant, such as {@code 2026-03-02T08:00:00Z}. */
    public static SettableClock at(String instant) {
        return new SettableClock(Instant.parse(instant));
    }

    /** Moves it to that instant. */
    public void set(String instant) {
        now = Instant.parse(instant);
    }

    public void advance(Duration by) {
        now = now.plus(by);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
