package wallchart.physics;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.physics.PhysicsFixtures.PHYSICS;
import static wallchart.physics.PhysicsFixtures.relativeError;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;

/**
 * Mass attenuation coefficients against those of xraylib 4.0.0, a general library of photon cross-sections (BSD 3-clause), as the
 * script {@code src/test/xraylib/attenuation.py} wrote them. cm2/g, every keV from 8 to 150.
 *
 * <p>Tolerance: 0.12 % for light materials, 0.4 % for heavy ones, what two compilations of the same measurements agree to. Tungsten
 * at 12 keV, just below an L edge, differs by 1.3 %; 1.5 mm of aluminium lets one photon in 500 of that energy through.
 */
class AttenuationAgainstXraylibTest {

    private static final ResourceTable XRAYLIB = ResourceTable.read("attenuation_xraylib.csv");
    private static final ResourceTable SHIPPED = ResourceTable.read("attenuation_1keV.csv");
    private static final ResourceTable WINDOW = ResourceTable.read("window_materials.csv");
    private static final Path SCRIPT = Path.of("src/test/xraylib/attenuation.py");
    private static final int BELOW_AN_L_EDGE = 12;

    @Validation
    @ParameterizedTest
    @CsvSource({"water, 0.0012", "air, 0.0012", "Al, 0.0012", "Cu, 0.004", "W, 0.004"})
    void shipped_coefficients_are_those_of_the_library(String material, double tolerance) {
        for (int energy = EnergyBins.LOWEST_KEV; energy <= EnergyBins.HIGHEST_KEV; energy++) {
            boolean justBelowTheEdge = material.equals("W") && energy == BELOW_AN_L_EDGE;
            assertThat(error(SHIPPED, material, energy))
                    .as("%s at %s keV", material, energy)
                    .isLessThan(justBelowTheEdge ? 0.015 : tolerance);
        }
    }

    @Validation
    @ParameterizedTest
    @CsvSource({"Be, 0.0015", "kapton, 0.0012"})
    void coefficients_of_the_measured_beams_windows_are_those_of_the_library(String material, double tolerance) {
        for (int energy = EnergyBins.LOWEST_KEV; energy <= EnergyBins.HIGHEST_KEV; energy++) {
            assertThat(error(WINDOW, material, energy))
                    .as("%s at %s keV", material, energy)
                    .isLessThan(tolerance);
        }
    }

    /** A layer of 0.20 g/cm2 takes up no more energy than the photons it stops bring, and loses no more than its K photons carry. */
    @Validation
    @Test
    void the_caesium_iodide_layer_takes_up_most_of_the_energy_that_it_stops_and_never_more() {
        var response = PHYSICS.tables().response(ReceptorResponse.CESIUM_IODIDE);
        var library = XRAYLIB.perEnergy("mu_csi");
        for (int bin = 0; bin < EnergyBins.COUNT; bin++) {
            double stopped = EnergyBins.energyOf(bin) * (1 - Math.exp(-0.20 * library.at(bin)));
            assertThat(response.at(bin) / stopped)
                    .as("%s keV", EnergyBins.energyOf(bin))
                    .isBetween(0.75, 0.96);
        }
    }

    @Test
    void the_comparison_notices_half_a_percent_in_aluminium() {
        var shipped = SHIPPED.perEnergy("mu_Al");
        var library = XRAYLIB.perEnergy("mu_Al");
        int bin = EnergyBins.binOf(60);
        assertThat(relativeError(shipped.at(bin) * 1.005, library.at(bin))).isGreaterThan(0.0012);
    }

    @Test
    void the_file_has_what_the_script_asks_the_library_for() throws IOException {
        var script = Files.readString(SCRIPT);
        var span =
                found("ENERGIES_KEV = range\\((\\d+), (\\d+) \\+ 1\\)", script).get(0);
        var energies = IntStream.rangeClosed(Integer.parseInt(span.group(1)), Integer.parseInt(span.group(2)))
                .mapToObj(Integer::toString)
                .toList();
        assertThat(XRAYLIB.texts("energy_keV")).isEqualTo(energies);
        var materials = found("(?m)^    \"(\\w+)\": \".+\",$", script);
        assertThat(columns())
                .isEqualTo("energy_keV,mu_"
                        + String.join(
                                ",mu_",
                                materials.stream().map(match -> match.group(1)).toList()));
    }

    @Test
    void the_file_names_the_library_its_version_the_day_and_the_licence() throws IOException {
        assertThat(lines())
                .anyMatch(line ->
                        line.matches("# Source: xraylib 4\\.0\\.0, run 20\\d\\d-\\d\\d-\\d\\d by " + SCRIPT + ";.*"))
                .anyMatch(line -> line.contains("Licence of xraylib: BSD 3-clause"));
    }

    private static double error(ResourceTable table, String material, int energy) {
        int bin = EnergyBins.binOf(energy);
        var library = XRAYLIB.perEnergy("mu_" + material);
        return relativeError(table.perEnergy("mu_" + material).at(bin), library.at(bin));
    }

    private static String columns() throws IOException {
        return lines().stream()
                .filter(line -> !line.startsWith("#"))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> lines() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/physics/attenuation_xraylib.csv"));
    }

    private static List<MatchResult> found(String pattern, String text) {
        return Pattern.compile(pattern).matcher(text).results().toList();
    }
}
