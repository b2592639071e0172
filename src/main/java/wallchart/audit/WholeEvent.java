package wallchart.audit;

import java.util.Optional;
import wallchart.store.Sha256;

/**
 * One event as an auditor looks at it.
 *
 * @param text canonical JSON of all members but the hash; absent where its details are no JSON, which nothing ever wrote
 * @param before number of the event before it, where there is one
 * @param next number of the event after it, where there is one
 */
public record WholeEvent(Event event, Optional<String> text, Optional<Long> before, Optional<Long> next) {

    /** Whether the hash is that of the text: of an event that was changed it is not. */
    public boolean fits() {
        return text.map(Sha256::hex).filter(event.hash()::equals).isPresent();
    }
}
