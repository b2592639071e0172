package wallchart.equipment;

import java.math.BigDecimal;
import java.util.Optional;
import wallchart.equipment.EquipmentDocument.FocalSpotPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.OutputPointPart;
import wallchart.equipment.EquipmentDocument.RatingPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.quantity.ElectricPower;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/** Reads the tube, its focal spots and its measured output. */
final class TubeReader {

    private final ReadingProblems problems;

    TubeReader(ReadingProblems problems) {
        this.problems = problems;
    }

    Optional<Tube> read(TubePart part) {
        if (part == null) {
            problems.add("/tube", "is missing: it must be given");
            return Optional.empty();
        }
        int before = problems.count();
        var angle = problems.required("/tube/anodeAngleDeg", part.anodeAngleDeg(), degrees -> degrees);
        var filtration =
                filtration("/tube/totalFiltrationMmAl", part.totalFiltrationMmAl(), part.totalFiltrationMmCu());
        var spots = problems.eachOfSome("/tube/focalSpots", part.focalSpots(), this::focalSpot);
        var output = Optional.ofNullable(part.output()).flatMap(this::output);
        return problems.sound(before, "/tube", () -> new Tube(angle.get(), filtration.get(), spots, output));
    }

    private Optional<Filtration> filtration(String field, BigDecimal aluminium, BigDecimal copper) {
        return problems.required(
                field, aluminium, given -> new Filtration(given, copper == null ? BigDecimal.ZERO : copper));
    }

    private Optional<FocalSpot> focalSpot(String field, FocalSpotPart part) {
        int before = problems.count();
        var name = problems.required(field + "/name", part.name(), TubeReader::focalSpotName);
        var nominal = problems.required(field + "/nominalMm", part.nominalMm(), value -> value);
        var ratings = problems.eachOfSome(field + "/rating", part.rating(), this::rating);
        return problems.sound(before, field, () -> new FocalSpot(name.get(), nominal.get(), ratings));
    }

    private static FocalSpotName focalSpotName(String slug) {
        return FocalSpotName.find(slug)
                .orElseThrow(
                        () -> new IllegalArgumentException("focal spot is \"" + slug + "\": write small or large"));
    }

    private Optional<FocalSpot.Rating> rating(String field, RatingPart part) {
        var time = problems.required(field + "/timeMs", part.timeMs(), ExposureTime::new);
        var power = problems.required(field + "/kW", part.kW(), ElectricPower::new);
        return time.flatMap(upTo -> power.map(allowed -> new FocalSpot.Rating(upTo, allowed)));
    }

    private Optional<MeasuredOutput> output(OutputPart part) {
        int before = problems.count();
        var field = "/tube/output";
        var date = problems.required(field + "/measuredOn", part.measuredOn(), day -> day);
        var filtration =
                filtration(field + "/totalFiltrationMmAl", part.totalFiltrationMmAl(), part.totalFiltrationMmCu());
        var hvl = problems.required(field + "/hvlMmAl", part.hvlMmAl(), value -> value);
        var hvlAt = problems.required(field + "/hvlAtKV", part.hvlAtKV(), TubeVoltage::new);
        var uncertainty = problems.required(field + "/uncertaintyPercent", part.uncertaintyPercent(), value -> value);
        var points =
                problems.each(field + "/microGyPerMAsAtOneMetre", part.microGyPerMAsAtOneMetre(), this::outputPoint);
        return problems.sound(
                before,
                field,
                () -> new MeasuredOutput(
                        date.get(), filtration.get(), hvl.get(), hvlAt.get(), uncertainty.get(), points));
    }

    private Optional<MeasuredOutput.Point> outputPoint(String field, OutputPointPart part) {
        var kV = problems.required(field + "/kV", part.kV(), TubeVoltage::new);
        var output = problems.required(field + "/output", part.output(), value -> value);
        return kV.isEmpty() || output.isEmpty()
                ? Optional.empty()
                : problems.at(field, () -> new MeasuredOutput.Point(kV.get(), output.get()));
    }
}
