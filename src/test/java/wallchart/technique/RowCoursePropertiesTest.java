package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.math.BigDecimal;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.assertj.core.data.Percentage;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Room;
import wallchart.quantity.PartThickness;

/** The short cuts for checks of a whole chart say what the rules and the model say that answers are made with. */
class RowCoursePropertiesTest {

    private static final Room ROOM = aRoom().room();
    private static final ExposureModel MODEL = new ExposureModel(TechniqueFixtures.PHYSICS);
    private static final Predictions PREDICTIONS = new Predictions(TechniqueFixtures.PHYSICS);

    @Property(tries = 300)
    void a_row_sets_along_its_band_what_the_rules_of_an_answer_set(
            @ForAll @IntRange(min = 0, max = 4) int method,
            @ForAll @IntRange(min = 50, max = 120) int kV,
            @ForAll @IntRange(min = 1, max = 400) int tenthsOfRate,
            @ForAll boolean windowed,
            @ForAll @IntRange(min = 1000, max = 2999) int hundredths) {
        var row = aRow(method, kV, tenthsOfRate, windowed).row();
        var thickness = new PartThickness(BigDecimal.valueOf(hundredths, 2));
        var how = Arrangement.find(ROOM, row).orElseThrow();
        var course = new RowCourse(ROOM, row, new ArrangedBeam(MODEL, how, how.response()));

        var predicted = PREDICTIONS.find(ROOM, row, thickness, Optional.empty());
        var set = course.at(thickness.inCentimetres());

        assertThat(predicted.isPresent()).isEqualTo(set.kV() > 0);
        predicted.ifPresent(rules -> {
            assertThat(set.kV()).isCloseTo(rules.kV(), within(1e-9));
            assertThat(set.mAs()).isCloseTo(rules.mAs(), Percentage.withPercentage(1e-7));
        });
    }

    private static RowBuilder aRow(int method, int kV, int tenthsOfRate, boolean windowed) {
        var row = ChartFixtures.aRow().withBand(10, 30).withKV(String.valueOf(kV));
        if (windowed) {
            row.withKVWindow(String.valueOf(kV - 4), String.valueOf(kV + 6));
        }
        var rate = BigDecimal.valueOf(tenthsOfRate, 1);
        return switch (method) {
            case 0 -> row.withMethod("fixed");
            case 1 -> row.withMethod("attenuation");
            case 2 -> row.withMethod("kv-per-cm", rate.min(BigDecimal.TEN).toPlainString());
            default ->
                row.withMethod("mas-per-cm", rate.min(BigDecimal.valueOf(20)).toPlainString());
        };
    }

    /** The fixtures' tube was measured from 50 kV: below, the fit goes on from its end. */
    @Property(tries = 300)
    void a_beam_made_ready_has_the_models_signal(
            @ForAll @IntRange(min = 4000, max = 15000) int hundredthsOfKilovolt,
            @ForAll @IntRange(min = 0, max = 360) int millimetres) {
        var how = Arrangement.find(ROOM, ChartFixtures.aRow().row()).orElseThrow();
        var beam = new ArrangedBeam(MODEL, how, how.response());
        double kV = hundredthsOfKilovolt / 100.0;
        double thickness = millimetres / 10.0;

        assertThat(beam.signalPerMAs(kV, thickness))
                .isCloseTo(MODEL.signalPerMAs(how, kV, thickness), Percentage.withPercentage(0.1));
    }

    @Property(tries = 100)
    void a_beam_made_ready_objects_where_the_model_does(
            @ForAll @IntRange(min = 20, max = 170) int kV, @ForAll @IntRange(min = 0, max = 60) int centimetres) {
        var how =
                Arrangement.find(ROOM, ChartFixtures.aRow().withSid("90").row()).orElseThrow();
        var beam = new ArrangedBeam(MODEL, how, how.response());

        assertThat(beam.findObjection(kV, centimetres)).isEqualTo(MODEL.findObjection(how, kV, centimetres));
    }
}
