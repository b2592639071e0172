package wallchart.audit;

import java.nio.charset.CharacterCodingException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.audit.Verification.Doubtful;
import wallchart.store.CanonicalJson;

/** One walk along the chain of events: what the next must be, given those before. */
final class Chain {

    /** Clocks of several nodes differ, and an act waits for its turn: by no more than this. */
    private static final Duration ALLOWED_BACK = Duration.ofMinutes(5);

    private static final int MOST_NOTES = 100;

    private final ChainText text = new ChainText();
    private final List<String> notes = new ArrayList<>();
    private Optional<Event> last;

    /** @param last the event that the walk goes on from; empty at the beginning */
    Chain(Optional<Event> last) {
        this.last = last;
    }

    long seq() {
        return last.map(Event::seq).orElse(0L);
    }

    String head() {
        return last.map(Event::hash).orElse(Event.NONE_BEFORE);
    }

    List<String> notes() {
        return notes;
    }

    /** Takes the next event; says what is wrong with it. */
    Optional<Doubtful> follow(Event event) {
        var wrong = wrong(event);
        if (wrong.isEmpty()) {
            last.filter(before -> event.at().plus(ALLOWED_BACK).isBefore(before.at()))
                    .ifPresent(before -> note(event, before));
            last = Optional.of(event);
        }
        return wrong.map(what -> new Doubtful(Math.min(event.seq(), seq() + 1), what));
    }

    private void note(Event event, Event before) {
        if (notes.size() < MOST_NOTES) {
            notes.add("event " + event.seq() + " is dated " + event.at() + ", before the event it follows ("
                    + before.at() + "): a clock was set back, or it was dated back");
        }
    }

    private Optional<String> wrong(Event event) {
        if (event.seq() != seq() + 1) {
            return Optional.of("event " + (seq() + 1) + " is missing: event " + event.seq() + " stands in its place");
        }
        if (!event.prev().equals(head())) {
            return Optional.of(
                    "event " + event.seq() + " does not follow the event before it: its prev is another hash");
        }
        if (!hasItsHash(event)) {
            return Optional.of("event " + event.seq() + " is not what was written: its hash does not fit its content");
        }
        return isCanonical(event.details())
                ? Optional.empty()
                : Optional.of("event " + event.seq() + " has details that are not canonical JSON of an object");
    }

    private boolean hasItsHash(Event event) {
        try {
            return text.hash(event).equals(event.hash());
        } catch (CharacterCodingException halfACharacter) {
            return false;
        }
    }

    /** Otherwise two readers could take one event for two different ones. */
    private static boolean isCanonical(String details) {
        try {
            return details.startsWith("{") && CanonicalJson.of(details).text().equals(details);
        } catch (RuntimeException notJson) { // whatever the library throws at what is no JSON
            return false;
        }
    }
}
