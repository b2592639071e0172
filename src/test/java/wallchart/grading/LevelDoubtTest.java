package wallchart.grading;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.grading.GradingFixtures.aLevel;
import static wallchart.grading.GradingFixtures.aRow;
import static wallchart.grading.GradingFixtures.anHonestRow;
import static wallchart.grading.GradingFixtures.beside;
import static wallchart.grading.GradingFixtures.checked;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Chamber;
import wallchart.grading.PhysicsFinding.Kind;
import wallchart.quantity.Decimals;
import wallchart.technique.DoseEstimate;
import wallchart.technique.LevelUnit;
import wallchart.technique.ReferenceLevel.Quantity;

/** A level in the wrong unit is questioned, also where the slip is the commonest one, a factor of ten; an honest one never. */
class LevelDoubtTest {

    private static final RowBuilder THIN = anHonestRow(12, 18);
    private static final RowBuilder USUAL = anHonestRow(18, 24);
    private static final RowBuilder THICK = anHonestRow(24, 30);

    private static DoseEstimate dose(RowBuilder row) {
        return checked(row).rows().get(0).dose().orElseThrow();
    }

    /** What is said of a level over which the row of usual size is so many times. */
    private static Optional<PhysicsFinding> doubt(double usualOverLevel, RowBuilder... rows) {
        double level = dose(USUAL).areaProduct().micrograyMetresSquared() / usualOverLevel;
        return beside(
                        aLevel(
                                Decimals.significant(level, 5),
                                LevelUnit.CENTIGRAY_SQUARE_CENTIMETRE,
                                Quantity.KERMA_AREA_PRODUCT),
                        rows)
                .find(Kind.DOUBTFUL_AREA_LEVEL);
    }

    /** From the department that does a third less than most to the one that does a third more, beside levels new and old. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.3, 0.7, 1, 1.3, 2})
    void an_honest_level_is_not_questioned(double usualOverLevel) {
        assertThat(doubt(usualOverLevel, THIN, USUAL, THICK)).isEmpty();
    }

    /** A level of x cGy cm2 that was written as x dGy cm2: ten times as high. */
    @ParameterizedTest
    @ValueSource(doubles = {0.3, 0.7})
    void a_level_ten_times_too_high_is_questioned(double usualOverLevel) {
        var found = doubt(usualOverLevel / 10, THIN, USUAL);

        assertThat(found).isPresent();
        assertThat(found.get().reason())
                .startsWith("even the largest estimate of all its rows, ")
                .contains("at 21 cm", "is 1/" + Math.round(10 / usualOverLevel) + " of the site's reference level")
                .contains("of the field the row names, a closer collimated one has less");
    }

    /** A level of x cGy cm2 that was written as x mGy cm2: ten times as low. */
    @ParameterizedTest
    @ValueSource(doubles = {0.7, 1})
    void a_level_ten_times_too_low_is_questioned_by_the_row_of_usual_size(double usualOverLevel) {
        var found = doubt(usualOverLevel * 10, THIN, USUAL, THICK);

        assertThat(found).isPresent();
        assertThat(found.get().row()).isEqualTo("LSPINE/ap/adult/table-bucky/18-24");
        assertThat(found.get().reason())
                .startsWith("the estimate of ")
                .contains("is " + Math.round(usualOverLevel * 10) + " times the site's reference level");
    }

    @Test
    void a_level_that_even_the_thinnest_row_is_over_is_questioned_sooner() {
        double thin =
                dose(THIN).entrance().micrograys() / dose(USUAL).entrance().micrograys();

        assertThat(thin * 2.6).isLessThan(1);
        assertThat(doubt(2.6, THIN, USUAL, THICK)).isEmpty();
        assertThat(thin * 4.5).isGreaterThan(1);
        assertThat(doubt(4.5, THIN, USUAL, THICK)).isPresent();
        assertThat(doubt(2.4, USUAL, THICK)).isEmpty();
    }

    /** A thick patient's row over five times the level is what thick patients cost, a thin one's under a fifth what thin ones do. */
    @Test
    void the_ends_of_an_examination_alone_question_no_level() {
        double thick = dose(THICK).entrance().micrograys();
        double thin = dose(THIN).entrance().micrograys();
        double usual = dose(USUAL).entrance().micrograys();

        assertThat(thick / usual * 2).isGreaterThan(5);
        assertThat(thin / usual * 0.3).isLessThan(0.2);
        assertThat(doubt(2, THIN, USUAL, THICK)).isEmpty();
        assertThat(doubt(0.3, THIN, USUAL, THICK)).isEmpty();
    }

    /** What AEC gives is less than its back-up: under a fifth of the level at the back-up says the more, over the level nothing. */
    @Test
    void an_aec_row_questions_a_level_by_its_upper_bound_downwards_only() {
        var automatic = aRow(18, 24).withMethod("fixed").withAec(0, "20", Chamber.CENTRE);

        var found = doubt(0.15, automatic);
        assertThat(found).isPresent();
        assertThat(found.get().reason()).startsWith("even the upper bound at the AEC back-up, ");
        assertThat(doubt(0.3, automatic)).isEmpty();
        assertThat(doubt(50, automatic)).isEmpty();
    }

    @Test
    void a_level_seven_times_the_only_row_is_called_by_a_fraction() {
        var row = aRow(18, 24).withMAs("20");
        double level = dose(row).entrance().inMilligrays() * 7;

        assertThat(beside(
                                aLevel(
                                        Decimals.significant(level, 4),
                                        LevelUnit.MILLIGRAY,
                                        Quantity.ENTRANCE_SURFACE_AIR_KERMA),
                                row)
                        .find(Kind.DOUBTFUL_KERMA_LEVEL)
                        .orElseThrow()
                        .reason())
                .startsWith("the estimate of ")
                .contains("is 1/7 of the site's reference level");
    }
}
