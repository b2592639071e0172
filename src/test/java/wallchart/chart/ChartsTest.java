package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.chart.PublishingFixtures.draft;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.Publication.Outdated;
import wallchart.chart.Publication.Published;
import wallchart.chart.Publication.Refused;
import wallchart.equipment.Chamber;
import wallchart.quantity.Filtration;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;
import wallchart.store.StoreException;

class ChartsTest extends OnEveryDatabase {

    private Actor lead;
    private PublishingFixtures department;
    private Charts charts;

    @BeforeEach
    void a_department_with_a_room() {
        department = PublishingFixtures.aDepartmentIn(database());
        lead = department.lead();
        charts = department.charts();
    }

    private ChartVersion published(int base, ChartContent content) {
        return ((Published) charts.publish(lead, draft(base, content))).version();
    }

    private Charts elsewhere() {
        return department.charts();
    }

    @Test
    void a_published_version_is_read_back_as_it_was_signed() {
        var content = aChart().with(aRow().withAec(-1, "200", Chamber.LEFT, Chamber.RIGHT)
                        .with(Filtration.aluminium("1").and(Filtration.parse("0.1 mm Cu")))
                        .withTargetExposureIndex(320)
                        .withMethod("mas-per-cm", "4.5")
                        .withKVWindow("70", "81")
                        .withLongestTime("120.5")
                        .withReferenceThickness("20.25")
                        .withNotes("Kn\u00f6chel \ud83e\uddb4"))
                .with(aRow().withBand(24, 30).withMethod("attenuation").withoutAngle())
                .with(aRow().withBand(10, 18).withMethod("fixed"))
                .with(addingKV("cast", "-5"))
                .with(timesMAs("wet", "1.35"))
                .content();
        var version = published(0, content);
        var again = elsewhere().version("r1", 1).orElseThrow();
        assertThat(again.head()).isEqualTo(version.head());
        assertThat(again.content()).isEqualTo(content);
        assertThat(again.head().number()).isOne();
        assertThat(again.head().digest()).isEqualTo(ContentDigest.of("r1", 1, content));
        assertThat(again.head().signature())
                .isEqualTo(new Signature(
                        lead.personId().getAsLong(), "Printed lead", "lead", Instant.parse(START), "approved for use"));
    }

    @Test
    void a_draft_on_another_than_the_newest_version_is_outdated() {
        var content = aChart().withBand(18, 24).content();
        assertThat(charts.publish(lead, draft(1, content))).isEqualTo(new Outdated(0));
        published(0, content);
        assertThat(charts.publish(lead, draft(0, content))).isEqualTo(new Outdated(1));
    }

