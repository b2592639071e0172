package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import wallchart.signoff.Outcome.Kind;
import wallchart.signoff.Outcome.Refused;
import wallchart.store.OnEveryDatabase;

/** What the tests of the desk have in common: a department with a chart. */
abstract class OnADesk extends OnEveryDatabase {

    DeskFixtures department;
    SignoffDesk desk;

    @BeforeEach
    final void aDepartmentWithAChart() {
        department = DeskFixtures.aDeskIn(database());
        desk = department.desk;
    }

    static void assertRefused(Outcome outcome, Kind kind) {
        assertThat(outcome).isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.kind())
                .as(refused.detail())
                .isEqualTo(kind));
    }
}
