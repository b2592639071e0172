package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.revision;

import java.util.Optional;
import java.util.concurrent.atomic.AtomicBoolean;
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

    /** A check that runs while people work sees each act with its event, or neither. */
    @Test
    void a_check_in_the_middle_of_work_raises_no_alarm() throws Exception {
        var atWork = new AtomicBoolean(true);
        var worker = new Thread(() -> {
            for (int version = 1; atWork.get(); version++) {
                var change = department.submittedSmall(version, String.valueOf(25 + version % 4));
                done(department.sign(department.lead, change));
            }
        });
        worker.start();
        try {
            for (int check = 0; check < 60; check++) {
                LedgerSoundness.assertSound(database());
            }
        } finally {
            atWork.set(false);
            worker.join();
        }
        assertThat(department.charts.versions("r1")).hasSizeGreaterThan(5);
    }
}
