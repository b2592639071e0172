package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.manual;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import wallchart.Validation;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Distance;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;

/** Wrong answers that are in circulation in teaching material (common practice, no source), none of which may come out. */
@Validation
class WrongAnswersValidationTest {

    @Test
    void six_hundred_milliamperes_for_a_hundred_milliseconds_are_60_mas_and_not_10() {
        var room = aHandbookRoom().withGenerator(aConsole("10 60", "600")).room();
        var sixty = aHandbookRow().withMAs("60");
        assertThat(manual(found(room, sixty, aQuery().of(sixty.row()))).time())
                .isEqualTo(ExposureTime.milliseconds(100));
        var ten = aHandbookRow().withMAs("10");
        assertThat(manual(found(room, ten, aQuery().of(ten.row()))).time())
                .isNotEqualTo(ExposureTime.milliseconds(100));
        assertThat(CurrentTimeProduct.milliampereSeconds(10).timeAt(TubeCurrent.milliamperes(600)))
                .isEqualTo(ExposureTime.milliseconds("16.667"));
    }

    @Test
    void coming_nearer_from_72_to_40_inches_lowers_the_mas_and_does_not_raise_it() {
        var row = aHandbookRow().withMAs("81").withSid("182.88");
        var nearer = aQuery().of(row.row()).atSid(Distance.inches(new BigDecimal("40")));
        double mAs = found(aHandbookRoom().room(), row, nearer).exact().mAs();
        assertThat(mAs).isCloseTo(25, within(1e-9)); // 81 x (40/72)^2
        assertThat(mAs).isNotCloseTo(81 * 3.24, within(200.0)); // 81 x (72/40)^2
    }

    @Test
    void going_from_36_to_42_inches_at_400_milliamperes_takes_0_204_seconds_and_not_0_067() {
        // 600 mA x 0.10 s at 36 in; 60 x (42/36)^2 = 81.67 mAs; / 400 mA = 0.204 s
        var room = aHandbookRoom()
                .withGenerator(aConsole("20 40 60 81.667", "400"))
                .room();
        var row = aHandbookRow().withMAs("60").withSid("91.44");
        var set = manual(found(room, row, aQuery().of(row.row()).atSid(Distance.inches(new BigDecimal("42")))));
        assertThat(set.mA()).isEqualTo(TubeCurrent.milliamperes(400));
        assertThat(set.time().inMilliseconds() / 1000).isCloseTo(0.204, within(0.0005));
        assertThat(set.time().inMilliseconds() / 1000).isNotCloseTo(0.067, within(0.1));
    }

    @Test
    void a_two_millisecond_exposure_makes_336_heat_units_and_not_3_36() {
        var room = aHandbookRoom().withGenerator(aConsole("2", "100")).room();
        var row = aHandbookRow().withKV("120").withMAs("2");
        double heatUnits = found(room, row, aQuery().of(row.row())).heatUnits();
        assertThat(heatUnits).isCloseTo(336, within(1e-9));
        assertThat(heatUnits).isGreaterThan(100);
    }
}
