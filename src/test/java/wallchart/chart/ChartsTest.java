package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.Publication.NotPermitted;
import wallchart.chart.Publication.Outdated;
import wallchart.chart.Publication.Published;
import wallchart.chart.Publication.Refused;
import wallchart.equipment.Chamber;
import wallchart.equipment.Rooms;
import wallchart.people.PeopleFixtures;
import wallchart.people.Role;
import wallchart.quantity.Filtration;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

class ChartsTest extends OnEveryDatabase {

    private Actor lead;
    private Rooms rooms;
    private Charts charts;

    @BeforeEach
    void a_department_with_a_room() {
        var people = PeopleFixtures.peopleOf(database());
        lead = PeopleFixtures.aPerson(people, "lead", Role.LEAD).asActor();
        rooms = new Rooms(database());
        rooms.install(lead, aRoom().document());
        charts = new Charts(database(), rooms, ChartRules.adultsOnly());
    }

    private static Draft draft(int base, ChartContent content) {
        return draft(base, content, Optional.empty());
    }

    private static Draft draft(int base, ChartContent content, Optional<Instant> inForceFrom) {
        return new Draft(
                "r1",
                base,
                content,
                "A title",
                "because it was measured",
                "approved for use",
                inForceFrom,
                LocalDate.parse("2027-03-02"));
    }

    private ChartVersion published(int base, ChartContent content) {
        return ((Published) charts.publish(lead, draft(base, content))).version();
    }

    private Charts elsewhere() {
        return new Charts(database(), rooms, ChartRules.adultsOnly());
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
    void cautions_are_told_and_do_not_stop_a_version() {
        var publication = charts.publish(
                lead, draft(0, aChart().with(aRow().withMAs("24")).content()));
        assertThat(((Published) publication).cautions())
                .extracting(Finding::field)
                .containsExactly("mAs");
    }

    @Test
    void blocking_findings_stop_a_version() {
        var publication = charts.publish(
                lead, draft(0, aChart().withBand(18, 24).withBand(20, 30).content()));
        assertThat(((Refused) publication).findings())
                .extracting(Finding::field)
                .containsExactly("bandFromCm");
        assertThat(elsewhere().versions("r1")).isEmpty();
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
    void a_draft_on_another_than_the_newest_version_is_outdated() {
        var content = aChart().withBand(18, 24).content();
        assertThat(charts.publish(lead, draft(1, content))).isEqualTo(new Outdated(0));
        published(0, content);
        assertThat(charts.publish(lead, draft(0, content))).isEqualTo(new Outdated(1));
    }

    @Test
    void content_that_equals_its_base_is_refused() {
        published(0, aChart().withBand(18, 24).content());
        assertRefused(draft(1, aChart().withBand(18, 24).content()), "nothing differs from version 1");
    }

    @Test
    void the_words_around_a_version_must_say_something() {
        var good = draft(0, aChart().withBand(18, 24).content());
        assertRefused(with(good, " ", good.reason(), good.meaning()), "has 0 visible characters");
        assertRefused(with(good, good.title(), " a b c d e f g h i ", good.meaning()), "has 9 visible characters");
        assertRefused(with(good, good.title(), "x".repeat(2001), good.meaning()), "at most 2000");
        assertRefused(with(good, good.title(), good.reason(), "a\u0000b"), "control character");
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

    @Test
    void a_version_comes_into_force_at_its_instant_and_never_before_the_one_before_it() {
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
        assertRefused(draft(2, first, Optional.of(later.minusSeconds(1))), "before version 2 comes into force");
        assertThat(charts.publish(lead, draft(2, first, Optional.of(later)))).isInstanceOf(Published.class);
        assertThat(number(charts, later)).isEqualTo(3);
    }

    private static int number(Charts charts, Instant at) {
        return charts.inForce("r1", at).orElseThrow().head().number();
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
    void of_two_who_publish_on_the_same_base_exactly_one_wins() throws Exception {
        published(0, aChart().withBand(18, 24).content());
        var results = atOnce(
                () -> charts.publish(lead, draft(1, aChart().withBand(18, 25).content())), () -> elsewhere()
                        .publish(lead, draft(1, aChart().withBand(18, 26).content())));
        assertThat(results).filteredOn(Published.class::isInstance).hasSize(1);
        assertThat(results).filteredOn(new Outdated(2)::equals).hasSize(1);
        var winner =
                results.stream().filter(Published.class::isInstance).findFirst().orElseThrow();
        assertThat(elsewhere().version("r1", 2).orElseThrow().content())
                .isEqualTo(((Published) winner).version().content());
    }

    /** Both have read the newest version before either writes: the barrier stands where the version is already written. */
    @Test
    void a_rival_that_read_the_same_newest_version_loses_to_the_unique_number() throws Exception {
        published(0, aChart().withBand(18, 24).content());
        var rivalPublished = new ArrayList<Publication>();
        var publication =
                charts.publish(lead, draft(1, aChart().withBand(18, 25).content()), (tx, version) -> {
                    var rival = new Thread(() -> rivalPublished.add(elsewhere()
                            .publish(lead, draft(1, aChart().withBand(18, 26).content()))));
                    rival.start();
                    waitFor(rival, Duration.ofMillis(500));
                    assertThat(rivalPublished)
                            .as("the rival waits for our commit")
                            .isEmpty();
                });
        assertThat(publication).isInstanceOf(Published.class);
        for (int i = 0; i < 100 && rivalPublished.isEmpty(); i++) {
            Thread.sleep(50);
        }
        assertThat(rivalPublished).containsExactly(new Outdated(2));
    }

    private static void waitFor(Thread thread, Duration atMost) {
        try {
            thread.join(atMost.toMillis());
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }

    private static List<Publication> atOnce(Callable<Publication> one, Callable<Publication> other) throws Exception {
        var barrier = new CyclicBarrier(2);
        var threads = Executors.newFixedThreadPool(2);
        try {
            var futures = new ArrayList<java.util.concurrent.Future<Publication>>();
            for (var publishing : List.of(one, other)) {
                futures.add(threads.submit(() -> {
                    barrier.await();
                    return publishing.call();
                }));
            }
            return List.of(futures.get(0).get(), futures.get(1).get());
        } finally {
            threads.shutdown();
        }
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
    void what_was_read_once_is_answered_without_the_database() {
        published(0, aChart().withBand(18, 24).content());
        var warm = elsewhere();
        warm.inForce("r1", Instant.parse(START));
        database().close();
        assertThat(number(warm, Instant.parse(START))).isOne();
    }
}
