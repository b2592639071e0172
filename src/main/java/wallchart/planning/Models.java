package wallchart.planning;

import wallchart.equipment.Calibrations;
import wallchart.physics.BeamPhysics;
import wallchart.technique.ExposureModel;
import wallchart.technique.Predictions;

/**
 * The beam model as drafts ask it; made once, since each remembers what it worked out. Thread-safe.
 *
 * @param exposure what an exposure does at skin and receptor
 * @param predictions what a row does by the rules that answers follow
 * @param calibrations whether the model is fitted to a tube
 */
record Models(ExposureModel exposure, Predictions predictions, Calibrations calibrations) {

    static Models of(BeamPhysics physics) {
        return new Models(new ExposureModel(physics), new Predictions(physics), new Calibrations(physics));
    }
}
