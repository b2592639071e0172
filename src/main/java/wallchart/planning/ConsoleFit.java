package wallchart.planning;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import wallchart.chart.ChartCheck;
import wallchart.chart.ChartRules;
import wallchart.chart.ExposureControl;
import wallchart.chart.Finding;
import wallchart.chart.Row;
import wallchart.chart.RowSetting;
import wallchart.equipment.Room;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.PartThickness;
import wallchart.quantity.TubeVoltage;
import wallchart.technique.Arrangement;
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
     * An exact technique on its way to the console.
     *
     * @param row as it is to be, at its kV station, still with the mAs it comes from
     * @param exactKV before the station
     * @param factors on the proven mAs
     * @param cautions what to know of it
     */
    record Exact(Row row, Origin origin, double exactKV, List<Factor> factors, List<String> cautions) {

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
        var window =
                setting.kVWindow().map(of -> " and the row's kV window " + of).orElse("");
        return new Unfit(Figures.number(kV) + " kV lies outside what room " + room.id() + " can be set to, "
                + stations.lowest() + " to " + stations.highest() + window);
    }

    Fit fit(Exact exact) {
        var stations = room.generator().mAs();
        double mAs = exact.mAs();
        if (stations.isAbove(mAs) || stations.isBelow(mAs)) {
            return new Unfit(Figures.number(mAs) + " mAs lies outside the generator of room " + room.id() + ", "
                    + stations.smallest() + " to " + stations.largest() + ", by more than half a step");
        }
        var station = stations.nearest(mAs);
        var row = Rows.with(exact.row(), station);
        var blocking = ChartCheck.check(row, room, rules).stream()
                .filter(finding -> finding.isBlocking() && LIMITS.contains(finding.field()))
                .map(Finding::reason)
                .collect(Collectors.joining("; "));
        return blocking.isEmpty() ? fits(exact, row, station) : new Unfit(blocking);
    }

    private Fit fits(Exact exact, Row row, CurrentTimeProduct station) {
        var how = Arrangement.find(room, row).orElseThrow();
        double kV = row.setting().kV().inKilovolts();
        double thickness = row.referenceThickness().inCentimetres();
        var objection = model.findObjection(how, kV, thickness);
        if (objection.isPresent()) {
            return new Unfit("not predicted: " + objection.get());
        }
        return new Fits(new ProposedRow(
                row,
                exact.origin(),
                exact.exactKV(),
                exact.mAs(),
                exact.factors(),
                Figures.decibels(station.inMilliampereSeconds() / exact.mAs()),
                model.entrancePerMAs(how, kV, thickness) * station.inMilliampereSeconds(),
                ends(how, row),
                exact.cautions()));
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
                ? OptionalDouble.of(Figures.decibels(there.getAsDouble() / reference.getAsDouble()))
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
