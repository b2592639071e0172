package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.RoomRevision;
import wallchart.technique.Step;
import wallchart.technique.Technique;

/**
 * The answer of a room: what to set, how it was derived, what to watch.
 *
 * @param chart a {@link ChartHeadView}, written
 * @param row a {@link RowView}, written
 * @param cautions texts, most pressing first; the last one written
 */
public record TechniqueView(
        String room,
        RawValue chart,
        EquipmentHeadView equipment,
        RawValue row,
        AskedView asked,
        ExactView exact,
        SettingView set,
        Double roundingDeviation,
        List<StepView> steps,
        DoseView dose,
        List<Object> cautions) {

    private static final String NO_DOSE =
            "dose not predicted: the beam model does not reach this tube voltage or filtration";

    /** One step of the derivation. */
    public record StepView(String rule, String text, Double kV, Double mAs) {
        static StepView of(Step step) {
            return new StepView(step.rule(), step.text(), step.kV(), step.mAs());
        }
    }

    /** Before any rounding. */
    public record ExactView(Double kV, Double mAs) {}

    /**
     * @param equipment what the room was equipped with
     * @param at the instant asked for, where one was
     * @param first cautions that go before those of the technique: that this is not what the room answers now, that its tube moved
     */
    public static TechniqueView of(
            Technique technique, RoomRevision equipment, Optional<Instant> at, SignedParts signed, List<String> first) {
        var used = technique.situation();
        return new TechniqueView(
                used.room().id(),
                signed.head(technique.chart()),
                EquipmentHeadView.of(equipment),
                signed.row(used.row()),
                AskedView.of(used, at),
                new ExactView(technique.exact().kV(), technique.exact().mAs()),
                SettingView.of(technique),
                technique.roundingDeviation(),
                technique.steps().stream().map(StepView::of).toList(),
                technique.dose().map(DoseView::of).orElse(null),
                cautions(technique, first, signed));
    }

    /** Texts, the last of them written: it stands under every answer. */
    private static List<Object> cautions(Technique technique, List<String> first, SignedParts signed) {
        var own = technique.cautions();
        int last = own.size() - 1;
        var all = new ArrayList<Object>(first);
        if (technique.dose().isEmpty()) {
            all.add(NO_DOSE);
        }
        all.addAll(own.subList(0, last));
        all.add(signed.standing(technique.situation().room().id(), own.get(last)));
        return all;
    }
}
