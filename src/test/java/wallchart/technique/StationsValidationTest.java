package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;
import static wallchart.technique.TechniqueFixtures.manual;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.equipment.PreferredNumbers;
import wallchart.equipment.Room;

/** Stations of preferred numbers, and the deviation that rounding to one brings in the decibels of the deviation index. */
@Validation
class StationsValidationTest {

    /** Stations 0.5 to 500 of R'10 (ISO 497:1973). */
    private static final Room ROUNDED = aHandbookRoom().room();

    /** Two stations far apart, so that a rounding of any size up to 10 dB can be asked for. */
    private static final Room COARSE =
            aHandbookRoom().withGenerator(aConsole("1 100", "10 100")).room();

    @ParameterizedTest(name = "{0} mAs snaps to {1} ({2})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            2.84  | 3.2  | ISO 497 R'10: log midpoint of 2.5 and 3.2 is 2.828, though 2.85 is the arithmetic one
            2.829 | 3.2  | ISO 497 R'10: over the log midpoint 2.828
            2.828 | 2.5  | ISO 497 R'10: under the log midpoint 2.8284
            1.41  | 1.25 | ISO 497 R'10: log midpoint of 1.25 and 1.6 is 1.414
            1.42  | 1.6  | ISO 497 R'10: arithmetic midpoint is 1.425
            9     | 10   | ISO 497 R'10: log midpoint of 8 and 10 is 8.944
            8.94  | 8    | ISO 497 R'10: log midpoint of 8 and 10 is 8.944
            35.7  | 32   | ISO 497 R'10: log midpoint of 32 and 40 is 35.777
            """)
    void the_nearest_station_is_so_on_a_logarithmic_scale(String mAs, String station, String source) {
        var row = aHandbookRow().withMAs(mAs);
        var set = manual(found(ROUNDED, row, aQuery().of(row.row())));
        assertThat(set.mAs().toString()).as(source).isEqualTo(station + " mAs");
    }

    @Test
    void the_nearest_station_of_the_rounded_series_is_at_most_0_54_decibels_away() {
        // ISO 497 R'10: its widest step is 1.25 to 1.6 or 2.5 to 3.2, x 1.28: half of it is 0.536 dB
        double worst = 0;
        for (int thousandths = 500; thousandths <= 50_000; thousandths += 7) {
            double mAs = thousandths / 1000.0;
            var station = ROUNDED.generator().mAs().nearest(mAs);
            worst = Math.max(worst, Math.abs(ExposureArithmetic.decibels(station.inMilliampereSeconds() / mAs)));
        }
        assertThat(worst).isCloseTo(0.536, within(0.001)).isLessThan(0.54);
    }

    @ParameterizedTest(name = "EI/EI_T {0} is DI {1}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            0.25  | -6.02   | 0.005
            0.5   | -3.01   | 0.005
            0.631 | -2.0    | 0.005
            0.794 | -1.0    | 0.005
            1.259 | 1.0     | 0.005
            1.585 | 2.0     | 0.005
            1.995 | 3.0     | 0.005
            2     | 3.0103  | 0.00005
            4     | 6.02    | 0.005
            """)
    void the_rounding_is_told_as_a_deviation_index(double ratio, double deviation, double tolerance) {
        // IEC 62494-1:2008: DI = 10 log10(EI / EI_T), computed for these ratios
        double station = ratio < 1 ? 1 : 100;
        var row = aHandbookRow().withMAs("%.3f".formatted(station / ratio));
        var technique = found(COARSE, row, aQuery().of(row.row()));
        assertThat(technique.roundingDeviation()).isCloseTo(deviation, within(tolerance));
    }

    @Test
    void a_setting_on_its_station_does_not_deviate() {
        // IEC 62494-1:2008: DI = 0 at the target
        var row = aHandbookRow().withMAs("100");
        assertThat(found(COARSE, row, aQuery().of(row.row())).roundingDeviation())
                .isZero();
    }

    @Test
    void one_step_of_the_exact_series_is_one_decibel() {
        // ISO 3: R10 is the tenth root of 10; its rounded values keep 1.0 dB within 0.09
        var decade = PreferredNumbers.R10.decade();
        for (int i = 1; i < decade.size(); i++) {
            double step = decade.get(i).doubleValue() / decade.get(i - 1).doubleValue();
            assertThat(ExposureArithmetic.decibels(step)).isCloseTo(1, within(0.09));
        }
        assertThat(ExposureArithmetic.decibels(Math.pow(10, 0.1))).isCloseTo(1, within(1e-12));
    }
}
