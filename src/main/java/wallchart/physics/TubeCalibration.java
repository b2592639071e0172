package wallchart.physics;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import wallchart.quantity.Decimals;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/**
 * The beam model fitted to one measured tube: its filtration from the half-value layer, its output from three or more tube voltages.
 *
 * <p>Within the measured tube voltages the calibrated output holds to 5 % of a consistent measurement; beyond them it is the
 * model's course, scaled.
 *
 * @param totalFiltration the aluminium that gives the measured half-value layer, with the copper as stated; the stated filtration
 *     where no aluminium within the model does
 * @param statedFiltration as whoever measured stated it
 * @param pair measured over modelled output, with the fitted filtration
 * @param points by ascending tube voltage, three or more
 * @param ofHalfValueLayer what is asked about the half-value layer
 * @param ofSize what is asked about the outputs whatever their filtration
 * @param ofCourse what is asked about how they grow with the tube voltage
 * @param remarks sentences on half-value layer and filtration, and on measured points that the model cannot reach
 */
public record TubeCalibration(
        Filtration totalFiltration,
        Filtration statedFiltration,
        OutputPair pair,
        List<CalibratedPoint> points,
        List<TubeQuestion> ofHalfValueLayer,
        List<TubeQuestion> ofSize,
        List<TubeQuestion> ofCourse,
        List<String> remarks)
        implements TubeFit {

    public TubeCalibration {
        points = List.copyOf(points);
        ofHalfValueLayer = List.copyOf(ofHalfValueLayer);
        ofSize = List.copyOf(ofSize);
        ofCourse = List.copyOf(ofCourse);
        remarks = List.copyOf(remarks);
    }

    /** Measured over modelled output at a tube voltage, the model taken with the fitted filtration. */
    public double outputFactor(double kilovolts) {
        return pair.at(kilovolts);
    }

    /**
     * The same beyond the measured tube voltages: the fit with the residual of the nearer end carried over, so that it begins where
     * the measurement ends. Within them, as {@link #outputFactor}.
     */
    public double outputFactorBeyond(double kilovolts) {
        if (covers(kilovolts)) {
            return pair.at(kilovolts);
        }
        var end = points.get(kilovolts < lowest().inKilovolts() ? 0 : points.size() - 1);
        return pair.at(kilovolts) * (1 + end.residualPercent() / 100);
    }

    /** Whether a tube voltage lies within those that were measured and fitted. */
    public boolean covers(double kilovolts) {
        return kilovolts >= lowest().inKilovolts() && kilovolts <= highest().inKilovolts();
    }

    public TubeVoltage lowest() {
        return points.get(0).kV();
    }

    public TubeVoltage highest() {
        return points.get(points.size() - 1).kV();
    }

    /**
     * A filtration of this tube as stated on paper, brought to what the half-value layer says: fitted less stated aluminium is
     * added to it. Where nothing would be left it is none; whether the model takes it is for whoever asks the model.
     */
    public Filtration corrected(Filtration asStated) {
        var more = totalFiltration.aluminiumMillimetres().subtract(statedFiltration.aluminiumMillimetres());
        return new Filtration(
                asStated.aluminiumMillimetres().add(more).max(BigDecimal.ZERO), asStated.copperMillimetres());
    }

    /** What is asked before anything was confirmed. */
    public List<TubeQuestion> questions() {
        return questions(Set.of());
    }

    /**
     * What is asked, confirmed or not, what is most off first. As long as the half-value layer is questioned, course and single outputs are
     * not: they are fitted with the filtration that follows from it. Whoever confirms it is asked about them.
     *
     * @param confirmed codes
     */
    public List<TubeQuestion> questions(Collection<String> confirmed) {
        var asked = new ArrayList<>(ofHalfValueLayer);
        asked.addAll(ofSize);
        if (judged(confirmed)) {
            asked.addAll(ofCourse);
            questioned().forEach(point -> asked.add(point.question()));
        }
        return asked;
    }

    /** Whether course and single outputs can be judged. */
    private boolean judged(Collection<String> confirmed) {
        return confirmed.contains(TubeQuestion.HALF_VALUE_LAYER)
                || ofHalfValueLayer.stream().noneMatch(one -> one.code().equals(TubeQuestion.HALF_VALUE_LAYER));
    }

    /** The points that should be measured again or confirmed, the farthest first. */
    public List<CalibratedPoint> questioned() {
        return points.stream()
                .filter(CalibratedPoint::questioned)
                .sorted(Comparator.comparing(point -> -Math.abs(point.deviationPercent())))
                .toList();
    }

    /** Everything that whoever measured should read, what is questioned first. */
    public List<String> sentences(Collection<String> confirmed) {
        var sentences = new ArrayList<String>();
        for (var question : questions(confirmed)) {
            sentences.add(confirmed.contains(question.code()) ? question.confirmedSentence() : question.sentence());
        }
        sentences.addAll(notes(confirmed));
        return sentences;
    }

    /** What is to be said beside the questions. */
    public List<String> notes(Collection<String> confirmed) {
        var notes = new ArrayList<String>();
        if (!judged(confirmed)) {
            notes.add("the single outputs cannot be judged until the half-value layer is right or confirmed");
        } else if (points.size() == TubeFitting.LEAST_POINTS && !questioned().isEmpty()) {
            notes.add("three tube voltages do not tell which of them is off: measure all three again, or a fourth");
        }
        notes.add(judged(confirmed) ? fit() + within() : fit());
        notes.addAll(remarks);
        return notes;
    }

    private String fit() {
        return "fitted: " + totalFiltration + " in the beam (stated " + statedFiltration + "), output "
                + Decimals.significant(pair.factor(), 3) + " (kV/80)^" + Decimals.significant(pair.exponent(), 2)
                + " of the model's";
    }

    private String within() {
        double farthest = points.stream()
                .mapToDouble(point -> Math.abs(point.residualPercent()))
                .max()
                .orElseThrow();
        return "; the points lie within " + Decimals.significant(farthest, 2) + " % of the fit";
    }
}
