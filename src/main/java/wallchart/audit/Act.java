package wallchart.audit;

import java.util.Map;
import java.util.Optional;

/**
 * A business act as the one who does it tells it; the ledger adds when, who, and its place in the chain.
 *
 * @param action what was done, a slug in the past tense such as {@code change-signed}
 * @param object what it was done to, such as {@code change/12} or {@code r1/version/3}
 * @param room the room it concerns; empty where it concerns none, such as an account
 * @param reason why, in the words of the one who acts; may be empty
 * @param details everything else, for a machine to read: texts, integers, truth values, lists and maps of these; a number with a
 *     fraction is written as a decimal text
 */
public record Act(String action, String object, Optional<String> room, String reason, Map<String, ?> details) {

    /** An act that concerns one room. */
    public static Act inRoom(String room, String action, String object, String reason, Map<String, ?> details) {
        return new Act(action, object, Optional.of(room), reason, details);
    }

    /** An act that concerns no room. */
    public static Act of(String action, String object, String reason, Map<String, ?> details) {
        return new Act(action, object, Optional.empty(), reason, details);
    }
}
