package wallchart.grading;

import java.util.ArrayList;
import java.util.List;
import wallchart.equipment.Room;
import wallchart.equipment.Waveform;
import wallchart.physics.BeamPhysics;

/** What a prediction holds for, in sentences that are shown with it. */
final class ModelLimits {

    private static final List<String> ALWAYS = List.of(
            "A slab of water stands for the patient: no bone, no lung, no outline. 1 cm of soft tissue is about 0.98 cm of water,"
                    + " muscle 1.04, fat 0.91, inflated lung 0.26, cortical bone 2.9.",
            "Constant potential, 40 to 150 kV, 1.5 mm Al or more, up to 36 cm; no heel effect. Outside, nothing is predicted.",
            "Grids are aligned and without covers; the nearest of 6:1, 8:1, 10:1 and 12:1 stands in for another ratio.",
            "The chest, ribs and sternum are mostly lung, so no slab of water stands for them: neither curve nor grade is predicted, only"
                    + " what reaches the skin.",
            "A caesium iodide panel is a layer of 0.20 g/cm2; of any other receptor the air kerma that reaches it is predicted.",
            "Differences of less than 5 % cannot be told from none, by air kerma of less than 15 %; of less than 40 % where the tube voltage"
                    + " differs and is under 60 kV for a storage phosphor, under 80 kV for gadolinium oxysulphide.",
            "Backscatter is that of thick water: too high for thin parts, such as fingers.",
            "What is offered for less kerma is for people to weigh, never an order: effective dose falls less than entrance kerma, and"
                    + " noise and contrast are not predicted.",
            "Named adjustments are left out. AEC rows are not predicted, since the AEC ends the exposure.");

    private ModelLimits() {}

    static List<String> of(Room room) {
        var sentences = new ArrayList<>(ALWAYS);
        sentences.add("Before rounding to stations: on this console the nearest mAs station lies up to "
                + Figures.two(Stations.roundingDb(room.generator()))
                + " dB off; a step to a kV station is made up for by the 15 % rule, which is graded.");
        if (room.tube().output().isEmpty()) {
            sentences.add("The tube has no measured output: kermas are uncalibrated, off by up to 33 %. "
                    + BeamPhysics.ERRS_HIGH + ".");
        }
        var waveform = room.generator().waveform();
        if (waveform != Waveform.HIGH_FREQUENCY && waveform != Waveform.CONSTANT_POTENTIAL) {
            sentences.add("The tube voltage of this " + waveform.slug()
                    + " generator ripples: its beam is softer than the one predicted.");
        }
        return sentences;
    }
}
