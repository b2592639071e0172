package wallchart.equipment;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.ExposureControlPart;
import wallchart.equipment.EquipmentDocument.FocalSpotPart;
import wallchart.equipment.EquipmentDocument.GeneratorPart;
import wallchart.equipment.EquipmentDocument.GridFactorPart;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.OutputPointPart;
import wallchart.equipment.EquipmentDocument.RangePart;
import wallchart.equipment.EquipmentDocument.RatingPart;
import wallchart.equipment.EquipmentDocument.ReceptorPart;
import wallchart.equipment.EquipmentDocument.StationsPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentDocument.TubePart;

/**
 * An invented room for tests: 40 to 150 kV by 1, R'10 from 0.5 to 500 mAs, small 0.6 and large 1.2 focal spot, grids {@code g10}
 * (table) and {@code g8} (wall), receptors {@code dr1} (43x43) and {@code cr1} (18x24, 24x30), tabletop, table bucky with AEC and
 * wall bucky with AEC.
 */
public final class EquipmentFixtures {

    private EquipmentFixtures() {}

    /** The invented room {@code r1}; change it with the builder, then {@link RoomBuilder#room()} or {@code document()}. */
    public static RoomBuilder aRoom() {
        return new RoomBuilder();
    }

    public static GeneratorPart aGenerator() {
        return new GeneratorPart(
                "high-frequency",
                new StationsPart(null, number("40"), number("150"), number("1"), null),
                new StationsPart(null, number("0.5"), number("500"), null, "R'10"),
                new StationsPart(numbers("10 20 50 100 160 200 250 320 400 500"), null, null, null, null),
                number("1"),
                new ExposureControlPart(List.of(-2, -1, 0, 1, 2), number("400")));
    }

    public static TubePart aTube() {
        return new TubePart(number("12"), number("3.0"), null, List.of(aSmallSpot(), aLargeSpot()), anOutput());
    }

    public static FocalSpotPart aSmallSpot() {
        return new FocalSpotPart(
                "small", number("0.6"), List.of(rating("100", "32"), rating("500", "25"), rating("2000", "15")));
    }

    public static FocalSpotPart aLargeSpot() {
        return new FocalSpotPart(
                "large", number("1.2"), List.of(rating("100", "80"), rating("500", "60"), rating("2000", "35")));
    }

    private static RatingPart rating(String timeMs, String kW) {
        return new RatingPart(number(timeMs), number(kW));
    }

    /** Measured output; the numbers follow a survey mean of 0.008373 kV^1.983 uGy/mAs at 40 in, brought to 1 m. */
    public static OutputPart anOutput() {
        return new OutputPart(
                LocalDate.parse("2026-01-14"),
                number("3.0"),
                null,
                number("3.1"),
                number("80"),
                number("8"),
                points("50 20.2", "60 29.0", "80 51.3", "100 79.9", "120 114.7", "150 178.5"));
    }

    /** A later measurement of the same tube: all outputs of {@link #anOutput()} times a factor, rounded to hundredths. */
    public static OutputPart anOutput(String measuredOn, String factor) {
        return scaled(anOutput().microGyPerMAsAtOneMetre(), measuredOn, factor);
    }

    /**
     * A measurement with which no fit quarrels: the numbers follow the beam model of this tube at 0.8 of its output, since the survey
     * mean of {@link #anOutput()} is a mean from 60 to 100 kV only. Times a factor, rounded to hundredths.
     */
    public static OutputPart aSteadyOutput(String measuredOn, String factor) {
        return scaled(
                points("50 19.2", "60 29.9", "80 54.8", "100 83.0", "120 112.0", "150 156.5"), measuredOn, factor);
    }

    /** The measurement of the fixtures on another day and at other points, each written as kV, blank, uGy/mAs. */
    public static OutputPart anOutputAt(String measuredOn, String... points) {
        return scaled(points(points), measuredOn, "1");
    }

    private static List<OutputPointPart> points(String... points) {
        return Stream.of(points)
                .map(point -> point.split(" "))
                .map(point -> new OutputPointPart(number(point[0]), number(point[1])))
                .toList();
    }

    private static OutputPart scaled(List<OutputPointPart> points, String measuredOn, String factor) {
        var first = anOutput();
        return new OutputPart(
                LocalDate.parse(measuredOn),
                first.totalFiltrationMmAl(),
                first.totalFiltrationMmCu(),
                first.hvlMmAl(),
                first.hvlAtKV(),
                first.uncertaintyPercent(),
                points.stream()
                        .map(point -> new OutputPointPart(
                                point.kV(),
                                point.output().multiply(number(factor)).setScale(2, RoundingMode.HALF_UP)))
                        .toList());
    }

    public static GridPart aGrid(String id, String focusCm, String fromCm, String toCm) {
        return new GridPart(
                id,
                number("10"),
                number("40"),
                number(focusCm),
                new RangePart(number(fromCm), number(toCm)),
                List.of(
                        new GridFactorPart(number("70"), number("3.2")),
                        new GridFactorPart(number("90"), number("3.7")),
                        new GridFactorPart(number("120"), number("4.4"))));
    }

    public static List<ReceptorPart> someReceptors() {
        return List.of(
                new ReceptorPart("dr1", "Flat panel", "csi", List.of("43x43"), 400),
                new ReceptorPart("cr1", "Storage-phosphor plates", "storage-phosphor", List.of("18x24", "24x30"), 250));
    }

    public static List<SupportPart> someSupports() {
        return List.of(
                new SupportPart("tabletop", number("1"), from90to125(), List.of("none"), List.of("dr1", "cr1"), null),
                new SupportPart(
                        "table-bucky",
                        number("6"),
                        from90to125(),
                        List.of("g10", "none"),
                        List.of("dr1"),
                        List.of("left", "centre", "right")),
                new SupportPart(
                        "wall-bucky",
                        number("5"),
                        new DistancesPart(null, null, numbers("110 150 180")),
                        List.of("g8"),
                        List.of("dr1"),
                        List.of("left", "right")));
    }

    private static DistancesPart from90to125() {
        return new DistancesPart(number("90"), number("125"), null);
    }

    /** From plain digits. */
    public static BigDecimal number(String digits) {
        return new BigDecimal(digits);
    }

    /** From plain digits with blanks between the numbers. */
    public static List<BigDecimal> numbers(String digits) {
        return Stream.of(digits.split(" ")).map(BigDecimal::new).toList();
    }
}
