package wallchart.audit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import wallchart.store.ReadTx;

/**
 * Where in the ledger the events of a period stand: earliest and latest instant of each stretch of {@value #LENGTH} events. They
 * follow each other in time but for clocks that were set back, so that neither an index of numbers nor one of instants leads to a
 * page by itself. Whole stretches never change: they are read once, at the first question about a period, and remembered. Safe
 * for use by many threads.
 */
final class EventTimes {

    static final int LENGTH = 100;

    private final EventStore events = new EventStore();
    private Times whole = new Times(0, new long[0], new long[0]);

    /**
     * Events with numbers after one and up to another.
     *
     * @param upTo {@link Long#MAX_VALUE} for what comes, too
     */
    record Span(long after, long upTo) {}

    /**
     * By the number of the stretch, in microseconds since 1970; a stretch without any event has its latest before its earliest.
     *
     * @param count how many stretches are known; the arrays may have room for more
     */
    private record Times(int count, long[] earliest, long[] latest) {}

    /** Where to look for events of a filter's period, by ascending number; beside them other events stand there too. */
    List<Span> spans(ReadTx tx, EventFilter filter) {
        if (filter.from().isEmpty() && filter.to().isEmpty()) {
            return List.of(new Span(0, Long.MAX_VALUE));
        }
        long from = filter.from().map(EventTimes::micros).orElse(Long.MIN_VALUE);
        long to = filter.to().map(EventTimes::micros).orElse(Long.MAX_VALUE);
        var known = known(tx);
        var spans = new ArrayList<Span>();
        for (int i = 0; i < known.count(); i++) {
            if (known.latest()[i] >= from && known.earliest()[i] <= to) {
                join(spans, new Span((long) i * LENGTH, (i + 1L) * LENGTH));
            }
        }
        join(spans, new Span((long) known.count() * LENGTH, Long.MAX_VALUE));
        return spans;
    }

    private static void join(List<Span> spans, Span next) {
        var last = spans.isEmpty() ? null : spans.get(spans.size() - 1);
        if (last != null && last.upTo() == next.after()) {
            spans.set(spans.size() - 1, new Span(last.after(), next.upTo()));
        } else {
            spans.add(next);
        }
    }

    /** All stretches but the last, which may still grow. */
    private synchronized Times known(ReadTx tx) {
        int count = (int) ((events.newest(tx) - 1) / LENGTH);
        if (count > whole.count()) {
            whole = grown(tx, count);
        }
        return whole;
    }

    private Times grown(ReadTx tx, int count) {
        int before = whole.count();
        var earliest = Arrays.copyOf(whole.earliest(), count);
        var latest = Arrays.copyOf(whole.latest(), count);
        Arrays.fill(earliest, before, count, Long.MAX_VALUE);
        Arrays.fill(latest, before, count, Long.MIN_VALUE);
        for (var stretch : events.stretches(tx, LENGTH, before)) {
            if (stretch.number() < count) {
                earliest[(int) stretch.number()] = micros(stretch.earliest());
                latest[(int) stretch.number()] = micros(stretch.latest());
            }
        }
        return new Times(count, earliest, latest);
    }

    private static long micros(Instant at) {
        return ChronoUnit.MICROS.between(Instant.EPOCH, at);
    }
}
