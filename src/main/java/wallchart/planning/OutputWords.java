package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Room;
import wallchart.physics.OutputSurvey;

/**
 * What a transfer says of the output of both tubes, and of where a tube that nobody measured is likely to be wrong.
 *
 * <p>Yardstick: the mean of some 40 radiographic units ({@link OutputSurvey}; it states no filtration). The model with 2.5 to 3.5 mm Al gives more than that at every tube voltage.
 */
final class OutputWords {

    private static final double YARDSTICK_KV = 80;
    private static final double SURVEY_AT_ONE_METRE = OutputSurvey.microGyPerMAs(YARDSTICK_KV);

    private final Models models;
    private final Room from;
    private final Room to;

    OutputWords(Models models, Room from, Room to) {
        this.models = models;
        this.from = from;
        this.to = to;
    }

    List<String> assumptions() {
        var sentences = new ArrayList<String>();
        sentences.add("Room " + from.id() + ": " + output(from) + ". Room " + to.id() + ": " + output(to) + ".");
        if (isMeasured(from) && isMeasured(to)) {
            return sentences;
        }
        sentences.add("Where the output is not measured, the mAs may be off by 30 %: prove it on a phantom first.");
        if (!isMeasured(from) && !isMeasured(to)) {
            sentences.add("What the beam model gives too much or too little of both tubes alike falls out of the mAs;"
                    + " how the two differ does not.");
        } else {
            findLikelyError()
                    .map(error -> "Of the tube in room " + unmeasured().id() + ", " + error.words())
                    .ifPresent(sentences::add);
        }
        return sentences;
    }

    String statement() {
        var outputs = from.id() + ": " + output(from) + "; " + to.id() + ": " + output(to) + ". ";
        return isMeasured(from) == isMeasured(to)
                ? outputs
                : outputs
                        + findLikelyError()
                                .map(error -> "mAs likely some " + error.percent() + " % too " + error.side() + ". ")
                                .orElse("");
    }

    private String output(Room room) {
        boolean fitted = models.calibrations().find(room.tube()).isPresent();
        return room.tube()
                .output()
                .map(MeasuredOutput::measuredOn)
                .map(day -> "output measured " + day + ", beam model " + (fitted ? "fitted to it" : "not fitted to it"))
                .orElse("output not measured, by the beam model, uncalibrated");
    }

    private static boolean isMeasured(Room room) {
        return room.tube().output().isPresent();
    }

    private Room unmeasured() {
        return isMeasured(from) ? to : from;
    }

    /**
     * By how much the mAs is off if the tube that is not measured is like the mean of the survey.
     *
     * @param modelled uGy/mAs at 1 m by the model
     * @param mAsRatio of the mAs that is proposed to the mAs that such a tube needs
     */
    private record LikelyError(double modelled, double mAsRatio) {

        long percent() {
            return Math.round(100 * Math.abs(mAsRatio - 1));
        }

        String side() {
            return mAsRatio < 1 ? "low" : "high";
        }

        String words() {
            double more = 100 * (modelled / SURVEY_AT_ONE_METRE - 1);
            return "the beam model has " + Figures.number(modelled) + " uGy/mAs at " + Figures.number(YARDSTICK_KV)
                    + " kV and 1 m, " + Math.round(Math.abs(more)) + " % " + (more < 0 ? "less" : "more")
                    + " than the mean of some 40 radiographic units (" + Figures.number(SURVEY_AT_ONE_METRE)
                    + ", a medical-physics survey, 2015): if the tube is like those, the mAs proposed are " + percent()
                    + " % too " + side() + ". Measure its output first.";
        }
    }

    private Optional<LikelyError> findLikelyError() {
        var room = unmeasured();
        var modelled = models.exposure().findOutputPerMAs(room.tube(), YARDSTICK_KV);
        if (modelled.isEmpty()) {
            return Optional.empty();
        }
        double ratio = modelled.getAsDouble() / SURVEY_AT_ONE_METRE;
        var error = new LikelyError(modelled.getAsDouble(), room == to ? 1 / ratio : ratio);
        return Optional.of(error).filter(found -> found.percent() > 0);
    }
}
