package wallchart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.grading.PhysicsLimits;
import wallchart.signoff.ReviewLimits;

/** What a site may write into its settings, and what stops the start. */
class SettingsFileTest {

    private static final Path EXAMPLE = Path.of("config/site.example.yaml");

    @TempDir
    private Path folder;

    @Test
    void the_example_says_what_holds_without_it() {
        assertThat(SettingsFile.read(EXAMPLE)).isEqualTo(Settings.defaults());
    }

    @Test
    void the_example_has_every_key_there_is() throws IOException {
        var example = new YAMLMapper().readTree(EXAMPLE.toFile());

        assertThat(keys(example)).isEqualTo(keysOf(SettingsDocument.class));
    }

    @Test
    void a_key_missing_in_the_example_would_be_noticed() throws IOException {
        var example = new YAMLMapper().readTree(EXAMPLE.toFile());
        ((ObjectNode) example.get("server")).remove("port");

        assertThat(keys(example)).isNotEqualTo(keysOf(SettingsDocument.class));
    }

    @Test
    void every_key_of_the_example_is_explained_right_above_it() throws IOException {
        var lines = Files.readAllLines(EXAMPLE);
        for (int i = 0; i < lines.size(); i++) {
            boolean leaf = lines.get(i).matches("(  )?\\w+: .+");
            if (leaf) {
                assertThat(lines.get(i - 1)).as("above " + lines.get(i)).contains("#");
            }
        }
    }

    @Test
    void an_empty_mapping_means_the_defaults() throws IOException {
        assertThat(read("server: {}")).isEqualTo(Settings.defaults());
    }

    @Test
    void a_site_changes_one_value_and_keeps_the_rest() throws IOException {
        var settings = read("server: {port: 8080}");

        assertThat(settings.server()).isEqualTo(new Settings.Server("127.0.0.1", 8080, false));
        assertThat(settings.database()).isEqualTo(Settings.defaults().database());
    }

    @Test
    void checkpoints_are_kept_beside_the_h2_file_unless_a_folder_is_chosen() throws IOException {
        assertThat(read("database: {url: \"jdbc:h2:file:./here/site\"}").ledgerFolder())
                .isEqualTo(Path.of("./here/site.ledger"));
        assertThat(read("database: {url: \"jdbc:postgresql://db/site\"}").ledgerFolder())
                .isEqualTo(Path.of("./data/wallchart.ledger"));
        assertThat(read("ledger: {folder: /mnt/proofs}").ledgerFolder()).isEqualTo(Path.of("/mnt/proofs"));
    }

    @Test
    void the_limits_of_a_change_are_the_sites_to_choose() throws IOException {
        assertThat(read("review: {maxExposureShiftDb: 0.5}").reviewLimits()).isEqualTo(new ReviewLimits(0.5, 25));
        assertThat(read("review: {maxKermaRisePercent: 10}").reviewLimits()).isEqualTo(new ReviewLimits(1.0, 10));
    }

    @Test
    void the_limits_of_a_charts_physics_are_the_sites_to_choose() throws IOException {
        assertThat(read("physics: {maxJumpDb: 1.5}").physicsLimits()).isEqualTo(new PhysicsLimits(1.5, 0.5));
        assertThat(read("physics: {maxSlopeDbPerCm: 1}").physicsLimits()).isEqualTo(new PhysicsLimits(1.0, 1.0));
    }

