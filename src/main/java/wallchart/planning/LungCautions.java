package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.Row;
import wallchart.chart.ThicknessMethod;
import wallchart.technique.MostlyLung;

/**
 * What to know of a row that is brought from another room and is mostly lung. Its thickness stays, so water comes in only by how much
 * it hardens the beam and scatters in both rooms: told by the same factors behind half as much water, which is about what a chest is.
 */
final class LungCautions {

    private static final double HALF = 0.5;

    private LungCautions() {}

    /** None where the row is of something else. */
    static List<String> of(Row row, TransferFactors exchange) {
        if (!MostlyLung.is(row.key().examination())) {
            return List.of();
        }
        var cautions = new ArrayList<String>();
        cautions.add(MostlyLung.SENTENCE
                + ". Tube voltage and thickness stay, only the room is exchanged, but behind water as thick as the patient"
                + halved(row.referenceThickness().inCentimetres(), exchange)
                + ": watch its first exposure indices. How it behaves towards the ends of its band is not predicted");
        if (row.setting().thicknessMethod() instanceof ThicknessMethod.Attenuation) {
            cautions.add(
                    "its method, attenuation, changes the mAs along the band as for water, which is too much for lung:"
                            + " choose another");
        }
        return cautions;
    }

    private static String halved(double thickness, TransferFactors exchange) {
        double half = thickness * HALF;
        if (exchange.findObjection(half).isPresent()) {
            return "";
        }
        double whole = Factor.product(exchange.all(thickness));
        return ": all factors together are " + Figures.number(whole) + ", behind half as much water "
                + Figures.number(Factor.product(exchange.all(half)));
    }
}
