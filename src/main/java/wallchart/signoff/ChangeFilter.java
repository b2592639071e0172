package wallchart.signoff;

import java.util.Optional;

/**
 * Which changes somebody looks at, newest first.
 *
 * @param state where they stand, or anywhere
 * @param room id of the room, or all
 * @param before only those opened before the change of that number
 * @param limit at most so many, from 1
 */
public record ChangeFilter(Optional<ChangeState> state, Optional<String> room, Optional<Long> before, int limit) {

    /** The newest changes, whatever their state and room. */
    public static ChangeFilter newest(int limit) {
        return new ChangeFilter(Optional.empty(), Optional.empty(), Optional.empty(), limit);
    }
}
