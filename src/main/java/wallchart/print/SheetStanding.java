package wallchart.print;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;

/** Whether what stands on a printed sheet still holds. */
public sealed interface SheetStanding {

    /** The word used in answers. */
    String slug();

    /**
     * It says what the room page says.
     *
     * @param until when a version that is signed already comes into force
     * @param reviewOverdueSince the day by which its version was to be reviewed, where that has passed
     */
    record Current(Optional<Instant> until, Optional<LocalDate> reviewOverdueSince) implements SheetStanding {
        @Override
        public String slug() {
            return "current";
        }
    }

    /**
     * Another version of the chart is in force.
     *
     * @param since the first instant at which it did not hold any more
     * @param by number of the version in force now
     */
    record Superseded(Instant since, int by) implements SheetStanding {
        @Override
        public String slug() {
            return "superseded";
        }
    }

    /**
     * The rows still hold, but the room was equipped or measured anew.
     *
     * @param revision of the equipment in force now
     */
    record EquipmentMoved(Instant since, int revision) implements SheetStanding {
        @Override
        public String slug() {
            return "equipment-moved";
        }
    }
}
