package wallchart.planning;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallchart.chart.Band;
import wallchart.planning.ConsoleFit.Fit;
import wallchart.planning.ConsoleFit.OutOfReach;
import wallchart.planning.ConsoleFit.Unfit;
import wallchart.quantity.PartThickness;

/**
 * A band, cut down from its ends to the thicknesses that the console can expose.
 *
 * @param fit what comes of what is left; never {@link OutOfReach}
 * @param rest what is cut away, ascending
 * @param reason why; empty where nothing is cut
 */
record BandCut(Fit fit, List<Band> rest, String reason) {

    /** Nobody measures a patient more finely. Common practice, no source. */
    private static final BigDecimal STEP = new BigDecimal("0.5");

    /** @param fits what comes of a part of the band */
    static BandCut of(Band whole, Function<Band, Fit> fits) {
        var band = whole;
        var fit = fits.apply(whole);
        if (!(fit instanceof OutOfReach first)) {
            return new BandCut(fit, List.of(), "");
        }
        while (fit instanceof OutOfReach beyond) {
            var shorter = shorter(band, beyond.end());
            if (shorter.isEmpty()) {
                fit = new Unfit(first.reason());
            } else {
                band = shorter.get();
                fit = fits.apply(band);
            }
        }
        return fit instanceof Unfit
                ? new BandCut(new Unfit(first.reason()), List.of(), "")
                : new BandCut(fit, rest(whole, band), first.reason());
    }

    private static Optional<Band> shorter(Band band, PartThickness end) {
        if (band.to().centimetres().subtract(band.from().centimetres()).compareTo(STEP) <= 0) {
            return Optional.empty();
        }
        return Optional.of(
                end.equals(band.from())
                        ? new Band(new PartThickness(band.from().centimetres().add(STEP)), band.to())
                        : new Band(
                                band.from(),
                                new PartThickness(band.to().centimetres().subtract(STEP))));
    }

    private static List<Band> rest(Band whole, Band left) {
        var rest = new ArrayList<Band>();
        if (whole.from().compareTo(left.from()) < 0) {
            rest.add(new Band(whole.from(), left.from()));
        }
        if (left.to().compareTo(whole.to()) < 0) {
            rest.add(new Band(left.to(), whole.to()));
        }
        return rest;
    }
}
