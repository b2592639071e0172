package wallchart.technique;

import wallchart.chart.Row;
import wallchart.chart.ThicknessMethod;
import wallchart.equipment.Grid;
import wallchart.equipment.ReceptorKind;
import wallchart.equipment.Room;
import wallchart.physics.BeamPhysics;
import wallchart.physics.GridModel;
import wallchart.physics.ReceptorResponse;
import wallchart.physics.ReceptorSignal;
import wallchart.quantity.Filtration;

/**
 * The patient as a slab of water in the room's own beam, for rows whose thickness method is {@code attenuation}. Thread-safe.
 *
 * <p>A caesium iodide panel is modelled as such; every other receptor by the air kerma that reaches it.
 */
final class PhantomSignal {

    private final BeamPhysics physics;

    PhantomSignal(BeamPhysics physics) {
        this.physics = physics;
    }

    /** Factor on the mAs that keeps the receptor signal at the row's kV: S(t_ref) / S(t). */
    double currentTimeFactor(Situation situation) {
        var signal = signal(situation);
        double kV = situation.row().setting().kV().inKilovolts();
        double reference =
                signal.perMAs(kV, situation.row().referenceThickness().inCentimetres());
        return reference / signal.perMAs(kV, situation.thickness().inCentimetres());
    }

    /** Whether the thickness rule can be worked out: it needs the model for rows of method {@code attenuation} only. */
    boolean reaches(Situation situation) {
        return !(situation.row().setting().thicknessMethod() instanceof ThicknessMethod.Attenuation)
                || covers(situation);
    }

    /** Whether the model reaches the row's beam and both thicknesses. */
    private boolean covers(Situation situation) {
        var objection = physics.findObjection(
                situation.row().setting().kV(),
                situation.room().tube().anodeAngleDegrees().doubleValue(),
                totalFiltration(situation.room(), situation.row()));
        if (objection.isPresent()) {
            return false;
        }
        var signal = signal(situation);
        double kV = situation.row().setting().kV().inKilovolts();
        return signal.covers(kV, situation.thickness().inCentimetres())
                && signal.covers(kV, situation.row().referenceThickness().inCentimetres());
    }

    private ReceptorSignal signal(Situation situation) {
        return physics.receptorSignal(
                situation.room().tube().anodeAngleDegrees().doubleValue(),
                totalFiltration(situation.room(), situation.row()),
                gridModel(situation),
                situation.row().setting().field(),
                situation.receptor().kind() == ReceptorKind.CESIUM_IODIDE
                        ? ReceptorResponse.CESIUM_IODIDE
                        : ReceptorResponse.AIR_KERMA);
    }

    static Filtration totalFiltration(Room room, Row row) {
        return room.tube().totalFiltration().and(row.setting().addedFiltration());
    }

    /** The row's own grid: a grid other than the row's is the grid rule's matter. */
    private static GridModel gridModel(Situation situation) {
        return situation
                .rowGrid()
                .map(Grid::ratio)
                .map(ratio -> GridModel.nearest(ratio.intValue()))
                .orElse(GridModel.NONE);
    }
}
