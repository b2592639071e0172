package wallchart.technique;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.chart.ChartVersion;
import wallchart.chart.Row;
import wallchart.chart.RowKey;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;

/**
 * Holds the tube of a room against the one for which its chart was signed. Neither a version nor a state of the equipment ever changes,
 * so each pair is worked out once and remembered: every technique asks. Thread-safe.
 */
public final class OutputWatch {

    private static final int MOST_KEPT = 4096;

    private final ExposureModel model;
    private final EquipmentEffects effects;
    private final Cache<Pair, Optional<OutputSinceSigning>> known =
            Caffeine.newBuilder().maximumSize(MOST_KEPT).executor(Runnable::run).build();

    /** By what was signed and entered, not by numbers, which every department has. */
    private record Pair(int version, String chart, String then, String now) {}

    public OutputWatch(ExposureModel model) {
        this.model = model;
        this.effects = new EquipmentEffects(model);
    }

    /**
     * What became of the output since a version was signed; empty where the equipment is still that of its signature.
     *
     * @param now a state of the room's equipment
     * @param ofRoom all its states, oldest first
     */
    public Optional<OutputSinceSigning> since(ChartVersion version, RoomRevision now, List<RoomRevision> ofRoom) {
        var head = version.head();
        if (!now.inForceFrom().isAfter(head.signature().at())) {
            return Optional.empty();
        }
        var then = atSigning(version, ofRoom);
        return known.get(
                new Pair(head.number(), head.digest(), then.digest(), now.digest()),
                pair -> workedOut(version, then.room(), now.room()));
    }

    /** The state of the equipment that the signer knew; the first, where the version was signed before any was entered. */
    public static RoomRevision atSigning(ChartVersion version, List<RoomRevision> ofRoom) {
        var signed = version.head().signature().at();
        for (int i = ofRoom.size() - 1; i > 0; i--) {
            if (!ofRoom.get(i).inForceFrom().isAfter(signed)) {
                return ofRoom.get(i);
            }
        }
        return ofRoom.get(0);
    }

    private Optional<OutputSinceSigning> workedOut(ChartVersion version, Room then, Room now) {
        return then.tube().equals(now.tube())
                ? Optional.empty()
                : Optional.of(new OutputSinceSigning(
                        version.head().number(),
                        then.tube().output().map(MeasuredOutput::measuredOn),
                        now.tube().output().map(MeasuredOutput::measuredOn),
                        ratios(version.content().rows(), then, now),
                        furthest(then, now)));
    }

    private Map<RowKey, Double> ratios(List<Row> rows, Room then, Room now) {
        var ratios = new LinkedHashMap<RowKey, Double>();
        for (var row : rows) {
            double kV = row.setting().kV().inKilovolts();
            var before = output(then, row, kV);
            var after = output(now, row, kV);
            if (before.isPresent() && after.isPresent()) {
                ratios.put(row.key(), after.getAsDouble() / before.getAsDouble());
            }
        }
        return Collections.unmodifiableMap(ratios);
    }

    private OptionalDouble output(Room room, Row row, double kV) {
        var how = Arrangement.find(room, row)
                .filter(of -> model.findBeamObjection(of, kV).isEmpty());
        return how.isPresent() ? OptionalDouble.of(model.outputPerMAs(how.get(), kV)) : OptionalDouble.empty();
    }

    private OptionalDouble furthest(Room then, Room now) {
        return effects.outputs(then, now).stream()
                .mapToDouble(OutputShift::ratio)
                .reduce((one, other) -> Math.abs(Math.log(other)) > Math.abs(Math.log(one)) ? other : one);
    }
}
