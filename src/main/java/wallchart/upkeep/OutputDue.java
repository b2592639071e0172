package wallchart.upkeep;

import java.time.LocalDate;
import java.time.Period;
import java.util.Optional;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Room;

/**
 * When the output of a room's tube is to be measured again. A tube ages, and the dose estimates rest on its last measurement; a date
 * that has passed is a reminder and blocks nothing.
 *
 * @param every from one measurement to the next; a year is common practice, no source
 */
public record OutputDue(Period every) {

    /** The day by which the tube is to be measured again; empty where nobody measured it yet. */
    public Optional<LocalDate> day(Room room) {
        return room.tube().output().map(MeasuredOutput::measuredOn).map(measured -> measured.plus(every));
    }

    /** Whether that day has passed, or the tube was never measured. */
    public boolean isOverdue(Room room, LocalDate today) {
        return day(room).map(today::isAfter).orElse(true);
    }
}
