package wallchart.technique;

import java.util.List;
import java.util.Optional;

/**
 * What a console makes of a row at one thickness: a setting, or why there is none.
 *
 * @param set what a person would set; absent where the console cannot do it
 * @param reasons why not; empty where it can
 */
public record ConsoleReach(Optional<ConsoleSetting> set, List<String> reasons) {

    public ConsoleReach {
        reasons = List.copyOf(reasons);
    }

    static ConsoleReach of(ConsoleAttempt attempt) {
        return attempt instanceof ConsoleAttempt.Achieved achieved
                ? new ConsoleReach(Optional.of(achieved.set()), List.of())
                : new ConsoleReach(Optional.empty(), ((ConsoleAttempt.Impossible) attempt).reasons());
    }
}
