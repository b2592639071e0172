package wallchart.technique;

import wallchart.chart.ThicknessMethod;

/**
 * The patient as a slab of water in the room's own beam, for rows whose thickness method is {@code attenuation}. Thread-safe.
 *
 * <p>Behind the row's own grid: a grid other than the row's is the grid rule's matter.
 */
final class PhantomSignal {

    private final ExposureModel model;

    PhantomSignal(ExposureModel model) {
        this.model = model;
    }

    /** Factor on the mAs that keeps the receptor signal at the row's kV: S(t_ref) / S(t). */
    double currentTimeFactor(Situation situation) {
        var how = Arrangement.of(situation).with(situation.rowGrid());
        var signal = model.signal(how, how.response());
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
        var how = Arrangement.of(situation).with(situation.rowGrid());
        double kV = situation.row().setting().kV().inKilovolts();
        if (model.findTubeObjection(how, kV).isPresent()) {
            return false;
        }
        var signal = model.signal(how, how.response());
        return signal.covers(kV, situation.thickness().inCentimetres())
                && signal.covers(kV, situation.row().referenceThickness().inCentimetres());
    }
}
