package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.aTube;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.OutputPointPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.Room;

/** Output and air kerma at the skin of a tube that follows the mean of a medical-physics survey of about 40 units (2015). */
@Validation
class AirKermaValidationTest {

    private static final Room ROOM = aSurveyRoom();

    @ParameterizedTest(name = "{0} kV: {1} uGy/mAs at 40 in, {2} at 1 m")
    @CsvSource({"80, 49.7, 51.3", "100, 77.4, 79.9"})
    void the_output_is_that_of_the_survey(String kV, double at40Inches, double atOneMetre) {
        // medical-physics survey, 2015: Y = 0.008373 kV^1.983 uGy/mAs at 40 in; 51.3 and 79.9 by 1.016^2
        var output = ROOM.tube().output().orElseThrow();
        assertThat(output.microGyPerMAs(Double.parseDouble(kV))).isCloseTo(atOneMetre, within(0.05));
        double at40 =
                ExposureArithmetic.incidentAirKermaMicroGy(output.microGyPerMAs(Double.parseDouble(kV)), 1, 40 * 2.54);
        assertThat(at40).isCloseTo(at40Inches, within(0.05));
    }

    @Test
    void the_worked_example_costs_1_824_milligray_without_and_2_46_with_backscatter() {
        // K_i = Y mAs (100/FSD)^2 (ICRU Report 74): 80 kV, 20 mAs, SID 100, part 20, gap 5 -> FSD 75 cm, 1.824 mGy
        var row = aHandbookRow().withKV("80").withMAs("20");
        var dose = found(ROOM, row, aQuery().of(row.row()).ofThickness("20"))
                .dose()
                .orElseThrow();
        assertThat(dose.focusSkinCentimetres()).isEqualTo(75);
        assertThat(dose.incident().inMilligrays()).isCloseTo(1.824, within(0.002));
        assertThat(dose.incident().inMilligrays() * 1.35).isCloseTo(2.46, within(0.005));
        // the survey's factor 1.35 is a mean; ours follows beam and field. Agreement of such estimates with phantom
        // measurement is 12 to 14 % (Compagnone et al., J. Appl. Clin. Med. Phys. 2005)
        assertThat(dose.entrance().inMilligrays()).isCloseTo(2.46, within(2.46 * 0.12));
    }

    @Test
    void backscatter_lies_where_the_two_reference_quantities_are_said_to_differ() {
        // with and without backscatter differ by about 1.35 (from memory): within 1.2 and 1.5 for a trunk field
        var row = aHandbookRow().withKV("80").withMAs("20");
        var dose = found(ROOM, row, aQuery().of(row.row()).ofThickness("20"))
                .dose()
                .orElseThrow();
        assertThat(dose.backscatterFactor()).isBetween(1.2, 1.5);
        assertThat(dose.entrance().micrograys())
                .isCloseTo(dose.incident().micrograys() * dose.backscatterFactor(), within(1e-9));
    }

    @Test
    void between_measured_points_the_power_law_is_kept() {
        // a straight line on ln(output) against ln(kV) is exact for a power law: 70 kV, 0.008373 x 70^1.983 x 1.016^2
        assertThat(ROOM.tube().output().orElseThrow().microGyPerMAs(70)).isCloseTo(surveyOutput(70), within(0.001));
    }

    /** Tabletop with a receptor gap of 5 cm; the tube was measured at 60, 80, 100 and 120 kV. */
    private static Room aSurveyRoom() {
        var tube = aTube();
        var points = List.of(60, 80, 100, 120).stream()
                .map(kV -> new OutputPointPart(
                        BigDecimal.valueOf(kV),
                        BigDecimal.valueOf(surveyOutput(kV)).setScale(4, RoundingMode.HALF_UP)))
                .toList();
        var output = new OutputPart(
                LocalDate.parse("2026-01-14"), number("3.0"), null, number("3.1"), number("80"), number("8"), points);
        return aRoom().withTube(
                        new TubePart(tube.anodeAngleDeg(), tube.totalFiltrationMmAl(), null, tube.focalSpots(), output))
                .withSupports(List.of(new SupportPart(
                        "tabletop",
                        number("5"),
                        new DistancesPart(number("50"), number("300"), null),
                        List.of("none"),
                        List.of("dr1"),
                        null)))
                .room();
    }

    private static double surveyOutput(double kV) {
        return 0.008373 * Math.pow(kV, 1.983) * 1.016 * 1.016;
    }
}
