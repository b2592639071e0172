package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.planning.PlanningFixtures.PHYSICS;
import static wallchart.planning.PlanningFixtures.RULES;
import static wallchart.planning.PlanningFixtures.bands;

import java.math.BigDecimal;
import java.time.Period;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.chart.ChartContent;
import wallchart.chart.Charts;
import wallchart.chart.PublishingFixtures;
import wallchart.equipment.Rooms;
import wallchart.grading.ChartPhysics;
import wallchart.grading.PhysicsLimits;
import wallchart.people.PeopleFixtures;
import wallchart.people.Role;
import wallchart.planning.BandPlan.Kind;
import wallchart.planning.PlanRequest.Named;
import wallchart.signoff.ChangeFilter;
import wallchart.signoff.ImpactCalculation;
import wallchart.signoff.Outcome;
import wallchart.signoff.ReviewLimits;
import wallchart.signoff.SignoffDesk;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

/** Drafts that become changes, and those that do not. */
class ChartPlannerTest extends OnEveryDatabase {

    private static final String ROW = "LSPINE/ap/adult/table-bucky/18-24";
    private static final String REASON = "from the technique that the phantom proved";

    private SignoffDesk desk;
    private ChartPlanner planner;
    private Actor author;
    private Charts charts;
    private Actor lead;

    @BeforeEach
    void twoRoomsOneWithAChart() {
        var people = PeopleFixtures.peopleOf(database());
        author = PeopleFixtures.aPerson(people, "author", Role.RADIOGRAPHER).asActor();
        lead = PeopleFixtures.aPerson(people, "lead", Role.LEAD).asActor();
        var physicist =
                PeopleFixtures.aPerson(people, "physicist", Role.PHYSICIST).asActor();
        var rooms = new Rooms(database());
        rooms.install(physicist, aRoom().document());
        rooms.install(physicist, aRoom().withId("r2").uncalibrated().document());
        charts = new Charts(database(), rooms, RULES);
        publish(0, aChart().with(aRow()).content());
        desk = new SignoffDesk(
                database(),
                rooms,
                charts,
                RULES,
                new ImpactCalculation(PHYSICS, ReviewLimits.DEFAULTS),
                new ChartPhysics(PHYSICS, List.of(), PhysicsLimits.DEFAULTS),
                Period.ofYears(1));
        planner = new ChartPlanner(rooms, charts, RULES, PHYSICS, desk);
    }

    private void publish(int base, ChartContent content) {
        charts.publish(lead, PublishingFixtures.draft(base, content));
    }

    private static PlanRequest plan(String row) {
        return new PlanRequest(Optional.empty(), new Named(row), bands(Kind.FIXED_KV, "18", "24", "2"));
    }

    private static RoomTransfer from(int version, Optional<String> bodyPart) {
        return new RoomTransfer(
                "r1", version, bodyPart, List.of(), RoomTransfer.Scope.ALL, Map.of(), Map.of(), Map.of());
    }

    private int changes() {
        return desk.list(new ChangeFilter(Optional.empty(), Optional.empty(), Optional.empty(), 10))
                .size();
    }

    private static Outcome.Refused why(Planned planned) {
        return ((Planned.Refused) planned).why();
    }

    @Test
    void a_look_leaves_no_change_and_an_opening_leaves_one_with_the_same_rows() {
        var drawn = (Planned.Drawn) planner.preview("r1", plan(ROW));
        assertThat(changes()).isZero();
        var opened = (Planned.Opened) planner.open(author, "r1", "Bands of 2 cm", REASON, plan(ROW));
        assertThat(opened.proposal()).isEqualTo(drawn.proposal());
        assertThat(opened.change().head().reason())
                .isEqualTo(REASON + ". " + drawn.proposal().statement());
        assertThat(desk.proposal(opened.change().id()).orElseThrow().after().rows())
                .isEqualTo(
                        drawn.proposal().rows().stream().map(ProposedRow::row).toList());
    }

    @Test
    void the_author_says_why_and_leaves_room_for_what_the_draft_rests_on() {
        var planned = planner.open(author, "r1", "Bands", "short", plan(ROW));
        assertThat(why(planned).problems().get(0).field()).isEqualTo("reason");
        var wordy = planner.open(author, "r1", "Bands", "very ".repeat(390), plan(ROW));
        assertThat(why(wordy).problems().get(0).message())
                .contains("1949 characters")
                .contains("shorten");
        assertThat(changes()).isZero();
    }

    @Test
    void whoever_may_not_propose_may_not_have_it_drafted_as_a_change() {
        assertThat(why(planner.open(Actor.system("demo"), "r1", "Bands", REASON, plan(ROW)))
                        .kind())
                .isEqualTo(Outcome.Kind.NOT_ALLOWED);
    }

    @Test
    void a_row_or_version_that_is_not_there_is_refused() {
        assertThat(why(planner.preview("r1", plan("LSPINE/ap/adult/table-bucky/1-2")))
                        .problems()
                        .get(0)
                        .message())
                .contains("version 1 of room r1 has no such row");
        assertThat(why(planner.preview("r1", Optional.of(7), from(1, Optional.empty())))
                        .kind())
                .isEqualTo(Outcome.Kind.NOT_FOUND);
        assertThat(why(planner.preview("r9", plan(ROW))).kind()).isEqualTo(Outcome.Kind.NOT_FOUND);
    }

    @Test
    void more_rows_than_a_change_takes_are_refused_naming_limit_and_filter_and_one_body_part_is_taken() {
        publish(1, many());
        var all = planner.preview("r2", Optional.empty(), from(2, Optional.empty()));
        assertThat(why(all).problems().get(0).field()).isEqualTo("bodyPart");
        assertThat(why(all).problems().get(0).message()).contains("600 rows", "at most 500", "body part");
        var part = planner.open(author, "r2", "Spine", REASON, Optional.empty(), from(2, Optional.of("LSPINE")));
        assertThat(((Planned.Opened) part).proposal().rows()).hasSize(300);
    }

    /** 300 bands each of lumbar and thoracic spine. */
    private static ChartContent many() {
        var chart = aChart();
        for (int i = 0; i < 300; i++) {
            var low = BigDecimal.valueOf(1000 + 5L * i, 2);
            var band =
                    List.of(low.toPlainString(), low.add(new BigDecimal("0.05")).toPlainString());
            chart = chart.with(aRow().withBand(band.get(0), band.get(1)));
            chart = chart.with(aRow().of("TSPINE", "ap").withBand(band.get(0), band.get(1)));
        }
        return chart.content();
    }
}
