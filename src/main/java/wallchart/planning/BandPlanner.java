package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Band;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.equipment.Room;
import wallchart.planning.ConsoleFit.Exact;
import wallchart.planning.ConsoleFit.Fit;
import wallchart.planning.ConsoleFit.Fits;
import wallchart.planning.ConsoleFit.Unfit;
import wallchart.quantity.PartThickness;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;
import wallchart.technique.MostlyLung;

/**
 * Works out a full set of bands from one proven technique, so that the modelled receptor signal stays what it is there. Pure and
 * thread-safe.
 */
final class BandPlanner {

    private final Models models;
    private final ExposureModel model;
    private final ChartRules rules;

    BandPlanner(Models models, ChartRules rules) {
        this.models = models;
        this.model = models.exposure();
        this.rules = rules;
    }

    /**
     * A technique that is known to work in the room.
     *
     * @param row with setting, reference thickness and positioning; its band does not matter
     * @param from the row of the chart that it is; absent where it was written out
     */
    record Proven(Row row, Optional<RowKey> from) {

        /** The member of a request that gave it. */
        String member() {
            return from.isPresent() ? "row" : "technique";
        }

        double thickness() {
            return row.referenceThickness().inCentimetres();
        }

        double kV() {
            return row.setting().kV().inKilovolts();
        }
    }

    /**
     * The bands for a room.
     *
     * @param before what the chart says now, in its version of that number
     */
    Planned plan(Room room, int version, ChartContent before, Proven proven, BandPlan plan) {
        var lung = MostlyLung.findObjection(proven.row().key().examination());
        if (lung.isPresent()) {
            return Planned.wrong(proven.member(), notWater(proven, lung.get()));
        }
        if (proven.row().setting().control() instanceof ExposureControl.Automatic) {
            return Planned.wrong(
                    proven.member(),
                    "leaves the exposure to the AEC, which makes up for thickness by"
                            + " itself: start from a technique with mAs");
        }
        var how = Arrangement.find(room, proven.row());
        if (how.isEmpty()) {
            return Planned.wrong(proven.member(), notThere(room, proven));
        }
        var objection = model.findObjection(how.get(), proven.kV(), proven.thickness());
        return objection.isPresent()
                ? Planned.wrong(proven.member(), "nothing can be planned from it: " + objection.get())
                : new Planned.Drawn(new Working(room, how.get(), proven, plan).proposal(version, before));
    }

    private static String notWater(Proven proven, String why) {
        return "is of " + proven.row().key().examination() + ", " + why
                + ", so no bands can be planned from one technique: enter each band with a technique that was proven"
                + " at its thickness, or leave the exposure to the AEC";
    }

    private static String notThere(Room room, Proven proven) {
        var setting = proven.row().setting();
        return "room " + room.id() + " has not, at "
                + proven.row().key().examination().support().slug() + ", receptor " + setting.receptor() + " with grid "
                + setting.grid() + ": look at the room's equipment";
    }

    /** One plan while it is worked out. */
    private final class Working {

        private final Arrangement how;
        private final Proven proven;
        private final BandPlan plan;
        private final Room room;
        private final ConsoleFit console;
        private final Origin origin;
        private final List<ProposedRow> rows = new ArrayList<>();
        private final List<LeftOut> leftOut = new ArrayList<>();

        Working(Room room, Arrangement how, Proven proven, BandPlan plan) {
            this.room = room;
            this.how = how;
            this.proven = proven;
            this.plan = plan;
            this.console = new ConsoleFit(room, rules, models);
            this.origin = Origin.of(
                    room.id(), proven.from(), proven.row(), model.entrancePerMAs(how, proven.kV(), proven.thickness()));
        }

        ChartProposal proposal(int version, ChartContent before) {
            for (var band : plan.bands()) {
                var cut = BandCut.of(band, part -> fit(key(part), part.middle()));
                if (cut.fit() instanceof Fits fits) {
                    rows.add(fits.proposed());
                    cut.rest().forEach(rest -> leftOut.add(LeftOut.of(key(rest), cut.reason())));
                } else {
                    leftOut.add(LeftOut.of(key(band), ((Unfit) cut.fit()).reason()));
                }
            }
            var withdrawn = Overlaps.withdrawn(before, rows);
            var left = new LeftOutWords(leftOut, rows, Overlaps.after(before, rows, withdrawn));
            var words = new PlanWords(model, how, proven, plan, version, rows);
            return new ChartProposal(
                    room.id(),
                    version,
                    before,
                    rows,
                    leftOut,
                    withdrawn,
                    List.of(),
                    words.assumptions(),
                    words.statement(withdrawn, left),
                    List.of(),
                    Optional.empty());
        }

        private RowKey key(Band band) {
            return new RowKey(proven.row().key().examination(), band);
        }

        private Fit fit(RowKey key, PartThickness reference) {
            var setting = proven.row().setting();
            double thickness = reference.inCentimetres();
            double kV = proven.kV() + plan.rate() * (thickness - proven.thickness());
            var station = console.station(setting, kV);
            if (station.isEmpty()) {
                return console.noVoltage(setting, kV);
            }
            double set = station.get().inKilovolts();
            var objection =
                    model.findObjection(how, set, thickness).or(() -> model.findObjection(how, proven.kV(), thickness));
            if (objection.isPresent()) {
                return new Unfit("not predicted: " + objection.get());
            }
            var row = new Row(
                    key,
                    reference,
                    Rows.with(setting, station.get(), setting.control(), plan.method()),
                    proven.row().positioning());
            var factors = factors(thickness, set);
            var tooFar = ProofDistance.findObjection(proven, thickness, factors);
            return tooFar.isPresent()
                    ? new Unfit(tooFar.get())
                    : console.fit(new Exact(row, origin, kV, factors, ProofDistance.cautions(proven, thickness, set)));
        }

        private List<Factor> factors(double thickness, double kV) {
            double there = model.signalPerMAs(how, proven.kV(), proven.thickness());
            double behind = model.signalPerMAs(how, proven.kV(), thickness);
            double reached = model.signalPerMAs(how, kV, thickness);
            var slab = new Factor(
                    "thickness",
                    there / behind,
                    "receptor signal per mAs behind " + Figures.number(proven.thickness())
                            + " cm of water over that behind " + Figures.number(thickness) + " cm, at "
                            + Figures.number(proven.kV()) + " kV");
            var voltage = new Factor(
                    "voltage",
                    behind / reached,
                    "the same at " + Figures.number(proven.kV()) + " kV over that at " + Figures.number(kV)
                            + " kV, behind " + Figures.number(thickness) + " cm");
            return List.of(slab, voltage);
        }
    }
}
