package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Adjustment;
import wallchart.chart.Band;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.ExaminationKey;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.chart.RowSetting;
import wallchart.equipment.Grid;
import wallchart.equipment.Room;
import wallchart.planning.ConsoleFit.Exact;
import wallchart.planning.ConsoleFit.Fit;
import wallchart.planning.ConsoleFit.Fits;
import wallchart.planning.ConsoleFit.Unfit;
import wallchart.planning.RoomTransfer.Scope;
import wallchart.quantity.TubeVoltage;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;

/** Works out what rows of one room would be in another. Pure; lives for one transfer. */
final class TransferCalculation {

    private static final int LEAST_TARGET = 10;
    private static final int MOST_TARGET = 10_000;

    private final Models models;
    private final ExposureModel model;
    private final Room from;
    private final Room to;
    private final RoomTransfer asked;
    private final ChartContent before;
    private final Counterparts counterparts;
    private final ConsoleFit console;
    private final List<ProposedRow> rows = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();

    /** @param before what the chart of this room says now */
    TransferCalculation(Models models, ChartRules rules, Room from, Room to, RoomTransfer asked, ChartContent before) {
        this.models = models;
        this.model = models.exposure();
        this.from = from;
        this.to = to;
        this.asked = asked;
        this.before = before;
        this.counterparts = new Counterparts(from, to, asked);
        this.console = new ConsoleFit(to, rules, models);
    }

    /**
     * What is proposed.
     *
     * @param wanted rows of the other room
     * @param adjustments of the other room
     * @param version of this room's chart
     */
    ChartProposal proposal(List<Row> wanted, List<Adjustment> adjustments, int version) {
        for (var row : wanted) {
            if (transfer(row) instanceof Unfit unfit) {
                leftOut.add(new LeftOut(row.key().toString(), Optional.of(place(row)), unfit.reason()));
            }
        }
        var withdrawn = Overlaps.withdrawn(before, rows);
        var taken = before.adjustments().isEmpty() && !rows.isEmpty() ? adjustments : List.<Adjustment>of();
        var left = new LeftOutWords(leftOut, rows, Overlaps.after(before, rows, withdrawn));
        var words = new TransferWords(models, from, to, asked, rows);
        return new ChartProposal(
                to.id(),
                version,
                before,
                rows,
                leftOut,
                withdrawn,
                taken,
                words.assumptions(taken, adjustments),
                words.statement(withdrawn, left),
                List.of(),
                Optional.empty());
    }

    private Fit transfer(Row row) {
        var there = Arrangement.find(from, row);
        if (there.isEmpty()) {
            return new Unfit("room " + from.id() + " no longer has what the row was made for: nothing can be compared");
        }
        var search = counterparts.find(row, there.get());
        if (search instanceof Counterparts.Missing missing) {
            return new Unfit(missing.reason());
        }
        var here = ((Counterparts.Found) search).how();
        var station = console.station(row.setting(), row.setting().kV().inKilovolts());
        return station.isEmpty()
                ? console.noVoltage(row.setting(), row.setting().kV().inKilovolts())
                : transfer(row, there.get(), here, station.get());
    }

