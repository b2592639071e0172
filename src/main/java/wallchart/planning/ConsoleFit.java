package wallchart.planning;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.chart.Band;
import wallchart.chart.ChartCheck;
import wallchart.chart.ChartRules;
import wallchart.chart.ExposureControl;
import wallchart.chart.Finding;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.chart.RowSetting;
import wallchart.equipment.Room;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Decimals;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;
import wallchart.technique.Arrangement;
import wallchart.technique.ConsoleReach;
import wallchart.technique.ConsoleSetting;
import wallchart.technique.ExposureArithmetic;
import wallchart.technique.ExposureModel;
import wallchart.technique.MostlyLung;
import wallchart.technique.Predictions;

/** Brings exact techniques to the stations and limits of one room's console, or says why that cannot be. */
final class ConsoleFit {

    /** Fields whose blocking findings say that console, tube, support or model cannot do it; other findings are the author's to mend. */
    private static final Set<String> LIMITS = Set.of(
            "kV",
            "kVFrom",
            "mAs",
            "aecChambers",
            "aecDensity",
            "backupMAs",
            "focalSpot",
            "support",
            "grid",
            "sidCm",
            "receptor",
            "fieldCm",
            "thicknessMethod");

    /** Fields that say whether there is an AEC with those chambers: without it no mAs of a back-up means anything. */
    private static final Set<String> AEC = Set.of("aecChambers");

    /** Nobody holds still, or their breath, for certain much longer; common practice, no source. */
    private static final BigDecimal LONG_MS = new BigDecimal("1000");

    private final Room room;
    private final ChartRules rules;
    private final ExposureModel model;
    private final Predictions predictions;

    ConsoleFit(Room room, ChartRules rules, Models models) {
        this.room = room;
        this.rules = rules;
        this.model = models.exposure();
        this.predictions = models.predictions();
    }

    /** What comes of it. */
    sealed interface Fit {}

    /** The console can do it. */
    record Fits(ProposedRow proposed) implements Fit {}

    /** It cannot, for this reason. */
    record Unfit(String reason) implements Fit {}

    /**
     * It can at the reference thickness, not all the way to an end of the band.
     *
     * @param end that cannot be exposed
     */
    record OutOfReach(PartThickness end, String reason) implements Fit {}

    /**
     * An exact technique on its way to the console.
     *
     * @param row as it is to be, at its kV station, still with the mAs it comes from
     * @param exactKV before the station
     * @param factors on the proven mAs
     * @param cautions what to know of it
     */
    record Exact(Row row, Origin origin, double exactKV, List<Factor> factors, List<String> cautions) {

        /** The same for a part of its band. */
        Exact in(Band part) {
            var other = new Row(
                    new RowKey(row.key().examination(), part),
                    row.referenceThickness(),
                    row.setting(),
                    row.positioning());
            return new Exact(other, origin, exactKV, factors, cautions);
        }

        double mAs() {
            return origin.mAs().inMilliampereSeconds() * Factor.product(factors);
        }
    }

    /** The kV station for a tube voltage; empty where it lies outside the generator or the row's window, see {@link #noVoltage}. */
    Optional<TubeVoltage> station(RowSetting setting, double kV) {
        var stations = room.generator().kV();
        double lowest = setting.lowestKilovolts(stations);
        double highest = setting.highestKilovolts(stations);
        return kV < lowest || kV > highest ? Optional.empty() : stations.nearest(kV, lowest, highest);
    }

    /** Why there is no station. */
    Unfit noVoltage(RowSetting setting, double kV) {
        var stations = room.generator().kV();
        boolean inGenerator = kV >= stations.lowest().inKilovolts()
                && kV <= stations.highest().inKilovolts();
        if (inGenerator && setting.kVWindow().isPresent()) {
            return new Unfit(outsideWindow(setting, kV));
        }
        return new Unfit(Figures.number(kV) + " kV lies outside what room " + room.id() + " can be set to, "
                + stations.lowest() + " to " + stations.highest());
    }

    private String outsideWindow(RowSetting setting, double kV) {
        double lowest = setting.lowestKilovolts(room.generator().kV());
        boolean under = kV < lowest;
        double end = under ? lowest : setting.highestKilovolts(room.generator().kV());
        return Figures.number(kV) + " kV lies " + (under ? "under" : "over") + " the row's kV window, which "
                + (under ? "begins" : "ends") + " at " + Figures.number(end)
                + " kV: widen it in the technique it comes from";
    }

