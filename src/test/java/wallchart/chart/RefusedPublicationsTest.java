package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.PublishingFixtures.draft;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.Publication.NotPermitted;
import wallchart.chart.Publication.Published;
import wallchart.chart.Publication.Refused;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

class RefusedPublicationsTest extends OnEveryDatabase {

    private Actor lead;
    private PublishingFixtures department;
    private Charts charts;

    @BeforeEach
    void a_department_with_a_room() {
        department = PublishingFixtures.aDepartmentIn(database());
        lead = department.lead();
        charts = department.charts();
    }

    @Test
    void only_a_lead_with_an_account_may_publish() {
        var draft = draft(0, aChart().withBand(18, 24).content());
        var id = lead.personId().getAsLong();
        for (var other : List.of(
                Actor.person(id, "lead", "physicist"),
                Actor.person(id, "lead", "administrator"),
                Actor.person(id + 1000, "nobody", "lead"),
                Actor.workstation("r1"),
                Actor.system("lead"))) {
            assertThat(charts.publish(other, draft)).isInstanceOf(NotPermitted.class);
        }
        assertThat(charts.versions("r1")).isEmpty();
    }

    @Test
    void the_words_around_a_version_must_say_something() {
        var good = draft(0, aChart().withBand(18, 24).content());
        assertRefused(with(good, " ", good.reason(), good.meaning()), "has 0 visible characters");
        assertRefused(with(good, good.title(), " a b c d e f g h i ", good.meaning()), "has 9 visible characters");
        assertRefused(with(good, good.title(), "x".repeat(2001), good.meaning()), "at most 2000");
        assertRefused(with(good, good.title(), good.reason(), "a\u0000b"), "control character");
    }

    @Test
    void a_review_lies_after_the_version_comes_into_force() {
        var late = Optional.of(Instant.parse("2027-03-03T00:00:00Z"));
        assertRefused(draft(0, aChart().withBand(18, 24).content(), late), "name a later day");
    }

    @Test
    void a_chart_needs_a_room() {
        var good = draft(0, aChart().withBand(18, 24).content());
        assertRefused(
                new Draft(
                        "r9",
                        0,
                        good.content(),
                        good.title(),
                        good.reason(),
                        good.meaning(),
                        good.inForceFrom(),
                        good.reviewDue()),
                "\"r9\" is no room");
    }

    @Test
    void content_that_equals_its_base_is_refused() {
        department.publish(0, aChart().withBand(18, 24).content());
        assertRefused(draft(1, aChart().withBand(18, 24).content()), "nothing differs from version 1");
    }

    @Test
    void blocking_findings_stop_a_version() {
        var publication = charts.publish(
                lead, draft(0, aChart().withBand(18, 24).withBand(20, 30).content()));
        assertThat(((Refused) publication).findings())
                .extracting(Finding::field)
                .containsExactly("bandFromCm");
        assertThat(department.charts().versions("r1")).isEmpty();
    }

    @Test
    void cautions_are_told_and_do_not_stop_a_version() {
        var publication = charts.publish(
                lead, draft(0, aChart().with(aRow().withMAs("24")).content()));
        assertThat(((Published) publication).cautions())
                .extracting(Finding::field)
                .containsExactly("mAs");
    }

    private static Draft with(Draft draft, String title, String reason, String meaning) {
        return new Draft(
                draft.room(),
                draft.baseVersion(),
                draft.content(),
                title,
                reason,
                meaning,
                draft.inForceFrom(),
                draft.reviewDue());
    }

    private void assertRefused(Draft draft, String reason) {
        assertThat(charts.publish(lead, draft))
                .isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.findings())
                        .anySatisfy(finding -> assertThat(finding.reason()).contains(reason)));
    }
}
