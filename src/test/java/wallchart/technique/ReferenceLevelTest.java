package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.technique.TechniqueFixtures.PHYSICS;
import static wallchart.technique.TechniqueFixtures.TODAY;
import static wallchart.technique.TechniqueFixtures.aQuery;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.quantity.AirKerma;
import wallchart.quantity.KermaAreaProduct;
import wallchart.technique.ReferenceLevel.Quantity;

/** Reference levels in the quantities and units they are published in, and what an estimate is beside them. */
class ReferenceLevelTest {

    /**
     * The SI prefixes and 1 m2 = 10,000 cm2: 1 Gy cm2 = 1000 mGy cm2 = 100 uGy m2 = 100 cGy cm2 = 10 dGy cm2; dGy cm2 is the unit of
     * DICOM (0018,115E), Image and Fluoroscopy Area Dose Product.
     */
    @Validation
    @ParameterizedTest
    @CsvSource({
        "1, Gy cm2, 100",
        "1000, mGy cm2, 100",
        "100, uGy m2, 100",
        "100, cGy cm2, 100",
        "10, dGy cm2, 100",
        "2.5, Gy cm2, 250"
    })
    void one_area_product_reads_the_same_in_every_unit(String value, String unit, double microGyM2) {
        assertThat(areaLevel(value, unit).inBase()).isCloseTo(microGyM2, within(1e-9));
    }

    /**
     * ICRU Report 74: P_KA = K x A, the same in every plane. 51.3 uGy/mAs at 1 m (survey of about 40 units, 2015), 20 mAs, 30 cm x 40 cm
     * at 1 m: 1026 uGy x 0.12 m2 = 123.1 uGy m2 = 1.231 Gy cm2.
     */
    @Validation
    @Test
    void kerma_times_area_is_the_area_product() {
        var product = KermaAreaProduct.of(new AirKerma(51.3 * 20), 30 * 40);
        assertThat(product.micrograyMetresSquared()).isCloseTo(123.12, within(1e-9));
        var level = areaLevel("1.2312", "Gy cm2");
        assertThat(level.inBase()).isCloseTo(product.micrograyMetresSquared(), within(1e-9));
    }

    @Test
    void the_estimate_has_the_area_product_of_the_plane_of_the_receptor_whatever_the_patient() {
        // 24x43 cm at SID 110 cm, 80 kV 51.3 uGy/mAs, 25 mAs: 51.3 x 25 / 1.1^2 x 0.1032 m2 = 109.4 uGy m2
        var dose = estimate(List.of());
        assertThat(aRow().row().setting().field()).hasToString("24x43");
        assertThat(dose.areaProduct().micrograyMetresSquared())
                .isCloseTo(51.3 * 25 / (1.1 * 1.1) * 0.24 * 0.43, within(1e-6));
    }

    @Test
    void a_level_is_compared_in_its_own_quantity_alone() {
        var dose = estimate(List.of());
        var incident = kermaLevel(Quantity.INCIDENT_AIR_KERMA, dose.incident().inMilligrays());
        var entrance =
                kermaLevel(Quantity.ENTRANCE_SURFACE_AIR_KERMA, dose.incident().inMilligrays());
        assertThat(incident.share(dose)).isCloseTo(1, within(1e-6));
        assertThat(entrance.share(dose)).isCloseTo(dose.backscatterFactor(), within(1e-6));
        assertThat(dose.backscatterFactor()).isBetween(1.2, 1.5); // or the two could be mixed up unseen
    }

    @Test
    void a_level_is_converted_by_the_backscatter_factor_and_in_the_right_direction() {
        var dose = estimate(List.of());
        var entrance = kermaLevel(Quantity.ENTRANCE_SURFACE_AIR_KERMA, 10)
                .converted(dose)
                .orElseThrow();
        assertThat(entrance.quantity()).isEqualTo(Quantity.INCIDENT_AIR_KERMA);
        assertThat(entrance.milliGy()).isCloseTo(10 / dose.backscatterFactor(), within(1e-9));
        var incident =
                kermaLevel(Quantity.INCIDENT_AIR_KERMA, 10).converted(dose).orElseThrow();
        assertThat(incident.milliGy()).isCloseTo(10 * dose.backscatterFactor(), within(1e-9));
        assertThat(areaLevel("1", "Gy cm2").converted(dose)).isEmpty();
    }

    @Test
    void a_level_of_the_kerma_and_one_of_the_area_product_stand_side_by_side() {
        var kerma = kermaLevel(Quantity.ENTRANCE_SURFACE_AIR_KERMA, 10);
        var area = areaLevel("1.5", "Gy cm2");
        var dose = estimate(List.of(area, kerma));
        assertThat(dose.referenceLevel()).contains(kerma);
        assertThat(dose.areaLevel()).contains(area);
        assertThat(area.share(dose)).isCloseTo(dose.areaProduct().micrograyMetresSquared() / 150, within(1e-9));
    }

