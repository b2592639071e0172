package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.chart.RowReading.Problem;
import wallchart.equipment.Room;

/**
 * The rows that a transfer is about, or what is wrong with how they are named.
 *
 * @param rows in the order of their chart
 * @param problems by the members of a request
 */
record TransferSelection(List<Row> rows, List<Problem> problems) {

    static TransferSelection of(ChartContent theirs, Room from, Room to, RoomTransfer asked) {
        var problems = new ArrayList<Problem>();
        checkFilters(theirs, asked, problems);
        var parts = new Counterparts(from, to, asked);
        parts.unknownSupports().forEach(name -> problems.add(unknown("supports", name, from, to)));
        parts.unknownGrids().forEach(name -> problems.add(unknown("grids", name, from, to)));
        parts.unknownReceptors().forEach(name -> problems.add(unknown("receptors", name, from, to)));
        var rows = theirs.rows().stream().filter(row -> isWanted(row, asked)).toList();
        if (problems.isEmpty() && rows.isEmpty()) {
            problems.add(new Problem(
                    "examinations", "none of them is of the body part that is named: name one of the two, or none"));
        }
        return new TransferSelection(rows, problems);
    }

    private static void checkFilters(ChartContent theirs, RoomTransfer asked, List<Problem> problems) {
        var version = "version " + asked.fromVersion() + " of room " + asked.fromRoom();
        asked.bodyPart()
                .filter(part -> theirs.rows().stream().noneMatch(row -> isOf(row, part)))
                .ifPresent(part -> problems.add(new Problem("bodyPart", version + " has no rows of it: see its rows")));
        for (int i = 0; i < asked.examinations().size(); i++) {
            var examination = asked.examinations().get(i);
            if (theirs.rows().stream().noneMatch(row -> examination(row).equals(examination))) {
                problems.add(new Problem(
                        "examinations/" + i,
                        version + " has no rows of it: write it as in KNEE/ap/adult/table-bucky, see its rows"));
            }
        }
    }

    private static boolean isWanted(Row row, RoomTransfer asked) {
        return asked.bodyPart().map(part -> isOf(row, part)).orElse(true)
                && (asked.examinations().isEmpty() || asked.examinations().contains(examination(row)));
    }

    private static boolean isOf(Row row, String bodyPart) {
        return row.key().examination().bodyPart().equals(bodyPart);
    }

    private static String examination(Row row) {
        return row.key().examination().toString();
    }

    private static Problem unknown(String member, String name, Room from, Room to) {
        return new Problem(
                member + "/" + name,
                "room " + from.id() + " must have the one, room " + to.id()
                        + " the other: look at the rooms' equipment");
    }
}
