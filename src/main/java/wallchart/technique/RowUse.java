package wallchart.technique;

import java.util.List;
import java.util.Optional;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.technique.ConsoleAttempt.Achieved;
import wallchart.technique.ConsoleAttempt.Impossible;
import wallchart.technique.ConsoleAttempt.Wish;

/** What a room makes of a row as it is written, at its reference thickness: a console setting, or every reason why there is none. */
sealed interface RowUse {

    /** It can be set. */
    record Usable(Arrangement how, ConsoleSetting set) implements RowUse {}

    /** It cannot. */
    record Unusable(List<String> reasons) implements RowUse {}

    static RowUse of(Room room, Row row) {
        var objection = Refit.objection(room, row);
        if (objection.isPresent()) {
            return new Unusable(objection.get().reasons());
        }
        var how = Arrangement.find(room, row).orElseThrow();
        var misfit = misfit(how, row);
        if (misfit.isPresent()) {
            return new Unusable(List.of(misfit.get()));
        }
        var wish = new Wish(Working.of(row, List.of()), row.setting().focalSpot());
        var attempt = new Console(room, row).attempt(wish);
        return attempt instanceof Achieved achieved
                ? new Usable(how, achieved.set())
                : new Unusable(((Impossible) attempt).reasons());
    }

    private static Optional<String> misfit(Arrangement how, Row row) {
        if (!how.support().sids().allows(how.sid())) {
            return Optional.of("SID " + how.sid() + " is not possible at "
                    + how.support().kind().slug() + ", which allows "
                    + how.support().sids());
        }
        return how.focusSkinCentimetres(row.referenceThickness().inCentimetres()) > 0
                ? Optional.empty()
                : Optional.of("SID " + how.sid() + " leaves no room for " + row.referenceThickness()
                        + " and a receptor gap of " + how.support().receptorGap());
    }
}
