package wallchart.equipment;

import java.util.List;
import java.util.function.Predicate;

/** What must agree between the parts of a room: names that refer to each other, and stations that the tube can bear. */
final class RoomChecks {

    private RoomChecks() {}

    static void check(Room room, ReadingProblems problems) {
        for (int i = 0; i < room.supports().size(); i++) {
            var support = room.supports().get(i);
            var field = "/supports/" + i;
            requireKnown(
                    problems,
                    field + "/grids",
                    support.grids(),
                    id -> id.equals(Grid.NONE) || room.findGrid(id).isPresent());
            requireKnown(problems, field + "/receptors", support.receptors(), id -> room.findReceptor(id)
                    .isPresent());
            if (!support.chambers().isEmpty()
                    && room.generator().automaticExposureControl().isEmpty()) {
                problems.add(field + "/aecChambers", "the generator has no AEC: leave them out or give generator/aec");
            }
        }
        checkFocalSpots(room, problems);
    }

    private static void requireKnown(
            ReadingProblems problems, String field, List<String> ids, Predicate<String> known) {
        ids.stream()
                .filter(known.negate())
                .forEach(id -> problems.add(
                        field, "\"" + id + "\" is not among the room's own: add it there or correct the name"));
    }

    private static void checkFocalSpots(Room room, ReadingProblems problems) {
        for (int i = 0; i < room.tube().focalSpots().size(); i++) {
            var spot = room.tube().focalSpots().get(i);
            if (spot.longestTime().compareTo(room.generator().shortestTime()) < 0) {
                problems.add(
                        "/tube/focalSpots/" + i + "/rating",
                        "ends at " + spot.longestTime() + ", under the generator's shortest exposure time "
                                + room.generator().shortestTime() + ": the focal spot could never be used");
            }
        }
    }
}
