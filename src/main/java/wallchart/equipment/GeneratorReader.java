package wallchart.equipment;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallchart.equipment.EquipmentDocument.ExposureControlPart;
import wallchart.equipment.EquipmentDocument.GeneratorPart;
import wallchart.equipment.EquipmentDocument.StationsPart;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** Reads the generator of an equipment document. */
final class GeneratorReader {

    private static final int MOST_STATIONS = 1000;

    private final ReadingProblems problems;

    GeneratorReader(ReadingProblems problems) {
        this.problems = problems;
    }

    Optional<Generator> read(GeneratorPart part) {
        if (part == null) {
            problems.add("/generator", "is missing: it must be given");
            return Optional.empty();
        }
        var waveform = problems.required("/generator/waveform", part.waveform(), this::waveform);
        var kV = stations("/generator/kV", part.kV(), TubeVoltage::new, VoltageStations::new);
        var mAs = stations("/generator/mAs", part.mAs(), CurrentTimeProduct::new, CurrentTimeStations::new);
        var mA = stations("/generator/mA", part.mA(), TubeCurrent::new, CurrentStations::new);
        var shortest = problems.required("/generator/shortestTimeMs", part.shortestTimeMs(), ExposureTime::new);
        var aec = Optional.ofNullable(part.aec()).flatMap(this::exposureControl);
        if (waveform.isEmpty() || kV.isEmpty() || mAs.isEmpty() || mA.isEmpty() || shortest.isEmpty()) {
            return Optional.empty();
        }
        return problems.at(
                "/generator/shortestTimeMs",
                () -> new Generator(waveform.get(), kV.get(), mAs.get(), mA.get(), shortest.get(), aec));
    }

    private Waveform waveform(String slug) {
        return Waveform.find(slug)
                .orElseThrow(() -> new IllegalArgumentException("waveform is \"" + slug
                        + "\": write single-phase, six-pulse, twelve-pulse, high-frequency or constant-potential"));
    }

    private Optional<AutomaticExposureControl> exposureControl(ExposureControlPart part) {
        var field = "/generator/aec";
        var densities = problems.required(field + "/densities", part.densities(), given -> given)
                .flatMap(given -> problems.all(field + "/densities", given, entries -> entries));
        var backup = problems.required(field + "/largestBackupMAs", part.largestBackupMAs(), CurrentTimeProduct::new);
        return densities.isEmpty() || backup.isEmpty()
                ? Optional.empty()
                : problems.at(field, () -> new AutomaticExposureControl(densities.get(), backup.get()));
    }

    private <Q, S> Optional<S> stations(
            String field, StationsPart part, Function<BigDecimal, Q> quantity, Function<List<Q>, S> stations) {
        Function<List<BigDecimal>, S> making =
                numbers -> stations.apply(numbers.stream().map(quantity).toList());
        return problems.required(field, part, GeneratorReader::numbers)
                .flatMap(numbers -> part.stations() == null
                        ? problems.at(field, () -> making.apply(numbers))
                        : problems.all(field + "/stations", numbers, making));
    }

    private static List<BigDecimal> numbers(StationsPart part) {
        boolean listed = part.stations() != null;
        boolean ranged = part.from() != null && part.to() != null;
        if (listed && part.from() == null && part.to() == null && part.step() == null && part.series() == null) {
            return part.stations();
        }
        if (!listed && ranged && part.series() != null && part.step() == null) {
            return series(part.series()).between(part.from(), part.to());
        }
        if (!listed && ranged && part.step() != null && part.series() == null) {
            return steps(part.from(), part.to(), part.step());
        }
        throw new IllegalArgumentException("give either stations, or from, to and step, or series, from and to");
    }

    private static PreferredNumbers series(String symbol) {
        return PreferredNumbers.find(symbol)
                .orElseThrow(() -> new IllegalArgumentException(
                        "series is \"" + symbol + "\": write R10, R'10, R''10 or R'20, or list the stations"));
    }

    private static List<BigDecimal> steps(BigDecimal from, BigDecimal to, BigDecimal step) {
        if (step.signum() <= 0
                || to.subtract(from).divideToIntegralValue(step).compareTo(BigDecimal.valueOf(MOST_STATIONS)) > 0) {
            throw new IllegalArgumentException("step is " + step.toPlainString() + ": over 0, and at most "
                    + MOST_STATIONS + " stations from " + from.toPlainString() + " to " + to.toPlainString());
        }
        var numbers = new ArrayList<BigDecimal>();
        for (var number = from; number.compareTo(to) <= 0; number = number.add(step)) {
            numbers.add(number);
        }
        return numbers;
    }
}