    Fit fit(Exact exact) {
        var noAec = blocking(exact.row(), AEC);
        if (!noAec.isEmpty()) {
            return new Unfit(noAec);
        }
        var stations = room.generator().mAs();
        double mAs = exact.mAs();
        if (stations.isAbove(mAs) || stations.isBelow(mAs)) {
            var band = exact.row().key().band();
            return new OutOfReach(
                    stations.isAbove(mAs) ? band.to() : band.from(),
                    Figures.number(mAs) + " mAs at " + exact.row().referenceThickness()
                            + " lies outside the generator of room " + room.id() + ", " + stations.smallest() + " to "
                            + stations.largest() + ", by more than half a step");
        }
        var station = stations.nearest(mAs);
        var row = Rows.with(exact.row(), station);
        var blocking = blocking(row, LIMITS);
        if (!blocking.isEmpty()) {
            return new Unfit(blocking);
        }
        var outOfReach = findOutOfReach(row);
        return outOfReach.isPresent() ? outOfReach.get() : fits(exact, row, station);
    }

    private String blocking(Row row, Set<String> fields) {
        return ChartCheck.check(row, room, rules).stream()
                .filter(finding -> finding.isBlocking() && fields.contains(finding.field()))
                .map(Finding::reason)
                .collect(Collectors.joining("; "));
    }

    /** The end of the band at which the row, by its own rule, asks for what the console cannot do. */
    private Optional<OutOfReach> findOutOfReach(Row row) {
        var band = row.key().band();
        return Stream.of(band.from(), band.to())
                .flatMap(end -> predictions.findReach(room, row, end).stream()
                        .filter(reach -> reach.set().isEmpty())
                        .map(reach -> new OutOfReach(end, "at " + end + ", " + String.join("; ", reach.reasons()))))
                .findFirst();
    }

    private Fit fits(Exact exact, Row row, CurrentTimeProduct station) {
        var how = Arrangement.find(room, row).orElseThrow();
        double kV = row.setting().kV().inKilovolts();
        double thickness = row.referenceThickness().inCentimetres();
        var objection = model.findObjection(how, kV, thickness);
        if (objection.isPresent()) {
            return new Unfit("not predicted: " + objection.get());
        }
        var time = findTime(row);
        return new Fits(new ProposedRow(
                row,
                exact.origin(),
                exact.exactKV(),
                exact.mAs(),
                exact.factors(),
                ExposureArithmetic.decibels(station.inMilliampereSeconds() / exact.mAs()),
                time,
                model.entrancePerMAs(how, kV, thickness) * station.inMilliampereSeconds(),
                ends(how, row),
                Stream.concat(
                                exact.cautions().stream(),
                                time.filter(ConsoleFit::isLong).map(ConsoleFit::longTime).stream())
                        .toList()));
    }

    private Optional<ExposureTime> findTime(Row row) {
        return predictions
                .findReach(room, row, row.referenceThickness())
                .flatMap(ConsoleReach::set)
                .filter(ConsoleSetting.Manual.class::isInstance)
                .map(set -> ((ConsoleSetting.Manual) set).time());
    }

    private static boolean isLong(ExposureTime time) {
        return time.milliseconds().compareTo(LONG_MS) > 0;
    }

    private static String longTime(ExposureTime time) {
        return "takes " + time + ", over " + Decimals.plain(LONG_MS)
                + " ms: patients move; consider more kV with less mAs, or the large focal spot";
    }

    private BandEnds ends(Arrangement how, Row row) {
        return new BandEnds(
                shift(how, row, row.key().band().from()),
                shift(how, row, row.key().band().to()));
    }

    /**
     * From the reference thickness to another one, by the row's own rules. AEC makes up for any thickness by itself, and of what is
     * mostly lung nothing is predicted along its thickness.
     */
    private OptionalDouble shift(Arrangement how, Row row, PartThickness thickness) {
        if (MostlyLung.is(row.key().examination())) {
            return OptionalDouble.empty();
        }
        var there = signal(how, row, thickness);
        var reference = signal(how, row, row.referenceThickness());
        return row.setting().control() instanceof ExposureControl.Manual && there.isPresent() && reference.isPresent()
                ? OptionalDouble.of(ExposureArithmetic.decibels(there.getAsDouble() / reference.getAsDouble()))
                : OptionalDouble.empty();
    }

    private OptionalDouble signal(Arrangement how, Row row, PartThickness thickness) {
        return predictions
                .find(room, row, thickness, Optional.empty())
                .filter(there -> model.findObjection(how, there.kV(), thickness.inCentimetres())
                        .isEmpty())
                .map(there ->
                        OptionalDouble.of(there.mAs() * model.signalPerMAs(how, there.kV(), thickness.inCentimetres())))
                .orElseGet(OptionalDouble::empty);
    }
}
