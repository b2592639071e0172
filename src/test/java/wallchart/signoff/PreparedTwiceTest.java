package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.row;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

/** Whoever sends a whole draft twice, for want of an answer, has one change and not two. */
class PreparedTwiceTest extends OnEveryDatabase {

    private DeskFixtures department;

    @BeforeEach
    void a_desk() {
        department = DeskFixtures.aDeskIn(database());
    }

    private Outcome prepared(Actor by, String title, String mAs) {
        var wanted = new Preparation(List.of(fields(row(12, 18).withMAs(mAs))), List.of(), Optional.empty());
        return department.desk.prepare(by, "r1", title, REASON, 1, wanted);
    }

    @Test
    void the_same_draft_of_the_same_person_is_refused_with_its_number_while_it_is_open() {
        var first = DeskFixtures.done(prepared(department.author, "Thin patients", "10"));
        var again = (Outcome.Refused) prepared(department.author, "Thin patients", "10");
        assertThat(again.kind()).isEqualTo(Outcome.Kind.WRONG_STATE);
        assertThat(again.detail()).startsWith("change " + first.id() + " of yours");
        DeskFixtures.done(department.desk.withdraw(department.author, first.id(), 1));
        DeskFixtures.done(prepared(department.author, "Thin patients", "10"));
    }

    @Test
    void another_title_another_row_and_another_person_are_another_draft() {
        DeskFixtures.done(prepared(department.author, "Thin patients", "10"));
        DeskFixtures.done(prepared(department.author, "Thinner patients", "10"));
        DeskFixtures.done(prepared(department.author, "Thin patients", "12.5"));
        DeskFixtures.done(prepared(department.colleague, "Thin patients", "10"));
    }
}
