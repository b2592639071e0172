package wallchart.audit;

import java.util.Arrays;
import java.util.Optional;

/** In which order somebody reads the ledger: as it was written, or what happened last first. */
public enum EventOrder {
    OLDEST("oldest"),
    NEWEST("newest");

    private final String slug;

    EventOrder(String slug) {
        this.slug = slug;
    }

    /** The one that is asked for by that word. */
    public static Optional<EventOrder> find(String slug) {
        return Arrays.stream(values()).filter(order -> order.slug.equals(slug)).findFirst();
    }
}
