package wallchart.physics;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
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
 * @param remarks sentences on half-value layer and filtration, and on measured points that the model cannot reach
 */
public record TubeCalibration(
        Filtration totalFiltration,
        Filtration statedFiltration,
        OutputPair pair,
        List<CalibratedPoint> points,
        List<String> remarks)
        implements TubeFit {

    public TubeCalibration {
        points = List.copyOf(points);
        remarks = List.copyOf(remarks);
    }

    /** Measured over modelled output at a tube voltage, the model taken with the fitted filtration. */
    public double outputFactor(double kilovolts) {
        return pair.at(kilovolts);
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
     * added to it, and it never falls under the least that the model takes.
     */
    public Filtration corrected(Filtration asStated) {
        var more = totalFiltration.aluminiumMillimetres().subtract(statedFiltration.aluminiumMillimetres());
        var least = BigDecimal.valueOf(ModelRange.LEAST_ALUMINIUM);
        return new Filtration(asStated.aluminiumMillimetres().add(more).max(least), asStated.copperMillimetres());
    }

    /** The points that should be measured again or confirmed. */
    public List<CalibratedPoint> questioned() {
        return points.stream().filter(CalibratedPoint::questioned).toList();
    }

    /** Everything that whoever measured should read, the questioned points first. */
    public List<String> sentences() {
        return Stream.concat(questioned().stream().map(CalibratedPoint::sentence), remarks.stream())
                .toList();
    }
}
