package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.addingKV;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.equipment.Rooms;
import wallchart.store.OnEveryDatabase;

/** Whoever may add rows could add some in the name of a version signed before; its digest shows it. */
class AddedToSignedRecordsTest extends OnEveryDatabase {

    private PublishingFixtures department;

    @BeforeEach
    void a_version_is_signed() {
        department = PublishingFixtures.aDepartmentIn(database());
        var content = aChart().withBand(18, 24)
                .withBand(24, 30)
                .with(addingKV("cast", "5"))
                .content();
        department.publish(0, content);
    }

    private void execute(String statement) {
        database().run(department.lead(), tx -> tx.handle().execute(statement));
    }

    @Test
    void an_untouched_version_answers() {
        assertThat(department.charts().version("r1", 1)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "INSERT INTO chart_row_retired (row_id, room, retired_in) SELECT MIN(id), room, 1 FROM chart_row GROUP BY room",
                "INSERT INTO chart_adjustment_retired (adjustment_id, room, retired_in)"
                        + " SELECT id, room, 1 FROM chart_adjustment",
                "INSERT INTO chart_adjustment (room, introduced_in, ordinal, name, label, add_kv, notes)"
                        + " VALUES ('r1', 1, 999999, 'other', 'Other', 20, '')",
            })
    void a_version_to_which_something_was_added_does_not_answer(String addition) {
        execute(addition);
        assertThatThrownBy(department::charts)
                .hasMessage("version 1 of room r1 is not what was signed any more: its rows do not match its digest;"
                        + " restore a backup");
    }

    @Test
    void equipment_that_does_not_match_its_digest_is_not_used() {
        execute("INSERT INTO equipment_revision (room, revision, document, digest, in_force_from, installed_by)"
                + " SELECT room, 2, document, 'sha256:0', in_force_from, installed_by FROM equipment_revision");
        assertThatThrownBy(() -> new Rooms(database())).hasMessageContaining("is not what was installed any more");
    }
}
