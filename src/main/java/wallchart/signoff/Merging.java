package wallchart.signoff;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import wallchart.chart.ChartContent;
import wallchart.chart.Row;
import wallchart.chart.RowKey;

/**
 * What a change makes of the newest version, also where others published since its author looked: their rows stay, the author's rows
 * are put in, and a row that both touched is a conflict. Pure; asks for past versions through a function it is given.
 */
final class Merging {

    private final int newestNumber;
    private final ChartContent newest;
    private final IntFunction<ChartContent> past;

    /**
     * @param newestNumber of the version to be changed, 0 where the room has none
     * @param newest its content
     * @param past the content of an earlier version by its number
     */
    Merging(int newestNumber, ChartContent newest, IntFunction<ChartContent> past) {
        this.newestNumber = newestNumber;
        this.newest = newest;
        this.past = past;
    }

    /** The proposal as it stands against the newest version; where there are conflicts, the author's side is shown. */
    Proposal of(Change change, Edits edits) {
        return new Proposal(change, edits, newestNumber, newest, after(edits), conflicts(edits));
    }

    private ChartContent after(Edits edits) {
        var rows = new ArrayList<>(newest.rows());
        edits.rows().forEach(edit -> apply(rows, edit));
        return new ChartContent(
                rows, edits.adjustments().map(Edits.AdjustmentsEdit::wanted).orElse(newest.adjustments()));
    }

    private static void apply(List<Row> rows, RowEdit edit) {
        int place = place(rows, edit.key());
        if (edit.wanted().isEmpty()) {
            rows.removeIf(row -> row.key().equals(edit.key()));
        } else if (place >= 0) {
            rows.set(place, edit.row());
        } else {
            rows.add(afterItsExamination(rows, edit.key()), edit.row());
        }
    }

    private static int place(List<Row> rows, RowKey key) {
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).key().equals(key)) {
                return i;
            }
        }
        return -1;
    }

    /** Behind the last row of the same examination, where people look for it; else at the end. */
    private static int afterItsExamination(List<Row> rows, RowKey key) {
        for (int i = rows.size(); i > 0; i--) {
            if (rows.get(i - 1).key().examination().equals(key.examination())) {
                return i;
            }
        }
        return rows.size();
    }

    private List<String> conflicts(Edits edits) {
        var conflicts = new ArrayList<String>();
        edits.rows().stream()
                .filter(this::isMoved)
                .forEach(edit -> conflicts.add(edit.key().toString()));
        edits.adjustments().filter(this::isMoved).ifPresent(edit -> conflicts.add(Proposal.ADJUSTMENTS));
        return conflicts;
    }

    /** Others made of the row neither what it was nor what the author wants. */
    private boolean isMoved(RowEdit edit) {
        var now = newest.findRow(edit.key());
        return !now.equals(content(edit.basedOn()).findRow(edit.key())) && !now.equals(edit.wanted());
    }

    private boolean isMoved(Edits.AdjustmentsEdit edit) {
        return !newest.adjustments().equals(content(edit.basedOn()).adjustments())
                && !newest.adjustments().equals(edit.wanted());
    }

    private ChartContent content(int version) {
        return version == newestNumber ? newest : past.apply(version);
    }
}
