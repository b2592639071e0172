package wallchart.equipment;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import wallchart.store.CanonicalJson;

/**
 * Equipment of one room as people write it: the shape of {@code equipment.yaml}, of the stored revision and of the HTTP body.
 *
 * <p>Anything may be missing here (null); {@link EquipmentReader} says what must not be. Units stand in the names.
 */
public record EquipmentDocument(
        String room,
        String name,
        GeneratorPart generator,
        TubePart tube,
        List<GridPart> grids,
        List<ReceptorPart> receptors,
        List<SupportPart> supports) {

    /** Canonical JSON (RFC 8785) of what is written. */
    public CanonicalJson canonical() {
        return EquipmentEncoding.canonical(this);
    }

    /** Whether both, which have a tube, have the same measurement of its output, however the numbers are written. */
    public boolean measuresAs(EquipmentDocument other) {
        return EquipmentEncoding.canonical(Arrays.asList(tube.output()))
                .equals(EquipmentEncoding.canonical(Arrays.asList(other.tube.output())));
    }

    public record GeneratorPart(
            String waveform,
            StationsPart kV,
            StationsPart mAs,
            StationsPart mA,
            BigDecimal shortestTimeMs,
            ExposureControlPart aec) {}

    /** Either {@code stations}, or {@code from, to, step}, or {@code series, from, to}. */
    public record StationsPart(
            List<BigDecimal> stations, BigDecimal from, BigDecimal to, BigDecimal step, String series) {}

    public record ExposureControlPart(List<Integer> densities, BigDecimal largestBackupMAs) {}

    public record TubePart(
            BigDecimal anodeAngleDeg,
            BigDecimal totalFiltrationMmAl,
            BigDecimal totalFiltrationMmCu,
            List<FocalSpotPart> focalSpots,
            OutputPart output) {}

    public record FocalSpotPart(String name, BigDecimal nominalMm, List<RatingPart> rating) {}

    public record RatingPart(BigDecimal timeMs, BigDecimal kW) {}

    public record OutputPart(
            LocalDate measuredOn,
            BigDecimal totalFiltrationMmAl,
            BigDecimal totalFiltrationMmCu,
            BigDecimal hvlMmAl,
            BigDecimal hvlAtKV,
            BigDecimal uncertaintyPercent,
            List<OutputPointPart> microGyPerMAsAtOneMetre) {}

    public record OutputPointPart(BigDecimal kV, BigDecimal output) {}

    public record GridPart(
            String id,
            BigDecimal ratio,
            BigDecimal linesPerCm,
            BigDecimal focalDistanceCm,
            RangePart focalRangeCm,
            List<GridFactorPart> factors) {}

    public record RangePart(BigDecimal from, BigDecimal to) {}

    public record GridFactorPart(BigDecimal kV, BigDecimal factor) {}

    public record ReceptorPart(
            String id, String name, String kind, List<String> sizesCm, Integer targetExposureIndex) {}

    public record SupportPart(
            String kind,
            BigDecimal receptorGapCm,
            DistancesPart sidCm,
            List<String> grids,
            List<String> receptors,
            List<String> aecChambers) {}

    /** Either {@code from, to} or {@code stations}. */
    public record DistancesPart(BigDecimal from, BigDecimal to, List<BigDecimal> stations) {}
}
