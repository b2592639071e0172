package wallchart.upkeep;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.time.LocalDate;
import java.time.Period;
import org.junit.jupiter.api.Test;

class OutputDueTest {

    private static final OutputDue YEARLY = new OutputDue(Period.ofMonths(12));

    private final LocalDate measured =
            aRoom().room().tube().output().orElseThrow().measuredOn();

    @Test
    void a_tube_is_due_on_the_same_day_a_year_later_and_overdue_on_the_next() {
        var room = aRoom().room();
        assertThat(YEARLY.day(room)).contains(measured.plusYears(1));
        assertThat(YEARLY.isOverdue(room, measured.plusYears(1))).isFalse();
        assertThat(YEARLY.isOverdue(room, measured.plusYears(1).plusDays(1))).isTrue();
    }

    @Test
    void a_tube_that_nobody_measured_has_no_day_and_is_overdue() {
        var room = aRoom().uncalibrated().room();
        assertThat(YEARLY.day(room)).isEmpty();
        assertThat(YEARLY.isOverdue(room, measured)).isTrue();
    }
}
