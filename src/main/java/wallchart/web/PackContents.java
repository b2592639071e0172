package wallchart.web;

import com.fasterxml.jackson.databind.util.RawValue;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.Adjustment;
import wallchart.chart.Row;
import wallchart.chart.VersionHead;
import wallchart.equipment.Grid;
import wallchart.quantity.PartThickness;
import wallchart.technique.Query;
import wallchart.technique.StandingCaution;
import wallchart.web.RoomAnswers.Standing;
import wallchart.web.view.AdjustmentView;
import wallchart.web.view.Json;
import wallchart.web.view.PackView;
import wallchart.web.view.PackView.RowAnswers;
import wallchart.web.view.RowView;
import wallchart.web.view.SiteView;

/**
 * What a room takes along: the answer to each question that its chart can be asked at steps of thickness, plainly, with each named
 * adjustment, and with each other grid of the room.
 */
final class PackContents {

    private final Standing standing;
    private final PackAnswers answers;

    private PackContents(Standing standing, PackAnswers answers) {
        this.standing = standing;
        this.answers = answers;
    }

    /**
     * All of it as JSON; tens of thousands of answers, so a second or more.
     *
     * @param next the version that comes into force after this one
     */
    static byte[] json(RoomAnswers answers, Standing standing, Optional<VersionHead> next, SiteFacts site) {
        return Json.bytes(new PackContents(standing, new PackAnswers(answers, standing)).view(next, site));
    }

    private PackView view(Optional<VersionHead> next, SiteFacts site) {
        var rows = standing.chart().content().rows();
        var byRow = new LinkedHashMap<String, RowAnswers>();
        rows.forEach(row -> byRow.put(row.key().toString(), answers(row)));
        var refusals = new PackRefusals(answers, rows);
        var outside = refusals.outside();
        var supports = refusals.supports();
        return PackView.of(head(next, site), PackThicknesses.STEP_CM, answers.forms(), byRow, outside, supports);
    }

    private PackView.Head head(Optional<VersionHead> next, SiteFacts site) {
        return new PackView.Head(
                standing.equipment().room(),
                standing.equipment(),
                standing.chart().head(),
                next,
                SiteView.of(site.name(), site.lengthUnit(), site.patientGroups(), site.invented()),
                adjustments().map(AdjustmentView::of).toList(),
                List.of(StandingCaution.of(standing.room())),
                standing.chart().content().rows().stream().map(RowView::of).toList());
    }

    private Stream<Adjustment> adjustments() {
        return standing.chart().content().adjustments().stream();
    }

    private Stream<String> gridChoices() {
        return Stream.concat(
                Stream.of(Grid.NONE),
                standing.equipment().room().grids().stream().map(Grid::id));
    }

    private RowAnswers answers(Row row) {
        var at = PackThicknesses.of(row.key().band());
        Map<String, List<RawValue>> adjusted = new LinkedHashMap<>();
        adjustments()
                .map(Adjustment::name)
                .forEach(name -> adjusted.put(name, all(row, at, Optional.empty(), List.of(name))));
        Map<String, List<RawValue>> grids = new LinkedHashMap<>();
        gridChoices()
                .filter(grid -> !grid.equals(row.setting().grid()))
                .forEach(grid -> grids.put(grid, all(row, at, Optional.of(grid), List.of())));
        return new RowAnswers(
                at.stream().map(PartThickness::centimetres).toList(),
                all(row, at, Optional.empty(), List.of()),
                adjusted,
                grids);
    }

    /** One answer alone where all are the same. */
    private List<RawValue> all(Row row, List<PartThickness> at, Optional<String> grid, List<String> adjustments) {
        var key = row.key().examination();
        var told = at.stream()
                .map(thickness -> answers.ask(new Query(
                        key.bodyPart(),
                        key.projection(),
                        key.patientGroup(),
                        thickness,
                        Optional.of(key.support()),
                        Optional.empty(),
                        grid,
                        adjustments)))
                .toList();
        return told.stream().distinct().count() == 1 ? told.subList(0, 1) : told;
    }
}
