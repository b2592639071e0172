package wallchart.planning;

import java.util.Map;
import java.util.Optional;

/**
 * What a plan is to start from, and what it is to be.
 *
 * @param baseVersion the version of the room's chart that it is made for, 0 where the room has none; absent: the newest
 * @param technique that is proven in the room
 * @param plan the bands
 */
public record PlanRequest(Optional<Integer> baseVersion, Technique technique, BandPlan plan) {

    /** A technique that is proven in the room. */
    public sealed interface Technique {}

    /** A row of the version, by its key. */
    public record Named(String row) implements Technique {}

    /** One that is written out, by the names of {@code RowFields}, without band and thickness method. */
    public record Written(Map<String, String> fields) implements Technique {
        public Written {
            fields = Map.copyOf(fields);
        }
    }
}
