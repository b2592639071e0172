package wallchart.audit;

import static java.util.Optional.empty;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** Medians of one page of the ledger, at its start, middle and end, in a short and in a long ledger. */
final class PageCosts {

    private static final int LIMIT = 100;
    private static final int WARM_UP = 60;
    private static final int TIMES = 201;
    private static final long MOST_NANOS = 2_000_000_000;
    private static final double GOAL = 2;

    private final AuditTrail few;
    private final int fewEvents;
    private final AuditTrail many;
    private final int manyEvents;

    PageCosts(AuditTrail few, int fewEvents, AuditTrail many, int manyEvents) {
        this.few = few;
        this.fewEvents = fewEvents;
        this.many = many;
        this.manyEvents = manyEvents;
    }

    void measure() {
        long begin = System.nanoTime();
        many.page(period(manyEvents, 0, 1, null), 0, LIMIT);
        System.out.printf(
                "the first question about a period, in %d events: %.1f s%n",
                manyEvents, (System.nanoTime() - begin) / 1e9);
        System.out.printf(
                "page of %d events, median in us; ratio of the dearest of start, middle, end in %d to the start in %d (goal: at most %.0f)%n",
                LIMIT, manyEvents, fewEvents, GOAL);
        for (var entry : filters(fewEvents).entrySet()) {
            var long1 = filters(manyEvents).get(entry.getKey());
            double base = start(few, entry.getValue());
            double[] costs = at(many, long1, manyEvents);
            System.out.printf(
                    "  %-36s %7.0f | %7.0f %7.0f %7.0f | x %.2f%n",
                    entry.getKey(),
                    base,
                    costs[0],
                    costs[1],
                    costs[2],
                    Arrays.stream(costs).max().orElseThrow() / base);
        }
    }

    private double start(AuditTrail trail, EventFilter filter) {
        return median(trail, filter, 0);
    }

    private double[] at(AuditTrail trail, EventFilter filter, int events) {
        return new double[] {
            median(trail, filter, 0), median(trail, filter, events / 2), median(trail, filter, events - 2 * LIMIT)
        };
    }

    private static double median(AuditTrail trail, EventFilter filter, long after) {
        var nanos = new ArrayList<Long>();
        long end = System.nanoTime() + MOST_NANOS;
        for (int i = -WARM_UP; nanos.isEmpty() || i < TIMES && System.nanoTime() < end; i++) {
            long begin = System.nanoTime();
            trail.page(filter, after, LIMIT);
            if (i >= 0 || System.nanoTime() > end) {
                nanos.add(System.nanoTime() - begin);
            }
        }
        return nanos.stream().sorted().toList().get(nanos.size() / 2) / 1000.0;
    }

    private static Map<String, EventFilter> filters(int events) {
        var filters = new LinkedHashMap<String, EventFilter>();
        filters.put("all", EventFilter.ALL);
        filters.put("room, one in 5", of(ManyEvents.BUSY_ROOM, null, null));
        filters.put("room, one in 250", of("room-7", null, null));
        filters.put("room, one in 997", of(ManyEvents.RARE_ROOM, null, null));
        filters.put("room, none", of("none", null, null));
        filters.put("actor, one in 3", of(null, ManyEvents.BUSY_ACTOR, null));
        filters.put("actor, one in 997", of(null, ManyEvents.RARE_ACTOR, null));
        filters.put("action, two in 5", of(null, null, ManyEvents.FREQUENT_ACTION));
        filters.put("action, one in 997", of(null, null, ManyEvents.RARE_ACTION));
        filters.put("period, all of it", period(events, 0, 1, null));
        filters.put("period, the last tenth", period(events, 0.9, 1, null));
        filters.put("period, a hundredth in the middle", period(events, 0.5, 0.51, null));
        filters.put("period, before the first", period(events, -0.2, -0.1, null));
        filters.put("period, the last tenth, room 1 in 5", period(events, 0.9, 1, ManyEvents.BUSY_ROOM));
        filters.put("room 1 in 5 and actor 1 in 3", of(ManyEvents.BUSY_ROOM, ManyEvents.BUSY_ACTOR, null));
        filters.put("room 1 in 5 and actor 1 in 997", of(ManyEvents.BUSY_ROOM, ManyEvents.RARE_ACTOR, null));
        filters.put("room 1 in 5 and action 1 in 997", of(ManyEvents.BUSY_ROOM, null, ManyEvents.RARE_ACTION));
        filters.put("actor 1 in 3 and action 2 in 5", of(null, ManyEvents.BUSY_ACTOR, ManyEvents.FREQUENT_ACTION));
        filters.put("all three, frequent", of(ManyEvents.BUSY_ROOM, ManyEvents.BUSY_ACTOR, ManyEvents.FREQUENT_ACTION));
        return filters;
    }

    private static EventFilter of(String room, String actor, String action) {
        return new EventFilter(
                Optional.ofNullable(room), Optional.ofNullable(actor), Optional.ofNullable(action), empty(), empty());
    }

    private static EventFilter period(int events, double from, double to, String room) {
        double seconds = (double) events * ManyEvents.SECONDS_APART;
        return new EventFilter(
                Optional.ofNullable(room),
                empty(),
                empty(),
                Optional.of(ManyEvents.FIRST.plusSeconds((long) (seconds * from))),
                Optional.of(ManyEvents.FIRST.plusSeconds((long) (seconds * to))));
    }
}
