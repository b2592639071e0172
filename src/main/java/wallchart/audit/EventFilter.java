package wallchart.audit;

import java.time.Instant;
import java.util.Optional;

/**
 * Which events somebody wants to see; what is absent does not matter.
 *
 * @param room the room they concern
 * @param actor who did it, by the name they sign in with
 * @param action the slug of what was done
 * @param from not before this instant
 * @param to before this instant
 */
public record EventFilter(
        Optional<String> room,
        Optional<String> actor,
        Optional<String> action,
        Optional<Instant> from,
        Optional<Instant> to) {

    /** Every event. */
    public static final EventFilter ALL =
            new EventFilter(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Whether an event happened in the period. */
    boolean isInPeriod(Event event) {
        return from.filter(event.at()::isBefore).isEmpty()
                && to.filter(end -> !event.at().isBefore(end)).isEmpty();
    }
}
