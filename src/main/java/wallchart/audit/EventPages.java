package wallchart.audit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallchart.store.ReadTx;

/**
 * Pages of the ledger that cost about the same wherever they begin, however long the ledger is. Safe for use by many threads.
 */
final class EventPages {

    private final EventStore events = new EventStore();
    private final EventTimes times = new EventTimes();

    List<Event> page(ReadTx tx, EventFilter filter, long after, int limit) {
        var found = new ArrayList<Event>();
        for (var span : times.spans(tx, filter)) {
            long next = Math.max(after, span.after());
            while (found.size() < limit && next < span.upTo()) {
                var page = events.page(tx, equal(filter), next, span.upTo(), limit);
                page.stream()
                        .filter(filter::isInPeriod)
                        .limit(limit - found.size())
                        .forEach(found::add);
                next = page.size() < limit ? span.upTo() : page.get(limit - 1).seq();
            }
        }
        return found;
    }

    /** What stands before a number, the newest first. */
    List<Event> pageBack(ReadTx tx, EventFilter filter, long before, int limit) {
        var found = new ArrayList<Event>();
        var spans = new ArrayList<>(times.spans(tx, filter));
        Collections.reverse(spans);
        for (var span : spans) {
            long upTo = Math.min(before - 1, span.upTo());
            while (found.size() < limit && upTo > span.after()) {
                var page = events.pageBack(tx, equal(filter), span.after(), upTo, limit);
                page.stream()
                        .filter(filter::isInPeriod)
                        .limit(limit - found.size())
                        .forEach(found::add);
                upTo = page.size() < limit ? span.after() : page.get(limit - 1).seq() - 1;
            }
        }
        return found;
    }

    private static Map<String, String> equal(EventFilter filter) {
        var equal = new LinkedHashMap<String, String>();
        filter.room().ifPresent(room -> equal.put("room", room));
        filter.actor().ifPresent(actor -> equal.put("actor", actor));
        filter.action().ifPresent(action -> equal.put("action", action));
        return equal;
    }
}
