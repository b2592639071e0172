package wallchart.planning;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wallchart.chart.Band;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Row;
import wallchart.chart.RowKey;

/**
 * What is left out, as it stands with the change: first of the examinations that do come, where a gap would go unnoticed, then how many
 * rows else; and which thicknesses have no answer then.
 */
final class LeftOutWords {

    private final List<LeftOut> leftOut;
    private final List<Row> after;
    private final List<ExaminationKey> brought;

    /** @param after all rows that the chart would have */
    LeftOutWords(List<LeftOut> leftOut, List<ProposedRow> rows, List<Row> after) {
        this.leftOut = leftOut;
        this.after = after;
        this.brought = rows.stream()
                .map(row -> row.row().key().examination())
                .distinct()
                .toList();
    }

    String words() {
        var near = leftOut.stream().filter(this::isOfBrought).toList();
        int far = leftOut.size() - near.size();
        var words = new StringBuilder();
        if (!near.isEmpty()) {
            words.append("Left out: ")
                    .append(Figures.list(near.stream()
                            .map(left -> left.place().map(RowKey::toString).orElse(left.row()))
                            .toList()))
                    .append(". ");
        }
        if (far > 0) {
            words.append(near.isEmpty() ? "Left out: " : "Also left out: ")
                    .append(far)
                    .append(far == 1 ? " row" : " rows")
                    .append(" of examinations of which nothing comes. ");
        }
        var open = open(near);
        if (!open.isEmpty()) {
            words.append("No answer then for ").append(Figures.list(open)).append(". ");
        }
        return words.toString();
    }

    private boolean isOfBrought(LeftOut left) {
        return left.place().map(RowKey::examination).filter(brought::contains).isPresent();
    }

    private List<String> open(List<LeftOut> near) {
        return near.stream()
                .flatMap(left -> left.place().stream())
                .distinct()
                .flatMap(place -> open(place).stream().map(band -> place.examination() + " " + band + " cm"))
                .collect(Collectors.toList());
    }

    /** The parts of a band that no row of its examination holds. */
    private List<Band> open(RowKey place) {
        var parts = List.of(place.band());
        for (var row : after) {
            if (Overlaps.overlap(row.key(), place)) {
                var held = row.key().band();
                parts = parts.stream()
                        .flatMap(part -> without(part, held).stream())
                        .toList();
            }
        }
        return parts;
    }

    private static List<Band> without(Band part, Band held) {
        if (!part.overlaps(held)) {
            return List.of(part);
        }
        var rest = new ArrayList<Band>();
        if (part.from().compareTo(held.from()) < 0) {
            rest.add(new Band(part.from(), held.from()));
        }
        if (held.to().compareTo(part.to()) < 0) {
            rest.add(new Band(held.to(), part.to()));
        }
        return rest;
    }
}
