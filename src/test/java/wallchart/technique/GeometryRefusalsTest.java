package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.refused;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;
import wallchart.quantity.Filtration;
import wallchart.technique.Refusal.Kind;

/** What no console can mend: distances, a refitted room, the end of the attenuation model. */
class GeometryRefusalsTest {

    private static final Room ROOM = EquipmentFixtures.aRoom().room();

    @Test
    void a_distance_beyond_the_support_names_the_range_and_the_nearest() {
        var refusal = refused(ROOM, aRow(), aQuery().atSid("180"));
        assertThat(refusal.kind()).isEqualTo(Kind.NOT_ACHIEVABLE);
        assertThat(refusal.detail()).contains("SID 180 cm", "table-bucky", "room r1", "90 to 125 cm");
        assertThat(refusal.alternatives()).containsExactly("SID 125 cm");
    }

    @Test
    void a_distance_between_stops_names_the_nearest_stop() {
        var chest = aRow().at(SupportKind.WALL_BUCKY).withGrid("g8").withSid("180");
        var refusal = refused(ROOM, chest, aQuery().atSid("160"));
        assertThat(refusal.detail()).contains("110, 150, 180 cm");
        assertThat(refusal.alternatives()).containsExactly("SID 150 cm");
        assertThat(found(ROOM, chest, aQuery().atSid("150")).exact().mAs()).isLessThan(25);
    }

    @Test
    void a_patient_who_does_not_fit_under_the_tube_is_refused() {
        var refusal = refused(
                aHandbookRoom().room(),
                aHandbookRow(),
                aQuery().of("KNEE", "ap").ofThickness("25").atSid("25"));
        assertThat(refusal.kind()).isEqualTo(Kind.NOT_ACHIEVABLE);
        assertThat(refusal.reasons()).singleElement().asString().contains("SID 25 cm", "25 cm", "receptor gap of 0 cm");
        assertThat(refusal.alternatives()).containsExactly("a longer SID");
    }

    @Test
    void a_row_for_equipment_that_was_taken_out_is_refused() {
        var without = List.of(
                aRow().withReceptor("dr9", "24x30"),
                aRow().withGrid("g12"),
                aRow().at(SupportKind.MOBILE),
                aRow().withReceptor("cr1", "18x24"));
        for (var row : without) {
            var refusal = refused(ROOM, row, aQuery());
            assertThat(refusal.kind()).isEqualTo(Kind.NOT_ACHIEVABLE);
            assertThat(refusal.detail()).contains("no longer has", "do not use the row", "propose a change");
            assertThat(refusal.alternatives()).containsExactly("another room");
        }
    }

    @Test
    void beyond_the_attenuation_model_the_row_is_refused() {
        var row = aRow().withBand(18, 60).withReferenceThickness("21").withMethod("attenuation");
        var refusal = refused(ROOM, row, aQuery().ofThickness("36.01"));
        assertThat(refusal.kind()).isEqualTo(Kind.NOT_ACHIEVABLE);
        assertThat(refusal.detail()).contains("attenuation model does not reach 75 kV behind 36.01 cm", "propose");
        assertThat(found(ROOM, row, aQuery().ofThickness("36")).set().mAs().milliampereSeconds())
                .isPositive();
    }

    @Test
    void a_beam_that_the_attenuation_model_does_not_know_is_refused_and_not_a_fault() {
        var copper = aRow().withMethod("attenuation").with(new Filtration(number("0"), number("3.5")));
        assertThat(refused(ROOM, copper, aQuery().ofThickness("20")).detail()).contains("attenuation model");
    }

    @Test
    void a_technique_of_no_kilovolts_is_refused() {
        var row = aHandbookRow().withKV("40").withReferenceThickness("30").withMethod("kv-per-cm", "2");
        var chart = aChart().with(row).with(addingKV("less", "-10"));
        var room = aHandbookRoom().room();
        for (var thickness : List.of("15", "5")) { // 40 - 30 - 10 = 0 kV, and 20 kV less
            var refusal = refused(
                    room,
                    chart,
                    aQuery().of("KNEE", "ap").ofThickness(thickness).with("less"));
            assertThat(refusal.kind()).isEqualTo(Kind.NOT_ACHIEVABLE);
            assertThat(refusal.detail()).contains("kV", "check the row");
            assertThat(refusal.alternatives()).containsExactly("propose a change");
        }
    }
}
