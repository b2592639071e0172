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
        return spans(known(tx), from, to);
    }

    private static List<Span> spans(Times known, long from, long to) {
        var spans = new ArrayList<Span>();
        int first = -1; // of stretches side by side
        for (int i = 0; i < known.count(); i++) {
            boolean wanted = known.latest()[i] >= from && known.earliest()[i] <= to;
            if (wanted && first < 0) {
                first = i;
            } else if (!wanted && first >= 0) {
                spans.add(new Span((long) first * LENGTH, (long) i * LENGTH));
                first = -1;
            }
        }
        spans.add(new Span((first < 0 ? known.count() : (long) first) * LENGTH, Long.MAX_VALUE));
        return spans;
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
