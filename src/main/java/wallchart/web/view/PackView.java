package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.VersionHead;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;

/**
 * What a room takes along for the time when nobody answers: its chart, what the page shows of room and department, and the answer to
 * each question there at steps of thickness, worked out beforehand. How answers are written says {@link AnswerForms}.
 *
 * @param next the version that comes into force after this one, where one is signed already; else null
 * @param cautions that stand under every answer
 * @param answers by the key of their row
 * @param outside refusals of thicknesses in no band, by examination and support; {@code {thickness}} stands for what was asked
 * @param supports refusals of a support not said, or not charted, by examination; {@code {support}} stands for what was asked
 */
public record PackView(
        int format,
        String room,
        String roomName,
        BigDecimal stepCm,
        SiteView site,
        ChartHeadView chart,
        EquipmentHeadView equipment,
        NextView next,
        List<SupportView> supports,
        List<GridView> grids,
        List<ReceptorView> receptors,
        List<AdjustmentView> adjustments,
        List<String> cautions,
        List<RowView> rows,
        List<RawValue> forms,
        List<String> texts,
        Map<String, RowAnswers> answers,
        Map<String, List<Outside>> outside,
        Map<String, SupportAnswers> supportRefusals) {

    /** A version that is signed and not in force yet. */
    public record NextView(int version, Instant inForceFrom) {
        static NextView of(VersionHead head) {
            return new NextView(head.number(), head.inForceFrom());
        }
    }

    /**
     * The answers of one row; a list of one answer stands for all thicknesses.
     *
     * @param thicknessCm ascending, all in the row's band
     * @param plain as the row is
     * @param adjusted with one named adjustment
     * @param grids with another grid of the room
     */
    public record RowAnswers(
            List<BigDecimal> thicknessCm,
            List<RawValue> plain,
            Map<String, List<RawValue>> adjusted,
            Map<String, List<RawValue>> grids) {}

    /** What is said from one thickness up to, and not including, another. */
    public record Outside(BigDecimal fromCm, BigDecimal toCm, RawValue answer) {}

    /** What is said where no support was given, and where one was given that is not charted; null where neither can be. */
    public record SupportAnswers(RawValue missing, RawValue other) {}

    /** What a pack says beside its answers. */
    public record Head(
            Room room,
            RoomRevision equipment,
            VersionHead chart,
            Optional<VersionHead> next,
            SiteView site,
            List<AdjustmentView> adjustments,
            List<String> cautions,
            List<RowView> rows) {}

    /** Head and answers together. */
    public static PackView of(
            Head head,
            BigDecimal stepCm,
            AnswerForms forms,
            Map<String, RowAnswers> answers,
            Map<String, List<Outside>> outside,
            Map<String, SupportAnswers> supports) {
        return new PackView(
                1,
                head.room().id(),
                head.room().name(),
                stepCm,
                head.site(),
                ChartHeadView.of(head.chart()),
                EquipmentHeadView.of(head.equipment()),
                head.next().map(NextView::of).orElse(null),
                head.room().supports().stream().map(SupportView::of).toList(),
                head.room().grids().stream().map(GridView::of).toList(),
                head.room().receptors().stream().map(ReceptorView::of).toList(),
                head.adjustments(),
                head.cautions(),
                head.rows(),
                forms.forms(),
                forms.texts(),
                answers,
                outside,
                supports);
    }
}