    private void assertRefused(Draft draft, String reason) {
        assertThat(charts.publish(lead, draft))
                .isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.findings())
                        .anySatisfy(finding -> assertThat(finding.reason()).contains(reason)));
    }

    @Test
    void a_version_comes_into_force_at_its_instant_and_not_before() {
        var now = Instant.parse(START);
        var first = aChart().withBand(18, 24).content();
        var second = aChart().withBand(18, 25).content();
        assertRefused(draft(0, first, Optional.of(now.minusSeconds(1))), "is past");
        published(0, first);
        var later = now.plus(Duration.ofDays(2));
        assertThat(charts.publish(lead, draft(1, second, Optional.of(later)))).isInstanceOf(Published.class);
        assertThat(charts.inForce("r1", now.minusNanos(1))).isEmpty();
        assertThat(number(charts, now)).isEqualTo(1);
        assertThat(number(charts, later.minusNanos(1))).isEqualTo(1);
        assertThat(number(charts, later)).isEqualTo(2);
        assertThat(number(elsewhere(), later)).isEqualTo(2);
        assertRefused(draft(2, first, Optional.of(now.plus(Duration.ofDays(400)))), "more than 366 days ahead");
    }

    @Test
    void what_is_urgent_does_not_wait_for_a_version_that_is_scheduled_and_that_one_never_answers() {
        var now = Instant.parse(START);
        var scheduled = now.plus(Duration.ofDays(7));
        published(0, aChart().withBand(18, 24).content());
        charts.publish(lead, draft(1, aChart().withBand(18, 25).content(), Optional.of(scheduled)));
        var urgent = (Published)
                charts.publish(lead, draft(2, aChart().withBand(18, 26).content(), Optional.empty()));
        assertThat(urgent.cautions())
                .extracting(Finding::reason)
                .anyMatch(reason -> reason.contains("version 2") && reason.contains("will never answer"));
        for (var at : List.of(now, scheduled.minusNanos(1), scheduled, scheduled.plus(Duration.ofDays(900)))) {
            assertThat(number(charts, at)).isEqualTo(3);
            assertThat(number(elsewhere(), at)).isEqualTo(3);
        }
    }

    @Test
    void a_version_scheduled_behind_another_follows_it() {
        var now = Instant.parse(START);
        published(0, aChart().withBand(18, 24).content());
        var soon = now.plus(Duration.ofDays(2));
        var later = now.plus(Duration.ofDays(9));
        charts.publish(lead, draft(1, aChart().withBand(18, 25).content(), Optional.of(soon)));
        charts.publish(lead, draft(2, aChart().withBand(18, 26).content(), Optional.of(later)));
        assertThat(number(charts, soon.minusNanos(1))).isEqualTo(1);
        assertThat(number(charts, soon)).isEqualTo(2);
        assertThat(number(charts, later)).isEqualTo(3);
    }

    private static int number(Charts charts, Instant at) {
        return charts.inForce("r1", at).orElseThrow().head().number();
    }

    @Test
    void a_past_version_is_still_the_same_after_ten_more() {
        var first = published(
                0,
                aChart().withBand(18, 24)
                        .withBand(24, 30)
                        .with(addingKV("cast", "5"))
                        .content());
        for (int base = 1; base <= 10; base++) {
            published(
                    base,
                    aChart().with(aRow().withMAs(base % 2 == 0 ? "25" : "32"))
                            .withBand(24, 30 + base)
                            .content());
        }
        var again = elsewhere().version("r1", 1).orElseThrow();
        assertThat(again.content()).isEqualTo(first.content());
        assertThat(again.head()).isEqualTo(first.head());
        assertThat(ContentDigest.of("r1", 1, again.content()))
                .isEqualTo(again.head().digest());
        assertThat(charts.versions("r1"))
                .extracting(VersionHead::number)
                .startsWith(11, 10)
                .endsWith(1);
    }

    @Test
    void rows_stay_in_the_order_people_gave_them() {
        var content =
                aChart().withBand(24, 30).withBand(18, 24).withBand(10, 18).content();
        published(0, content);
        var moved = aChart().withBand(10, 18)
                .withBand(30, 32)
                .withBand(24, 30)
                .withBand(18, 24)
                .content();
        published(1, moved);
        assertThat(elsewhere().version("r1", 1).orElseThrow().content()).isEqualTo(content);
        assertThat(elsewhere().version("r1", 2).orElseThrow().content()).isEqualTo(moved);
    }

    @Test
    void two_versions_are_compared_row_by_row_and_field_by_field() {
        published(
                0,
                aChart().withBand(10, 18)
                        .withBand(18, 24)
                        .with(addingKV("cast", "5"))
                        .content());
        published(
                1,
                aChart().with(aRow().withMAs("32").withNotes("new"))
                        .withBand(24, 30)
                        .with(timesMAs("cast", "2"))
                        .content());
        var comparison = charts.compare("r1", 1, 2).orElseThrow();
        assertThat(comparison.added())
                .extracting(row -> row.key().band())
                .containsExactly(Band.centimetres("24", "30"));
        assertThat(comparison.withdrawn())
                .extracting(row -> row.key().band())
                .containsExactly(Band.centimetres("10", "18"));
        assertThat(comparison.changed()).singleElement().satisfies(changed -> assertThat(changed.fields())
                .containsExactly(
                        new Comparison.FieldChange("mAs", "25", "32"), new Comparison.FieldChange("notes", "", "new")));
        assertThat(comparison.changedAdjustments()).singleElement().satisfies(changed -> assertThat(changed.fields())
                .extracting(Comparison.FieldChange::field)
                .containsExactly("label", "addKv", "timesMas"));
        assertThat(charts.compare("r1", 1, 1).orElseThrow().isEmpty()).isTrue();
        assertThat(charts.compare("r1", 1, 3)).isEmpty();
    }

    @Test
    void what_is_written_alongside_belongs_to_the_same_act() {
        assertThatThrownBy(() ->
                        charts.publish(lead, draft(0, aChart().withBand(18, 24).content()), (tx, version) -> {
                            throw new IllegalStateException("no event, no version");
                        }))
                .hasMessage("no event, no version");
        assertThat(elsewhere().versions("r1")).isEmpty();
        assertThat(elsewhere().version("r1", 1)).isEmpty();
    }

    @Test
    void what_another_node_published_is_seen_after_a_refresh() {
        var other = elsewhere();
        published(0, aChart().withBand(18, 24).content());
        assertThat(other.inForce("r1", Instant.parse(START))).isEmpty();
        other.refresh();
        assertThat(number(other, Instant.parse(START))).isOne();
    }

    @Test
    void what_answers_now_or_later_is_answered_while_the_database_is_away() {
        var tomorrow = Instant.parse(START).plus(Duration.ofDays(1));
        published(0, aChart().withBand(10, 18).content());
        published(1, aChart().withBand(18, 24).content());
        charts.publish(lead, draft(2, aChart().withBand(18, 25).content(), Optional.of(tomorrow)));
        var anotherNode = elsewhere();
        database().close();
        assertThat(number(anotherNode, Instant.parse(START))).isEqualTo(2);
        assertThat(number(anotherNode, tomorrow)).isEqualTo(3);
        assertThatThrownBy(() -> anotherNode.version("r1", 1)).isInstanceOf(StoreException.class);
    }
}
