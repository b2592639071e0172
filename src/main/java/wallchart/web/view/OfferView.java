package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import wallchart.technique.Offer;

/** A question that would be answered, with the words it is offered in; everything else of it stays as it was asked. */
public record OfferView(String text, BigDecimal sidCm, String grid) {

    /** Those of the offers that a question can ask for. */
    public static List<OfferView> questions(List<Offer> offers) {
        return offers.stream()
                .flatMap(offer -> offer.question().stream()
                        .map(asked -> new OfferView(offer.text(), asked.sid().centimetres(), asked.grid())))
                .toList();
    }
}
