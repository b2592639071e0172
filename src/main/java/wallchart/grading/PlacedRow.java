package wallchart.grading;

import java.util.Optional;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.chart.RowSetting;
import wallchart.physics.ReceptorResponse;
import wallchart.technique.ArrangedBeam;
import wallchart.technique.Arrangement;
import wallchart.technique.MostlyLung;
import wallchart.technique.RowCourse;
import wallchart.technique.Working;

/** One manual row in its room, with the beam it is exposed in and what its rules make of a thickness. For one thread. */
final class PlacedRow {

    /** No console comes near either; beyond them a rate was miswritten. */
    private static final double LEAST_MAS = 1e-3;

    private static final double MOST_MAS = 1e5;

    private final Row row;
    private final Arrangement how;
    private final ArrangedBeam beam;
    private final RowCourse course;
    private final double target;
    private final Optional<String> lung;
    private final Optional<String> referenceObjection;

    private PlacedRow(Row row, Arrangement how, ArrangedBeam beam, RowCourse course) {
        this.row = row;
        this.how = how;
        this.beam = beam;
        this.course = course;
        this.target = target(row, how);
        this.lung = MostlyLung.findObjection(row.key().examination());
        this.referenceObjection = findReferenceObjection();
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

    /** What the row sets there, where that is predicted; else {@link #findObjection} says why not. */
    Optional<Working> findSetting(double thicknessCentimetres) {
        if (findOwnObjection(thicknessCentimetres).isPresent()) {
            return Optional.empty();
        }
        var wanted = course.byThickness(thicknessCentimetres);
        var set = course.limited(wanted);
        boolean predicted = isSettable(wanted)
                && isSettable(set)
                && beam.findObjection(set.kV(), thicknessCentimetres).isEmpty();
        return predicted ? Optional.of(set) : Optional.empty();
    }

    /** The sentence that says why nothing is predicted at that thickness; empty where something is. */
    Optional<String> findObjection(double thicknessCentimetres) {
        return findOwnObjection(thicknessCentimetres)
                .or(() -> beyondConsoles(course.byThickness(thicknessCentimetres)))
                .or(() -> beyondConsoles(course.at(thicknessCentimetres)))
                .or(() -> beam.findObjection(course.at(thicknessCentimetres).kV(), thicknessCentimetres));
    }

    /** The same for any tube voltage in this row's beam, whatever its rules make of the thickness. */
    Optional<String> findBeamObjection(double kilovolts, double thicknessCentimetres) {
        return lung.or(() -> beam.findObjection(kilovolts, thicknessCentimetres));
    }

    /** The relative difference of two exposures at one tube voltage that cannot be told from none. */
    double tellable() {
        return Tellable.atOneVoltage(beam.response());
    }

    /**
     * The same where the tube voltage differs.
     *
     * @param kilovolts the lower of the two
     */
    double tellable(double kilovolts) {
        return Tellable.acrossVoltages(beam.response(), how.receptor().kind(), kilovolts);
    }

    /** The same for what the thickness method sets by itself, whatever limits the row and the console have. */
    Optional<String> findMethodObjection(double thicknessCentimetres) {
        return findOwnObjection(thicknessCentimetres)
                .or(() -> beyondConsoles(course.byThickness(thicknessCentimetres)))
                .or(() -> beam.findObjection(
                        course.byThickness(thicknessCentimetres).kV(), thicknessCentimetres));
    }

    /** Exposures are over a target; and with the row's own kV the model must reach the reference thickness, and the thickness asked. */
    private Optional<String> findOwnObjection(double thicknessCentimetres) {
        return referenceObjection.isPresent() ? referenceObjection : findBeamObjection(kV(), thicknessCentimetres);
    }

    private Optional<String> findReferenceObjection() {
        return target > 0
                ? findBeamObjection(kV(), reference())
                : Optional.of("the target exposure index is " + Figures.plain(target));
    }

    private static Optional<String> beyondConsoles(Working set) {
        return isSettable(set)
                ? Optional.empty()
                : Optional.of("the thickness method arrives at a kV or mAs that no console has");
    }

    private static boolean isSettable(Working set) {
        return set.kV() > 0 && set.mAs() > LEAST_MAS && set.mAs() < MOST_MAS;
    }

    /** Signal at the receptor over the row's target exposure index, with that setting behind that thickness. */
    double exposure(Working set, double thicknessCentimetres) {
        return beam.signalPerMAs(set.kV(), thicknessCentimetres) * set.mAs() / target;
    }
}
