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
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.equipment.FocalSpot;
import wallchart.equipment.FocalSpotName;
import wallchart.quantity.ElectricPower;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** Reciprocity mAs = mA x s, heat units kV x mA x s x w, and power at a constant potential, asked of the rules. */
@Validation
class ReciprocityValidationTest {

    @ParameterizedTest(name = "{0} mA x {1} ms is {2} mAs ({3})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            400 | 500 | 200 | common practice, no source: 400 mA x 0.5 s
            300 | 100 | 30  | common practice, no source: 300 mA x 1/10 s
            600 | 100 | 60  | common practice, no source: 600 mA x 100 ms
            """)
    void current_and_time_make_the_mas(String mA, double milliseconds, String mAs, String source) {
        var room = aHandbookRoom().withGenerator(aConsole(mAs, mA)).room();
        var row = aHandbookRow().withMAs(mAs);
        var set = manual(found(room, row, aQuery().of(row.row())));
        assertThat(set.mA()).isEqualTo(TubeCurrent.milliamperes(mA));
        assertThat(set.time().inMilliseconds()).as(source).isEqualTo(milliseconds);
        assertThat(set.mAs().inMilliampereSeconds()).isEqualTo(Double.parseDouble(mAs));
    }

    @ParameterizedTest(name = "{0} kV {1} mAs on a {2} generator is {3} HU ({4})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
             75 | 50  | single-phase   | 3750 | US Army MD0950: 75 kV 100 mA 1/2 s, w 1.0
             70 | 50  | six-pulse      | 4725 | US Army MD0950: 70 kV 100 mA 1/2 s, w 1.35
            100 | 2.8 | high-frequency | 392  | common practice, no source: w 1.4
             60 | 36  | single-phase   | 2160 | common practice, no source: 60 kV 600 mA 0.06 s, w 1.0
            120 | 2   | high-frequency | 336  | common practice, no source: 120 kV 1000 mA 0.002 s, w 1.4
            """)
    void an_exposure_makes_so_many_heat_units(String kV, String mAs, String waveform, double expected, String source) {
        var room = aHandbookRoom()
                .withGenerator(aConsole(waveform, mAs, "100 200"))
                .room();
        var row = aHandbookRow().withKV(kV).withMAs(mAs);
        var technique = found(room, row, aQuery().of(row.row()));
        assertThat(technique.heatUnits()).as(source).isCloseTo(expected, within(1e-6));
    }

    @ParameterizedTest(name = "{0} kV x {1} mA is {2} kW")
    @CsvSource({"100, 500, 50", "80, 400, 32", "125, 640, 80"})
    void power_at_a_constant_potential_is_kv_times_ma_over_a_thousand(String kV, String mA, double kilowatts) {
        // definition of electric power at a constant potential: a rating of just that is kept, one of a watt less is
        // not
        var kilovolts = TubeVoltage.kilovolts(kV);
        var milliamperes = TubeCurrent.milliamperes(mA);
        var time = ExposureTime.milliseconds(100);
        assertThat(aSpot(kilowatts).bears(kilovolts, milliamperes, time)).isTrue();
        assertThat(aSpot(kilowatts - 0.001).bears(kilovolts, milliamperes, time))
                .isFalse();
    }

    private static FocalSpot aSpot(double kilowatts) {
        var rating =
                new FocalSpot.Rating(ExposureTime.milliseconds(1000), new ElectricPower(BigDecimal.valueOf(kilowatts)));
        return new FocalSpot(FocalSpotName.LARGE, new BigDecimal("1.2"), List.of(rating));
    }
}