    @Test
    void how_often_a_tube_is_measured_is_the_sites_to_choose() throws IOException {
        assertThat(read("equipment: {outputDueMonths: 6}").equipment()).isEqualTo(new Settings.EquipmentPart(6));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            server: {prot: 7070}                       | server.prot is no known key: write one of host, port, secureCookies
            srever: {port: 7070}                       | srever is no known key
            server: {port: 70700}                      | port is 70700: 0 to 65535
            server: {port: -1}                         | port is -1
            server: {port: ten}                        | server.port is "ten", no number
            server: {port: 7070.5}                     | server.port
            server: {host: ""}                         | host is empty
            server: {secureCookies: maybe}             | server.secureCookies is "maybe", neither true nor false
            database: {url: "jdbc:mysql://x"}          | url is "jdbc:mysql://x": write jdbc:h2:file
            database: {poolSize: 0}                    | poolSize is 0: 1 to 100
            database: {user: " "}                      | user is empty
            site: {name: ""}                           | name is empty
            site: {address: "wallchart.example.org"}   | address is "wallchart.example.org": write https:// and the host
            site: {address: "https://a.example/x"}     | address is "https://a.example/x": write https:// and the host
            site: {address: "ftp://a.example"}         | address is "ftp://a.example": write https:// and the host
            chart: {reviewAfterMonths: 61}             | reviewAfterMonths is 61: 1 to 60
            session: {idleMinutes: 1}                  | idleMinutes is 1: 2 to 1440
            session: {idleMinutes: 60, absoluteHours: 0} | absoluteHours is 0
            ledger: {file: x}                          | ledger.file is no known key: write one of folder
            review: {maxExposureShiftDb: 0}            | review: largest exposure shift is 0.0 dB: over 0, at most 10
            review: {maxExposureShiftDb: 1e0}          | review.maxExposureShiftDb is "1e0", no number
            review: {maxKermaRisePercent: -1}          | review: largest kerma rise is -1 %: 0 to 1000
            review: {maxKermaRisePercent: 2.5}         | review.maxKermaRisePercent
            physics: {maxJumpDb: 0}                    | physics: largest jump between bands is 0.0 dB: over 0, at most 10
            physics: {maxSlopeDbPerCm: 6}              | physics: largest slope inside a band is 6.0 dB per cm: over 0, at most 5
            physics: {maxSlope: 1}                     | physics.maxSlope is no known key: write one of maxJumpDb, maxSlopeDbPerCm
            equipment: {outputDueMonths: 0}            | equipment: outputDueMonths is 0: 1 to 60
            equipment: {outputDueMonths: 61}           | equipment: outputDueMonths is 61: 1 to 60
            patientGroups: [{id: Adult, label: A, by: age}]    | patient group is "Adult": 1 to 32 lower-case
            patientGroups: [{id: adult, label: A, by: height}] | by is "height": write age, weight or size
            patientGroups: [{label: A, by: age}]       | patientGroups.0: id is missing
            referenceLevels: [{bodyPart: CHEST, projection: pa, patientGroup: adult, quantity: incident-air-kerma, value: -1, unit: mGy, year: 2000, source: s}] | reference level is -1 mGy
            referenceLevels: [{bodyPart: CHEST, projection: pa, patientGroup: adult, quantity: incident-air-kerma, value: 1e3, unit: mGy, year: 2000, source: s}] | value is "1e3", no number: write plain digits
            referenceLevels: [{bodyPart: CHEST, projection: pa, patientGroup: adult, quantity: dose, value: 1, unit: mGy, year: 2000, source: s}] | quantity is "dose"
            referenceLevels: [{bodyPart: CHEST, projection: pa, patientGroup: adult, quantity: kerma-area-product, value: 1, unit: mGy, year: 2000, source: s}] | reference level is 1 mGy, no unit of kerma-area-product: write uGy m2, mGy cm2
            referenceLevels: [{bodyPart: CHEST, projection: pa, patientGroup: adult, quantity: kerma-area-product, value: 1, unit: Gycm2, year: 2000, source: s}] | unit is "Gycm2": write uGy m2, mGy cm2, cGy cm2, dGy cm2, Gy cm2
            referenceLevels: [{bodyPart: CHEST, projection: pa, patientGroup: adult, quantity: kerma-area-product, value: 2500, unit: Gy cm2, year: 2000, source: s}] | no radiograph has one over 100 Gy cm2, check the unit
            """)
    void a_bad_value_is_named_with_its_key_and_what_would_be_right(String yaml, String message) {
        assertThatThrownBy(() -> read(yaml))
                .isInstanceOf(BadSettings.class)
                .hasMessageContaining("site.yaml")
                .hasMessageContaining(message)
                .message()
                .satisfies(text -> assertThat(text.lines()).hasSize(1));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "server: {port: 1, port: 2}",
                "server: [",
                "- 1",
                "",
                "server: &a {port: 1}\nsite: *a",
                "\"text\""
            })
    void what_is_not_our_yaml_is_refused_in_one_line(String yaml) {
        assertThatThrownBy(() -> read(yaml))
                .isInstanceOf(BadSettings.class)
                .message()
                .satisfies(text -> assertThat(text.lines()).hasSize(1));
    }

    @Test
    void a_missing_file_is_named() {
        assertThatThrownBy(() -> SettingsFile.read(folder.resolve("none.yaml")))
                .isInstanceOf(BadSettings.class)
                .hasMessageContaining("none.yaml does not exist");
    }

    private Settings read(String yaml) throws IOException {
        return SettingsFile.read(Files.writeString(folder.resolve("site.yaml"), yaml));
    }

    private static Set<String> keys(JsonNode node) {
        var keys = new TreeSet<String>();
        node.properties().forEach(entry -> {
            keys.add(entry.getKey());
            entry.getValue().fieldNames().forEachRemaining(name -> keys.add(entry.getKey() + "." + name));
        });
        return keys;
    }

    private static Set<String> keysOf(Class<?> document) {
        var keys = new TreeSet<String>();
        for (var component : document.getRecordComponents()) {
            keys.add(component.getName());
            if (component.getType().isRecord()) {
                Arrays.stream(component.getType().getRecordComponents())
                        .map(RecordComponent::getName)
                        .forEach(name -> keys.add(component.getName() + "." + name));
            }
        }
        return keys;
    }
}
