package wallchart.web.view;

import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import wallchart.technique.Step;
import wallchart.technique.Technique;

/** The answer of a room: what to set, how it was derived, what to watch. */
public record TechniqueView(
        String room,
        ChartHeadView chart,
        RowView row,
        AskedView asked,
        ExactView exact,
        SettingView set,
        double roundingDeviation,
        List<Step> steps,
        DoseView dose,
        List<String> cautions) {

    private static final String NO_DOSE =
            "no dose estimate: the beam model does not reach this tube voltage or filtration";

    /** Before any rounding. */
    public record ExactView(double kV, double mAs) {}

    /** @param at the instant it holds for */
    public static TechniqueView of(Technique technique, Instant at) {
        var used = technique.situation();
        return new TechniqueView(
                used.room().id(),
                ChartHeadView.of(technique.chart()),
                RowView.of(used.row()),
                AskedView.of(used, at),
                new ExactView(technique.exact().kV(), technique.exact().mAs()),
                SettingView.of(technique),
                technique.roundingDeviation(),
                technique.steps(),
                technique.dose().map(DoseView::of).orElse(null),
                cautions(technique));
    }

    private static List<String> cautions(Technique technique) {
        return technique.dose().isPresent()
                ? technique.cautions()
                : Stream.concat(Stream.of(NO_DOSE), technique.cautions().stream())
                        .toList();
    }
}
