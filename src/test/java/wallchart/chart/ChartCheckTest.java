package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallchart.chart.Finding.Severity;
import wallchart.equipment.Chamber;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.Room;
import wallchart.equipment.SupportKind;

class ChartCheckTest {

    private static final Room ROOM = aRoom().room();
    private static final ChartRules RULES = new ChartRules(
            List.of(
                    new PatientGroup("adult", "Adult", PatientGroup.Basis.AGE),
                    new PatientGroup("under-10-kg", "Child under 10 kg", PatientGroup.Basis.WEIGHT)),
            Set.of());

    private record Planted(String error, RowBuilder row, Severity severity, String field, String reason) {
        @Override
        public String toString() {
            return error;
        }
    }

    private static Planted blocking(String error, RowBuilder row, String field, String reason) {
        return new Planted(error, row, Severity.BLOCKING, field, reason);
    }

    private static Planted caution(String error, RowBuilder row, String field, String reason) {
        return new Planted(error, row, Severity.CAUTION, field, reason);
    }

    private static RowBuilder anAecRow() {
        return aRow().withAec(0, "200", Chamber.CENTRE);
    }

    static Stream<Planted> errorsOfOneRow() {
        return Stream.of(
                blocking("unknown body part", aRow().of("BACK", "ap"), "bodyPart", "\"BACK\" is no DICOM"),
                blocking("unknown projection", aRow().of("LSPINE", "front"), "projection", "\"front\""),
                blocking("unknown patient group", aRow().forGroup("baby"), "patientGroup", "adult, under-10-kg"),
                blocking("support not in room", aRow().at(SupportKind.MOBILE), "support", "has no mobile"),
                blocking("grid not in room", aRow().withGrid("g99"), "grid", "has no grid \"g99\""),
                blocking("grid of another support", aRow().withGrid("g8"), "grid", "choose g10 or none"),
                blocking(
                        "no grid where one is fixed",
                        aRow().at(SupportKind.WALL_BUCKY).withGrid("none").withSid("150"),
                        "grid",
                        "choose g8"),
                blocking("receptor not in room", aRow().withReceptor("dr9", "24x30"), "receptor", "\"dr9\""),
                blocking("receptor of another support", aRow().withReceptor("cr1", "24x30"), "receptor", "choose dr1"),
                blocking("field over the receptor", aRow().withReceptor("dr1", "24x44"), "fieldCm", "43x43"),
                blocking("SID out of range", aRow().withSid("126"), "sidCm", "the nearest is 125 cm"),
                blocking(
                        "SID between stops",
                        aRow().at(SupportKind.WALL_BUCKY).withGrid("g8").withSid("160"),
                        "sidCm",
                        "the nearest is 150 cm"),
                blocking("no room for the patient", aRow().withBand(60, 104), "sidCm", "leaves 0 cm"),
                blocking("kV below the generator", aRow().withKV("39"), "kV", "40 to 150 kV"),
                blocking("kV above the generator", aRow().withKV("151"), "kV", "40 to 150 kV"),
                blocking("window without the row's kV", aRow().withKVWindow("76", "80"), "kVFrom", "does not hold"),
                blocking(
                        "window without a station",
                        aRow().withKV("75.5").withKVWindow("75.2", "75.8"),
                        "kVFrom",
                        "no kV station"),
                blocking("mAs above the generator", aRow().withMAs("561"), "mAs", "0.5 mAs to 500 mAs"),
                blocking("mAs below the generator", aRow().withMAs("0.44"), "mAs", "by more than half a step"),
                blocking("too much for the focal spot", aRow().withKV("150").withMAs("500"), "mAs", "large focal spot"),
                blocking("longest time too short", aRow().withLongestTime("40"), "mAs", "longest time 40 ms"),
                blocking(
                        "density the generator lacks",
                        aRow().withAec(3, "200", Chamber.CENTRE),
                        "aecDensity",
                        "[-2, -1, 0, 1, 2]"),
                blocking(
                        "back-up over the largest",
                        aRow().withAec(0, "401", Chamber.CENTRE),
                        "backupMAs",
                        "back-up 401 mAs is over the largest the generator allows, 400 mAs"),
                blocking(
                        "chamber the support lacks",
                        anAecRow().at(SupportKind.WALL_BUCKY).withGrid("g8").withSid("150"),
                        "aecChambers",
                        "has no centre chamber: choose among left, right"),
                blocking(
                        "AEC where there is none",
                        anAecRow().at(SupportKind.TABLETOP).withGrid("none"),
                        "aecChambers",
                        "it has no AEC"),
                blocking(
                        "attenuation beyond the model's thickness",
                        aRow().withMethod("attenuation").withBand(30, 37),
                        "thicknessMethod",
                        "up to 36 cm"),
                blocking(
                        "target exposure index out of range",
                        aRow().withTargetExposureIndex(10001),
                        "targetExposureIndex",
                        "10 to 10000"),
                blocking("a text that is too long", aRow().withNotes("x".repeat(401)), "notes", "at most 400"),
                blocking("half a character", aRow().withNotes("a\ud800b"), "notes", "half a character"),
                blocking("a decomposed letter", aRow().withCentring("Kno\u0308chel"), "centring", "normal form C"),
                caution(
                        "SID outside the grid's focal range",
                        aRow().withSid("92"),
                        "sidCm",
                        "focal range of grid g10, 95 to 130 cm"),
                caution("mAs between stations", aRow().withMAs("24"), "mAs", "75 kV and 25 mAs will be set, +0.18 dB"),
                caution("kV between stations", aRow().withKV("75.5"), "kV", "76 kV and 25 mAs will be set, +0.14 dB"),
                caution("AEC kV between stations", anAecRow().withKV("75.5"), "kV", "76 kV will be set and the AEC"));
    }

    @ParameterizedTest
    @MethodSource("errorsOfOneRow")
    void a_planted_error_is_found_at_its_field(Planted planted) {
        var content = aChart().with(planted.row()).content();
        assertThat(ChartCheck.check(content, ROOM, RULES)).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(planted.severity());
            assertThat(finding.field()).isEqualTo(planted.field());
            assertThat(finding.row()).isEqualTo(planted.row().row().key().toString());
            assertThat(finding.reason()).contains(planted.reason());
        });
    }

    @Test
    void a_good_chart_has_no_findings() {
        var good = aChart().withBand(18, 24)
                .withBand(24, 30)
                .with(anAecRow().of("LSPINE", "lateral"))
                .with(aRow().of("HAND", "pa")
                        .at(SupportKind.TABLETOP)
                        .withGrid("none")
                        .withReceptor("cr1", "18x24")
                        .with(FocalSpotName.SMALL)
                        .withKV("50")
                        .withMAs("2.5")
                        .withBand(3, 5)
                        .withMethod("attenuation"))
                .with(addingKV("cast", "5"));
        assertThat(ChartCheck.check(good.content(), ROOM, RULES)).isEmpty();
    }

    @Test
    void mas_within_half_a_step_of_the_largest_station_is_only_a_caution() {
        var content = aChart().with(aRow().withKV("50").withMAs("555")).content();
        assertThat(ChartCheck.check(content, ROOM, RULES))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.CAUTION));
    }
}