    /** The trap: a source has 1.5 Gy cm2, somebody enters the digits of it under another unit. */
    @ParameterizedTest
    @CsvSource({"mGy cm2, 1000", "uGy m2, 100", "cGy cm2, 100", "dGy cm2, 10"})
    void a_swapped_unit_moves_the_share_by_its_power_of_ten(String swapped, double factor) {
        var dose = estimate(List.of());
        double right = areaLevel("1.5", "Gy cm2").share(dose);
        assertThat(right).isBetween(0.5, 2.0); // plausible, so that the swap is the only thing that is wrong
        assertThat(areaLevel("1.5", swapped).share(dose) / right).isCloseTo(factor, within(1e-6));
    }

    @Test
    void an_area_product_far_over_its_level_is_warned_of_in_the_levels_own_unit() {
        var rules = new TechniqueRules(PHYSICS, List.of(areaLevel("1.5", "mGy cm2")));
        var answer = (Answer.Found)
                rules.answer(aRoom().room(), aChart().with(aRow().withKV("80")).version(), aQuery().query(), TODAY);
        assertThat(answer.technique().cautions().get(0))
                .startsWith("about 1094 mGy cm2 (air kerma-area product, without backscatter, within ")
                .contains(
                        " %; of the field the row names, a closer collimated one has less), the site's reference level is 1.5 mGy cm2");
    }

    @Test
    void an_estimate_far_over_its_level_names_quantity_and_uncertainty() {
        var rules = new TechniqueRules(PHYSICS, List.of(kermaLevel(Quantity.INCIDENT_AIR_KERMA, 0.1)));
        var technique = ((Answer.Found) rules.answer(
                        aRoom().room(), aChart().with(aRow().withKV("80")).version(), aQuery().query(), TODAY))
                .technique();
        assertThat(technique.cautions().get(0))
                .contains(" mGy (incident air kerma, without backscatter, within "
                        + technique.dose().orElseThrow().uncertaintyPercent()
                        + " %), the site's reference level is 0.1 mGy");
    }

    @Test
    void the_dose_step_says_of_which_field_the_area_product_is() {
        var rules = new TechniqueRules(PHYSICS, List.of());
        var steps = ((Answer.Found) rules.answer(
                        aRoom().room(), aChart().with(aRow().withKV("80")).version(), aQuery().query(), TODAY))
                .technique()
                .steps();
        assertThat(steps.get(steps.size() - 1).text())
                .endsWith("; kerma-area product of the field the row names, a closer collimated one has less");
    }

    @Test
    void a_unit_of_the_other_quantity_is_refused_and_the_right_ones_are_named() {
        assertThatThrownBy(() -> areaLevel("1.5", "mGy"))
                .hasMessage("reference level is 1.5 mGy, no unit of kerma-area-product: write uGy m2, mGy cm2, cGy cm2,"
                        + " dGy cm2, Gy cm2");
        assertThatThrownBy(() -> level(Quantity.INCIDENT_AIR_KERMA, "1.5", "Gy cm2"))
                .hasMessageContaining("no unit of incident-air-kerma: write uGy, mGy");
    }

    @ParameterizedTest
    @CsvSource({"101, Gy cm2", "100001, mGy cm2", "10001, uGy m2", "10001, cGy cm2", "1001, dGy cm2"})
    void what_no_radiograph_has_is_refused_as_a_wrong_unit(String value, String unit) {
        assertThatThrownBy(() -> areaLevel(value, unit)).hasMessageContaining("over 100 Gy cm2, check the unit");
    }

    @Test
    void a_level_of_nothing_is_impossible() {
        assertThatThrownBy(() -> level(Quantity.INCIDENT_AIR_KERMA, "0", "mGy"))
                .hasMessageContaining("0 mGy")
                .hasMessageContaining("over 0");
        assertThat(Quantity.find("dose")).isEmpty();
        assertThat(LevelUnit.find("Gycm2")).isEmpty();
    }

    private static ReferenceLevel areaLevel(String value, String unit) {
        return level(Quantity.KERMA_AREA_PRODUCT, value, unit);
    }

    private static ReferenceLevel kermaLevel(Quantity quantity, double milliGy) {
        return level(quantity, BigDecimal.valueOf(milliGy).toPlainString(), "mGy");
    }

    private static ReferenceLevel level(Quantity quantity, String value, String unit) {
        return new ReferenceLevel(
                "LSPINE",
                "ap",
                "adult",
                quantity,
                new BigDecimal(value),
                LevelUnit.find(unit).orElseThrow(),
                2026,
                "made for a test");
    }

    private static DoseEstimate estimate(List<ReferenceLevel> levels) {
        var chart = aChart().with(aRow().withKV("80")).version();
        var answer = new TechniqueRules(PHYSICS, levels).answer(aRoom().room(), chart, aQuery().query(), TODAY);
        return ((Answer.Found) answer).technique().dose().orElseThrow();
    }
}
