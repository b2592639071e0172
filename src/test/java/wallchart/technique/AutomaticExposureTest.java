package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aSmallSpot;
import static wallchart.equipment.EquipmentFixtures.aTube;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;
import wallchart.technique.Refusal.Kind;

/** Rows that the automatic exposure control ends: the rules move the kV and the back-up. */
class AutomaticExposureTest {

    private static final Room ROOM = aRoom().room();

    private static RowBuilder row() {
        return aRow().withAec(1, "100", Chamber.LEFT, Chamber.RIGHT).withMethod("mas-per-cm", "4");
    }

    private static ConsoleSetting.Automatic set(Technique technique) {
        assertThat(technique.set()).isInstanceOf(ConsoleSetting.Automatic.class);
        return (ConsoleSetting.Automatic) technique.set();
    }

    @Test
    void chambers_and_density_are_the_rows_and_the_backup_a_station() {
        var technique = found(ROOM, row(), aQuery());
        assertThat(set(technique).control().chambers()).containsExactlyInAnyOrder(Chamber.LEFT, Chamber.RIGHT);
        assertThat(set(technique).control().density()).isEqualTo(1);
        assertThat(set(technique).mAs()).hasToString("100 mAs");
        assertThat(set(technique).kV()).hasToString("75 kV");
        assertThat(technique.steps()).extracting(Step::rule).doesNotContain("current-and-time");
    }

    @Test
    void the_backup_follows_thickness_and_distance() {
        // 23 cm is 2 cm over the reference, doubling per 4 cm: x 1.414; 121 cm for 110 cm: x 1.21; 171 -> 160 mAs
        var technique = found(ROOM, row(), aQuery().ofThickness("23").atSid("121"));
        assertThat(technique.exact().mAs()).isCloseTo(100 * Math.sqrt(2) * 1.21, within(1e-9));
        assertThat(set(technique).mAs()).hasToString("160 mAs");
        assertThat(technique.roundingDeviation()).isCloseTo(10 * Math.log10(160 / 171.12), within(0.001));
    }

    @Test
    void an_adjustment_of_the_mas_is_said_to_change_the_backup_only() {
        var chart = aChart().with(row()).with(timesMAs("plaster", "2"));
        assertThat(found(ROOM, chart, aQuery().with("plaster")).cautions())
                .anySatisfy(text -> assertThat(text).contains("the AEC makes up for it by itself", "back-up only"));
        assertThat(found(ROOM, chart, aQuery()).cautions())
                .noneSatisfy(text -> assertThat(text).contains("by itself"));
    }

    @Test
    void the_operator_is_told_what_ends_the_exposure() {
        assertThat(found(ROOM, row(), aQuery()).cautions())
                .anySatisfy(text -> assertThat(text).contains("chamber left+right", "back-up 100 mAs"));
    }

    @Test
    void the_steps_name_chambers_density_and_backup_not_an_mas_to_set() {
        var technique = found(ROOM, row(), aQuery());
        assertThat(TechniqueFixtures.step(technique, "row").text())
                .contains("75 kV, AEC left+right, density 1, back-up 100 mAs at ");
        assertThat(TechniqueFixtures.step(technique, "mas-station").text())
                .startsWith("nearest mAs station for the back-up");
    }

    @Test
    void the_dose_is_an_upper_bound_at_the_backup() {
        var technique = found(ROOM, row(), aQuery());
        var dose = technique.dose().orElseThrow();
        assertThat(dose.upperBound()).isTrue();
        assertThat(dose.forMAs()).isEqualTo(set(technique).mAs());
        assertThat(TechniqueFixtures.step(technique, "dose").text()).contains("; upper bound at the AEC back-up");
    }

    @Test
    void a_backup_over_the_largest_of_the_aec_is_refused() {
        // 320 x 2^(2/4) = 452.5 mAs, nearest 500; the AEC ends at 400 mAs, the generator itself at 500
        var refusal = refused(ROOM, row().withAec(0, "320", Chamber.CENTRE), aQuery().ofThickness("23"));
        assertThat(refusal.kind()).isEqualTo(Kind.NOT_ACHIEVABLE);
        assertThat(refusal.reasons()).containsExactly("back-up 452.5 mAs is over the AEC's largest, 400 mAs");
        assertThat(refusal.alternatives())
                .anySatisfy(text -> assertThat(text).startsWith("15 % more kV with half mAs: 86 kV, back-up"));
    }

    @Test
    void a_room_that_lost_its_aec_refuses_the_row() {
        var refusal = refused(aRoom().withoutAec().room(), row(), aQuery());
        assertThat(refusal.kind()).isEqualTo(Kind.NOT_ACHIEVABLE);
        assertThat(refusal.detail()).contains("automatic exposure control", "do not use the row");
    }

    @Test
    void a_support_that_lost_a_chamber_refuses_the_row() {
        var wall = row().at(SupportKind.WALL_BUCKY).withGrid("g8").withAec(0, "100", Chamber.CENTRE);
        assertThat(refused(ROOM, wall, aQuery()).detail()).contains("AEC chamber centre", "no longer has");
    }

    @Test
    void a_density_the_generator_lost_refuses_the_row() {
        assertThat(refused(ROOM, row().withAec(3, "100", Chamber.LEFT), aQuery())
                        .detail())
                .contains("AEC density 3", "no longer has");
    }

    @Test
    void a_focal_spot_the_tube_lost_refuses_the_row() {
        var tube = aTube();
        var small = new TubePart(
                tube.anodeAngleDeg(), tube.totalFiltrationMmAl(), null, List.of(aSmallSpot()), tube.output());
        assertThat(refused(aRoom().withTube(small).room(), row(), aQuery()).detail())
                .contains("no large focal spot");
    }
}
