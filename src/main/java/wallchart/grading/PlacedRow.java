package wallchart.grading;

import java.util.Optional;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.RowSetting;
import wallchart.physics.ReceptorResponse;
import wallchart.technique.ArrangedBeam;
import wallchart.technique.Arrangement;
import wallchart.technique.RowCourse;
import wallchart.technique.Working;

/** One manual row in its room, with the beam it is exposed in and what its rules make of a thickness. For one thread. */
final class PlacedRow {

    private final Row row;
    private final Arrangement how;
    private final ArrangedBeam beam;
    private final RowCourse course;
    private final double target;

    private PlacedRow(Row row, Arrangement how, ArrangedBeam beam, RowCourse course) {
        this.row = row;
        this.how = how;
        this.beam = beam;
        this.course = course;
        this.target = target(row, how);
    }

    /** @param quantity what counts as receptor exposure in the row's examination */
    static PlacedRow of(Row row, Arrangement how, Beams beams, ReceptorResponse quantity) {
        var own = beams.of(how, how.response()); // the attenuation method follows the row's own receptor
        return new PlacedRow(row, how, beams.of(how, quantity), new RowCourse(how.room(), row, own));
    }

    static boolean isAutomatic(Row row) {
        return row.setting().control() instanceof ExposureControl.Automatic;
    }

    /** Target exposure index: the row's, else the receptor's. */
    static int target(Row row, Arrangement how) {
        return row.setting().targetExposureIndex().orElse(how.receptor().targetExposureIndex());
    }

    Row row() {
        return row;
    }

    RowSetting setting() {
        return row.setting();
    }

    Arrangement how() {
        return how;
    }

    ArrangedBeam beam() {
        return beam;
    }

    RowCourse course() {
        return course;
    }

    double kV() {
        return row.setting().kV().inKilovolts();
    }

    double reference() {
        return row.referenceThickness().inCentimetres();
    }

    /** The sentence that says why nothing is predicted at that thickness; empty where something is. */
    Optional<String> findObjection(double thicknessCentimetres) {
        var wanted = findWantedObjection(thicknessCentimetres);
        return wanted.isPresent()
                ? wanted
                : beam.findObjection(course.at(thicknessCentimetres).kV(), thicknessCentimetres);
    }

    /** The row's own kV must be within the model: the attenuation method works there. */
    private Optional<String> findWantedObjection(double thicknessCentimetres) {
        var objection = beam.findObjection(kV(), reference()).or(() -> beam.findObjection(kV(), thicknessCentimetres));
        if (objection.isPresent()) {
            return objection;
        }
        double wanted = course.byThickness(thicknessCentimetres).kV();
        return wanted > 0
                ? Optional.empty()
                : Optional.of("the thickness method arrives at " + Figures.two(wanted) + " kV");
    }

    /** Signal at the receptor over the row's target exposure index, with that setting behind that thickness. */
    double exposure(Working set, double thicknessCentimetres) {
        return beam.signalPerMAs(set.kV(), thicknessCentimetres) * set.mAs() / target;
    }
}
