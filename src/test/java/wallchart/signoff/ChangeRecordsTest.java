package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.revision;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.audit.Verification;
import wallchart.store.Actor;

/** What is changed by hand in the tables of changes stays visible, also where the service goes on afterwards. */
class ChangeRecordsTest extends OnADesk {

    private void byHand(String statement) {
        database().run(Actor.system("somebody"), tx -> tx.handle().execute(statement));
    }

    @Test
    void an_author_written_over_before_the_signature_is_found_after_it() {
        var change = department.submittedSmall(1, "28");
        LedgerSoundness.assertSound(database());
        byHand("UPDATE chart_change SET author = (SELECT id FROM person WHERE name = 'colleague')");
        done(department.sign(department.lead, change));
        assertThat(LedgerSoundness.verify(database()))
                .isInstanceOfSatisfying(Verification.Doubtful.class, doubt -> assertThat(doubt.what())
                        .contains("change/" + change.id() + " was not as its events had left it"));
    }

    @Test
    void an_edit_written_over_is_found_also_after_the_change_was_withdrawn() {
        var change =
                department.put(department.opened(1), DeskFixtures.row(18, 24).withMAs("28"));
        byHand("UPDATE chart_change_row SET based_on = 0");
        done(desk.withdraw(department.author, change.id(), revision(change)));
        assertThat(LedgerSoundness.verify(database())).isInstanceOf(Verification.Doubtful.class);
    }

    @Test
    void every_step_in_turn_is_sound() {
        var change = department.submittedSmall(1, "28");
        change = done(desk.concur(department.physicist, change.id(), revision(change), Optional.empty()));
        change = done(desk.giveBack(department.lead, change.id(), revision(change), DeskFixtures.REASON));
        change = department.submitted(change);
        done(department.sign(department.lead, change));
        LedgerSoundness.assertSound(database());
    }
}