    private Fit transfer(Row row, Arrangement there, Arrangement here, TubeVoltage station) {
        double kV = row.setting().kV().inKilovolts();
        double thickness = row.referenceThickness().inCentimetres();
        var wanted = arranged(row, there, here, station);
        var own = kept(wanted);
        if (own.isPresent()) {
            return new Unfit(standing(own.get()));
        }
        var taken = rows.stream()
                .filter(other -> Overlaps.overlap(other.row().key(), wanted.key()))
                .findFirst();
        if (taken.isPresent()) {
            return new Unfit("its place, " + wanted.key() + ", is taken by "
                    + taken.get().origin().row().map(RowKey::toString).orElse("another row")
                    + ": bring one of the two supports at a time");
        }
        var exchange = new TransferFactors(
                models, there, here, kV, station.inKilovolts(), target(row, there), target(wanted, here));
        var objection = exchange.findObjection(thickness);
        if (objection.isPresent()) {
            return new Unfit("not predicted: " + objection.get());
        }
        var factors = exchange.all(thickness);
        var origin = Origin.of(from.id(), Optional.of(row.key()), row, model.entrancePerMAs(there, kV, thickness));
        var exact = new Exact(wanted, origin, kV, factors, TransferCautions.of(wanted, exchange));
        var cut = BandCut.of(wanted.key().band(), part -> fit(exact, part));
        if (cut.fit() instanceof Fits fits) {
            rows.add(fits.proposed());
            cut.rest()
                    .forEach(rest -> leftOut.add(new LeftOut(
                            row.key().toString(),
                            Optional.of(new RowKey(wanted.key().examination(), rest)),
                            "of its band " + rest + " cm stays behind: " + cut.reason())));
        }
        return cut.fit();
    }

    /** A part of the row's band, as long as its reference thickness lies in it. */
    private Fit fit(Exact exact, Band part) {
        var row = exact.row();
        return row.referenceThickness().compareTo(part.from()) < 0
                        || row.referenceThickness().compareTo(part.to()) > 0
                ? new Unfit("its reference thickness lies beyond what can be exposed")
                : console.fit(exact.in(part));
    }

    /** Where the row would stand in this room. */
    private RowKey place(Row row) {
        var key = row.key().examination();
        var support = asked.supports().getOrDefault(key.support(), key.support());
        return new RowKey(
                new ExaminationKey(key.bodyPart(), key.projection(), key.patientGroup(), support),
                row.key().band());
    }

    /** A row of this room that stays where the other would come. */
    private Optional<Row> kept(Row wanted) {
        return asked.scope() == Scope.ALL
                ? Optional.empty()
                : before.rows().stream()
                        .filter(own -> Overlaps.overlap(own.key(), wanted.key()))
                        .findFirst();
    }

    private String standing(Row own) {
        return "room " + to.id() + " has a row of its own there, " + own.key() + ", "
                + own.setting().kV() + " with " + own.setting().control().mAs()
                + ": it stays, unless rows is all";
    }

    /** The row as it stands in the other room, but for its mAs. */
    private Row arranged(Row row, Arrangement there, Arrangement here, TubeVoltage station) {
        var examination = row.key().examination();
        var key = new RowKey(
                new ExaminationKey(
                        examination.bodyPart(),
                        examination.projection(),
                        examination.patientGroup(),
                        here.support().kind()),
                row.key().band());
        var setting = row.setting();
        return new Row(
                key,
                row.referenceThickness(),
                new RowSetting(
                        station,
                        control(setting.control()),
                        setting.focalSpot(),
                        here.grid().map(Grid::id).orElse(Grid.NONE),
                        here.sid(),
                        here.receptor().id(),
                        setting.field(),
                        setting.orientation(),
                        setting.addedFiltration(),
                        setting.targetExposureIndex().map(own -> scaled(own, there, here)),
                        setting.thicknessMethod(),
                        setting.kVWindow(),
                        setting.longestTime()),
                row.positioning());
    }

    /** Density settings are calibrated room by room: the other room's normal one is meant. */
    private ExposureControl control(ExposureControl control) {
        return control instanceof ExposureControl.Automatic automatic
                        && !from.id().equals(to.id())
                ? new ExposureControl.Automatic(automatic.chambers(), 0, automatic.backup())
                : control;
    }

    /** A target of the row's own keeps its ratio to that of the receptor. */
    private static int scaled(int own, Arrangement there, Arrangement here) {
        double scaled = (double) own
                * here.receptor().targetExposureIndex()
                / there.receptor().targetExposureIndex();
        return (int) Math.max(LEAST_TARGET, Math.min(MOST_TARGET, Math.round(scaled)));
    }

    private static int target(Row row, Arrangement how) {
        return row.setting().targetExposureIndex().orElse(how.receptor().targetExposureIndex());
    }
}
