package wallchart.web.view;

import com.fasterxml.jackson.annotation.JsonRawValue;
import java.time.Instant;
import java.util.List;
import wallchart.audit.Event;
import wallchart.audit.WholeEvent;

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
                Json.objectOrWords(event.details()),
                event.requestId().orElse(null),
                event.prev(),
                event.hash());
    }

    /**
     * One event in full.
     *
     * @param text what its hash is taken of; null where its details are no JSON
     * @param hashFits false where the event is not what was entered
     * @param before number of the event before it; null of the first
     * @param next number of the event after it; null of the newest
     */
    public record Whole(EventView event, String text, boolean hashFits, Long before, Long next) {
        public static Whole of(WholeEvent whole) {
            return new Whole(
                    EventView.of(whole.event()),
                    whole.text().orElse(null),
                    whole.fits(),
                    whole.before().orElse(null),
                    whole.next().orElse(null));
        }
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
