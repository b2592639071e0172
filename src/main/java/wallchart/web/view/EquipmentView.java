package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.EquipmentDocument;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.RevisionHistory;
import wallchart.equipment.RoomRevision;
import wallchart.upkeep.EquipmentOutcome.Entered;

/**
 * One state of a room's equipment.
 *
 * @param measuredOn day of its measured output; null where nobody measured it
 * @param document as it was written, in the canonical form that the digest covers
 */
public record EquipmentView(
        String room,
        int revision,
        String digest,
        Instant inForceFrom,
        String installedBy,
        String reason,
        LocalDate measuredOn,
        RawValue document) {

    public static EquipmentView of(RevisionHistory told, EquipmentDocument document) {
        var revision = told.revision();
        return new EquipmentView(
                revision.room().id(),
                revision.number(),
                revision.digest(),
                revision.inForceFrom(),
                revision.installedBy(),
                told.reason(),
                measuredOn(revision),
                new RawValue(document.canonical().text()));
    }

    private static LocalDate measuredOn(RoomRevision revision) {
        return revision.room().tube().output().map(MeasuredOutput::measuredOn).orElse(null);
    }

    /**
     * One line of the history.
     *
     * @param confirmed codes of what was confirmed although it was questioned
     * @param affectedRows rows of the charts of that day to look at; null where nobody worked it out
     * @param largestOutputRatio output after over before, where it changed most; null where it is not known
     * @param largestOutputRatioAt the kV and the filtration of that, in words; null where it is not known
     */
    public record LineView(
            int revision,
            String digest,
            Instant inForceFrom,
            String installedBy,
            String reason,
            LocalDate measuredOn,
            List<String> confirmed,
            Integer affectedRows,
            String largestOutputRatio,
            String largestOutputRatioAt) {
        static LineView of(RevisionHistory told) {
            var revision = told.revision();
            return new LineView(
                    revision.number(),
                    revision.digest(),
                    revision.inForceFrom(),
                    revision.installedBy(),
                    told.reason(),
                    EquipmentView.measuredOn(revision),
                    told.confirmed(),
                    detail(told, "affectedRows").map(Integer::valueOf).orElse(null),
                    detail(told, "largestOutputRatio").orElse(null),
                    detail(told, "largestOutputRatioAt").orElse(null));
        }

        private static Optional<String> detail(RevisionHistory told, String name) {
            return told.event().flatMap(event -> event.detail(name));
        }
    }

    /** Every state of a room's equipment, newest first. */
    public record History(String room, List<LineView> revisions) {
        public static History of(String room, List<RevisionHistory> oldestFirst) {
            var lines = new ArrayList<LineView>();
            oldestFirst.forEach(told -> lines.add(0, LineView.of(told)));
            return new History(room, lines);
        }
    }

    /**
     * What was entered, and what it does.
     *
     * @param changed false where it says what was in force already
     */
    public record EnteredView(
            String room,
            int revision,
            String digest,
            Instant inForceFrom,
            String installedBy,
            int replaces,
            boolean changed,
            EffectsView effects) {
        public static EnteredView of(Entered entered) {
            var after = entered.after();
            boolean changed = after.number() != entered.before().number();
            return new EnteredView(
                    after.room().id(),
                    after.number(),
                    after.digest(),
                    after.inForceFrom(),
                    after.installedBy(),
                    entered.before().number(),
                    changed,
                    EffectsView.of(entered.before(), entered.effects()));
        }
    }
}
