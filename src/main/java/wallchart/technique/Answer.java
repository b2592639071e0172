package wallchart.technique;

import java.util.function.Function;

/** What a room is told: a technique, or a reason why there is none. */
public sealed interface Answer {

    /** There is a technique. */
    record Found(Technique technique) implements Answer {}

    /** There is none, and this is why. */
    record Refused(Refusal refusal) implements Answer {}

    /** Handles both cases; a third would not compile. */
    default <T> T either(Function<Technique, T> found, Function<Refusal, T> refused) {
        return this instanceof Found answer
                ? found.apply(answer.technique())
                : refused.apply(((Refused) this).refusal());
    }
}
