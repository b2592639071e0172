package wallchart.grading;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import wallchart.equipment.Grid;
import wallchart.equipment.SupportKind;
import wallchart.physics.ReceptorResponse;
import wallchart.quantity.Distance;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;
import wallchart.technique.ArrangedBeam;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;

/** The beams of one room that one check needs, each made ready once. For one thread and one check. */
final class Beams {

    private final ExposureModel model;
    private final Map<Key, ArrangedBeam> ready = new HashMap<>();

    /** What tells two arrangements in one room apart. */
    private record Key(
            SupportKind support,
            Optional<String> grid,
            Filtration added,
            FieldSize field,
            Distance sid,
            ReceptorResponse response) {}

    Beams(ExposureModel model) {
        this.model = model;
    }

    ExposureModel model() {
        return model;
    }

    /** @param how always of the same room */
    ArrangedBeam of(Arrangement how, ReceptorResponse response) {
        var key =
                new Key(how.support().kind(), how.grid().map(Grid::id), how.added(), how.field(), how.sid(), response);
        return ready.computeIfAbsent(key, unused -> new ArrangedBeam(model, how, response));
    }
}
