package wallchart.technique;

import java.util.Optional;
import wallchart.quantity.Distance;

/**
 * Something that would do where a technique cannot be set; an offer to the operator's judgement, never an order.
 *
 * @param text for people
 * @param question what to ask for it; absent where no question can, as it takes another focal spot, tube voltage or room
 */
public record Offer(String text, Optional<Question> question) {

    /** Distance and grid of a question that would be answered; the rest stays as it was asked. */
    public record Question(Distance sid, String grid) {}

    /** What nobody can ask for with a question. */
    static Offer words(String text) {
        return new Offer(text, Optional.empty());
    }

    /** The same question at another distance or with another grid. */
    static Offer of(String text, Situation moved) {
        return new Offer(text, Optional.of(new Question(moved.sid(), moved.gridName())));
    }
}
