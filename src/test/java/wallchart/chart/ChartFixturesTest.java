package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class ChartFixturesTest {

    @Test
    void a_chart_with_a_band_has_that_row() {
        var version = ChartFixtures.aChart().withBand(18, 24).version();
        assertThat(version.rows("LSPINE", "ap", "adult"))
                .singleElement()
                .hasToString(ChartFixtures.aRow().row().toString());
    }
}
