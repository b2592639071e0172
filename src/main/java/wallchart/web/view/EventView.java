package wallchart.web.view;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.time.Instant;
import java.util.List;
import wallchart.audit.Event;

/** One entry of the ledger; {@code room} and {@code requestId} are null where it has none. */
public record EventView(
        long seq,
        Instant at,
        String actor,
        String role,
        String action,
        String object,
        String room,
        String reason,
        @JsonRawValue String details,
        String requestId,
        String prev,
        String hash) {

    public static EventView of(Event event) {
        return new EventView(
                event.seq(),
                event.at(),
                event.actor(),
                event.role(),
                event.action(),
                event.object(),
                event.room().orElse(null),
                event.reason(),
                event.details(),
                event.requestId().orElse(null),
                event.prev(),
                event.hash());
    }

    /**
     * A page of the ledger.
     *
     * @param next what to send as {@code after} for the next page; null where this page was not full
     */
    public record Page(List<EventView> events, Long next) {
        public static Page of(List<Event> events, int limit) {
            return new Page(
                    events.stream().map(EventView::of).toList(),
                    events.size() < limit ? null : events.get(events.size() - 1).seq());
        }
    }
}
