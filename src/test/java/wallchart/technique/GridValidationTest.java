package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aParallelGrid;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;
import wallchart.equipment.Room;

/** Grid conversions by a flat table (common practice, no source) and by tube voltage (from memory). */
@Validation
class GridValidationTest {

    /** 5:1 2, 6:1 3, 8:1 4, 10:1 and 12:1 5, 16:1 6 at every kV: common practice, no source. */
    private static final Room FLAT = aHandbookRoom().room();

    /** Factors at 70, 90 and 120 kV, from memory: they rise with ratio and kV (Radiopaedia, "Bucky factor", 2021). */
    private static final Room BY_KV = aHandbookRoom()
            .withGrids(List.of(
                    aParallelGrid("5", "70 2", "90 2.5", "120 3"),
                    aParallelGrid("6", "70 2.2", "90 2.7", "120 3.2"),
                    aParallelGrid("8", "70 3", "90 3.5", "120 4"),
                    aParallelGrid("10", "70 3.2", "90 3.7", "120 4.4"),
                    aParallelGrid("12", "70 3.5", "90 4", "120 5"),
                    aParallelGrid("16", "70 4", "90 5", "120 6")))
            .room();

    @ParameterizedTest(name = "{0} mAs with {1} is {3} mAs with {2} ({4})")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            40 | g12  | g6   | 24 | common practice, no source
            3  | none | g12  | 15 | common practice, no source
            8  | none | g8   | 32 | common practice, no source
            60 | g16  | g8   | 40 | common practice, no source
            12 | g8   | none | 3  | common practice, no source
            10 | none | g5   | 20 | common practice, no source: flat table, 5:1
            10 | none | g6   | 30 | common practice, no source: flat table, 6:1
            10 | none | g10  | 50 | common practice, no source: flat table, 10:1
            10 | none | g16  | 60 | common practice, no source: flat table, 16:1
            """)
    void a_grid_is_exchanged_by_the_ratio_of_the_factors(
            String mAs, String from, String to, double expected, String source) {
        var row = aHandbookRow().withMAs(mAs).withGrid(from);
        var technique = found(FLAT, row, aQuery().of(row.row()).withGrid(to));
        assertThat(technique.exact().mAs()).as(source).isCloseTo(expected, within(1e-12));
    }

    @ParameterizedTest(name = "{0} at {1} kV takes x {2} (from memory)")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            g5  |  70 | 2
            g5  |  90 | 2.5
            g5  | 120 | 3
            g8  |  70 | 3
            g8  |  90 | 3.5
            g8  | 120 | 4
            g12 |  70 | 3.5
            g12 |  90 | 4
            g12 | 120 | 5
            g16 |  70 | 4
            g16 |  90 | 5
            g16 | 120 | 6
            """)
    void a_grid_costs_more_the_higher_the_kv(String grid, String kV, double expected) {
        var row = aHandbookRow().withKV(kV);
        var technique = found(BY_KV, row, aQuery().of(row.row()).withGrid(grid));
        assertThat(technique.exact().mAs()).isCloseTo(10 * expected, within(1e-9));
    }

    @ParameterizedTest(name = "from {0} kV to {1} kV and from 8:1 to 12:1 the factor rises")
    @CsvSource({"70, 90", "90, 120", "75, 80", "100, 101"})
    void the_factor_rises_with_kv_and_with_ratio(double lower, double higher) {
        // Radiopaedia, "Bucky factor", 2021: rises with tube voltage and with grid ratio
        var eight = BY_KV.findGrid("g8").orElseThrow();
        var twelve = BY_KV.findGrid("g12").orElseThrow();
        assertThat(eight.factorAt(higher)).isGreaterThan(eight.factorAt(lower));
        assertThat(twelve.factorAt(higher)).isGreaterThan(twelve.factorAt(lower));
        assertThat(twelve.factorAt(lower)).isGreaterThan(eight.factorAt(lower));
    }
}
