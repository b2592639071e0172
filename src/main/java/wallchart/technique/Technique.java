package wallchart.technique;

import java.util.List;
import java.util.Optional;
import wallchart.chart.VersionHead;

/**
 * The answer: what to set, how it was derived, what to watch.
 *
 * @param chart the version it comes from
 * @param situation the row and what was used with it
 * @param exact tube voltage and current-time product after the kV limits, before any rounding
 * @param set what to set
 * @param roundingDeviation dB by which rounding the mAs to a station moves the receptor exposure
 * @param heatUnits heat units of the exposure; of an AEC exposure at most
 * @param steps the derivation, in order
 * @param dose absent where the beam model does not reach
 * @param cautions what to watch, most pressing first
 */
public record Technique(
        VersionHead chart,
        Situation situation,
        Working exact,
        ConsoleSetting set,
        double roundingDeviation,
        double heatUnits,
        List<Step> steps,
        Optional<DoseEstimate> dose,
        List<String> cautions) {}
