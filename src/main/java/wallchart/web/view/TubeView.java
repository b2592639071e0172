package wallchart.web.view;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import wallchart.equipment.FocalSpot;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Tube;
import wallchart.quantity.Filtration;

/** The X-ray tube; output is null where nobody has measured it. */
public record TubeView(
        BigDecimal anodeAngleDeg, FiltrationView totalFiltration, List<FocalSpotView> focalSpots, OutputView output) {

    /** Metal in the beam. */
    public record FiltrationView(BigDecimal mmAl, BigDecimal mmCu) {
        static FiltrationView of(Filtration filtration) {
            return new FiltrationView(filtration.aluminiumMillimetres(), filtration.copperMillimetres());
        }
    }

    /** Power allowed up to an exposure time. */
    public record RatingView(BigDecimal timeMs, BigDecimal kW) {}

    /** One focal spot with its single-exposure rating. */
    public record FocalSpotView(String name, BigDecimal nominalMm, List<RatingView> ratings) {
        static FocalSpotView of(FocalSpot spot) {
            var ratings = spot.ratings().stream()
                    .map(rating -> new RatingView(
                            rating.upTo().milliseconds(), rating.power().kilowatts()))
                    .toList();
            return new FocalSpotView(spot.name().slug(), spot.nominalValue(), ratings);
        }
    }

    /** Output at one tube voltage, in uGy/mAs at 1 m. */
    public record PointView(BigDecimal kV, BigDecimal output) {}

    /** What the medical physicist measured. */
    public record OutputView(
            LocalDate measuredOn,
            FiltrationView totalFiltration,
            BigDecimal hvlMmAl,
            BigDecimal hvlAtKV,
            BigDecimal uncertaintyPercent,
            List<PointView> microGyPerMAsAtOneMetre) {
        static OutputView of(MeasuredOutput output) {
            return new OutputView(
                    output.measuredOn(),
                    FiltrationView.of(output.totalFiltration()),
                    output.halfValueLayerMillimetresAluminium(),
                    output.halfValueLayerAt().kilovolts(),
                    output.uncertaintyPercent(),
                    output.points().stream()
                            .map(point -> new PointView(point.kV().kilovolts(), point.microGyPerMAs()))
                            .toList());
        }
    }

    static TubeView of(Tube tube) {
        return new TubeView(
                tube.anodeAngleDegrees(),
                FiltrationView.of(tube.totalFiltration()),
                tube.focalSpots().stream().map(FocalSpotView::of).toList(),
                tube.output().map(OutputView::of).orElse(null));
    }
}
