package wallchart.equipment;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wallchart.document.DocumentReading;
import wallchart.document.Documents;
import wallchart.equipment.EquipmentReading.Problem;
import wallchart.quantity.Distance;

class EquipmentFileTest {

    private static final String GOOD =
            """
            room: r1
            name: "Room 1"
            generator:
              waveform: high-frequency
              kV: {from: 40, to: 150, step: 1}
              mAs: {series: "R'10", from: 0.5, to: 500}
              mA: {stations: [10, 100, 500]}
              shortestTimeMs: 1
              aec: {densities: [-1, 0, 1], largestBackupMAs: 400}
            tube:
              anodeAngleDeg: 12
              totalFiltrationMmAl: 3.0
              focalSpots:
                - name: small
                  nominalMm: 0.6
                  rating: [{timeMs: 100, kW: 32}, {timeMs: 500, kW: 25}]
              output:
                measuredOn: 2026-09-14
                totalFiltrationMmAl: 3.0
                hvlMmAl: 3.1
                hvlAtKV: 80
                uncertaintyPercent: 8
                microGyPerMAsAtOneMetre: [{kV: 50, output: 21.0}, {kV: 80, output: 51}, {kV: 120, output: 110}]
            grids:
              - id: g10
                ratio: 10
                linesPerCm: 40
                focalDistanceCm: 110
                focalRangeCm: {from: 95, to: 130}
                factors: [{kV: 70, factor: 3.2}, {kV: 120, factor: 4.4}]
            receptors:
              - {id: dr1, name: "Flat panel", kind: csi, sizesCm: ["43x43"], targetExposureIndex: 400}
            supports:
              - kind: table-bucky
                receptorGapCm: 6
                sidCm: {from: 90, to: 125}
                grids: [g10, none]
                receptors: [dr1]
                aecChambers: [left, centre, right]
            """;

    private record Impossible(String from, String to, String field) {
        @Override
        public String toString() {
            return field + " <- " + to.strip();
        }
    }

    private static Impossible impossible(String from, String to, String field) {
        return new Impossible(from, to, field);
    }

    static Stream<Impossible> impossibleEquipment() {
        return Stream.of(
                impossible("room: r1", "room: R 1", "/room"),
                impossible("room: r1\n", "", "/room"),
                impossible("room: r1", "room: r1\nroom: r2", "/room"),
                impossible("room: r1", "room: r1\ncolour: red", "/colour"),
                impossible("room: r1", "room: r1\na/b~c: red", "/a~1b~0c"),
                impossible("\"Room 1\"", "12", "/name"),
                impossible("\"Room 1\"", "[Room]", "/name"),
                impossible("high-frequency", "pulsing", "/generator/waveform"),
                impossible("{from: 40, to: 150, step: 1}", "{from: 40, to: 150}", "/generator/kV"),
                impossible("{from: 40, to: 150, step: 1}", "{from: 40, to: 150, step: 0}", "/generator/kV"),
                impossible("{from: 40, to: 150, step: 1}", "{from: 40, to: 250, step: 1}", "/generator/kV"),
                impossible("{from: 40, to: 150, step: 1}", "{from: 150, to: 40, step: 1}", "/generator/kV"),
                impossible("from: 40,", "from: \"40\",", "/generator/kV/from"),
                impossible("from: 40,", "from: 4e1,", "/generator/kV/from"),
                impossible("from: 40,", "from: 040,", "/generator/kV/from"),
                impossible("from: 40,", "from: .nan,", "/generator/kV/from"),
                impossible("step: 1}", "step: 1, stride: 2}", "/generator/kV/stride"),
                impossible("R'10", "R'11", "/generator/mAs"),
                impossible("from: 0.5,", "from: 0.6,", "/generator/mAs"),
                impossible("[10, 100, 500]", "[10, 500, 100]", "/generator/mA/stations"),
                impossible("[10, 100, 500]", "[10, null, 500]", "/generator/mA/stations/1"),
                impossible("[10, 100, 500]", "[]", "/generator/mA/stations"),
                impossible("shortestTimeMs: 1", "shortestTimeMs: 0", "/generator/shortestTimeMs"),
                impossible("shortestTimeMs: 1", "shortestTimeMs: true", "/generator/shortestTimeMs"),
                impossible("[-1, 0, 1]", "[-1, 1]", "/generator/aec"),
                impossible("[-1, 0, 1]", "[-1, 0.5, 1]", "/generator/aec/densities/1"),
                impossible("[-1, 0, 1]", "[-1, null, 1]", "/generator/aec/densities/1"),
                impossible(", largestBackupMAs: 400", "", "/generator/aec/largestBackupMAs"),
                impossible("largestBackupMAs: 400", "largestBackupMAs: -4", "/generator/aec/largestBackupMAs"),
                impossible("anodeAngleDeg: 12", "anodeAngleDeg: 45", "/tube"),
                impossible("12\n  totalFiltrationMmAl: 3.0", "12\n  totalFiltrationMmAl: 1.2", "/tube"),
                impossible("name: small", "name: middle", "/tube/focalSpots/0/name"),
                impossible("nominalMm: 0.6", "nominalMm: 6", "/tube/focalSpots/0"),
                impossible("nominalMm: 0.6", "nominalMm: 0.625", "/tube/focalSpots/0"),
                impossible("kW: 25", "kW: 35", "/tube/focalSpots/0"),
                impossible("{timeMs: 500, kW: 25}", "{timeMs: 50, kW: 25}", "/tube/focalSpots/0"),
                impossible("{timeMs: 500, kW: 25}", "null", "/tube/focalSpots/0/rating/1"),
                impossible("[{timeMs: 100, kW: 32}, {timeMs: 500, kW: 25}]", "[]", "/tube/focalSpots/0/rating"),
                impossible(
                        "[{timeMs: 100, kW: 32}, {timeMs: 500, kW: 25}]",
                        "[{timeMs: 0.5, kW: 32}]",
                        "/tube/focalSpots/0/rating"),
                impossible("2026-09-14", "14.9.2026", "/tube/output/measuredOn"),
                impossible("2026-09-14", "2026-02-30", "/tube/output/measuredOn"),
                impossible("uncertaintyPercent: 8", "uncertaintyPercent: 0", "/tube/output"),
                impossible("output: 21.0}", "output: 0}", "/tube/output/microGyPerMAsAtOneMetre/0"),
                impossible("[{kV: 70, factor: 3.2}, {kV: 120, factor: 4.4}]", "[]", "/grids/0/factors"),
                impossible("[\"43x43\"]", "[]", "/receptors/0/sizesCm"),
                impossible("id: g10", "id: none", "/grids/0"),
                impossible("ratio: 10", "ratio: 40", "/grids/0"),
                impossible("linesPerCm: 40", "linesPerCm: 0", "/grids/0"),
                impossible("focalDistanceCm: 110", "focalDistanceCm: 150", "/grids/0"),
                impossible("{from: 95, to: 130}", "{from: 95}", "/grids/0/focalRangeCm"),
                impossible("factor: 3.2", "factor: 0.9", "/grids/0"),
                impossible("{kV: 70, factor: 3.2}", "{factor: 3.2}", "/grids/0/factors/0/kV"),
                impossible("kind: csi", "kind: selenium", "/receptors/0/kind"),
                impossible("\"43x43\"", "\"43 by 43\"", "/receptors/0/sizesCm/0"),
                impossible("\"43x43\"", "null", "/receptors/0/sizesCm/0"),
                impossible("\"43x43\"", "\"1e999999999x43\"", "/receptors/0/sizesCm/0"),
                impossible("targetExposureIndex: 400", "targetExposureIndex: 4", "/receptors/0"),
                impossible("kind: table-bucky", "kind: chair", "/supports/0/kind"),
                impossible("receptorGapCm: 6", "receptorGapCm: 60", "/supports/0"),
                impossible("receptorGapCm: 6", "receptorGapCm: 6 cm", "/supports/0/receptorGapCm"),
                impossible("{from: 90, to: 125}", "{from: 125, to: 90}", "/supports/0/sidCm"),
                impossible("{from: 90, to: 125}", "{from: 90, to: 125, stations: [100]}", "/supports/0/sidCm"),
                impossible("{from: 90, to: 125}", "{stations: [100, null]}", "/supports/0/sidCm/stations/1"),
                impossible("grids: [g10, none]", "grids: [g12, none]", "/supports/0/grids"),
                impossible("grids: [g10, none]", "grids: [g10, null]", "/supports/0/grids/1"),
                impossible("receptors: [dr1]", "receptors: [dr2]", "/supports/0/receptors"),
                impossible("receptors: [dr1]", "receptors: [null]", "/supports/0/receptors/0"),
                impossible("[left, centre, right]", "[top]", "/supports/0/aecChambers"),
                impossible("[left, centre, right]", "[null]", "/supports/0/aecChambers/0"),
                impossible("  aec: {densities: [-1, 0, 1], largestBackupMAs: 400}\n", "", "/supports/0/aecChambers"));
    }

    private static List<Problem> problems(byte[] file) {
        return EquipmentFile.read(file) instanceof EquipmentReading.Refused refused ? refused.problems() : List.of();
    }

    @ParameterizedTest
    @MethodSource("impossibleEquipment")
    void impossible_equipment_is_refused_on_load_with_the_field_named(Impossible planted) {
        assertThat(GOOD).contains(planted.from());
        var problems = problems(GOOD.replace(planted.from(), planted.to()).getBytes(UTF_8));
        assertThat(problems).extracting(Problem::field).containsExactly(planted.field());
        assertThat(problems)
                .allSatisfy(
                        problem -> assertThat(problem.message()).isNotBlank().doesNotContain("wallchart.", "java."));
    }

    @Test
    void possible_equipment_is_a_room() {
        assertThat(EquipmentFile.read(GOOD.getBytes(UTF_8)))
                .isInstanceOfSatisfying(EquipmentReading.Accepted.class, accepted -> {
                    assertThat(accepted.room().generator().mAs().stations()).hasSize(31);
                    assertThat(accepted.room().supports().get(0).receptorGap()).isEqualTo(Distance.centimetres(6));
                });
    }

    @Test
    void the_same_equipment_may_come_as_json() throws Exception {
        var written = Documents.yaml(GOOD.getBytes(UTF_8), EquipmentDocument.class);
        var json = Documents.toJson(((DocumentReading.Written<EquipmentDocument>) written).content());
        assertThat(Documents.json(json.getBytes(UTF_8), EquipmentDocument.class))
                .isEqualTo(written);
    }

    @Test
    void every_problem_is_told_at_once() {
        var file = GOOD.replace("room: r1", "room: R1")
                .replace("kind: csi", "kind: x")
                .replace("ratio: 10", "ratio: 1");
        assertThat(problems(file.getBytes(UTF_8)))
                .extracting(Problem::field)
                .containsExactly("/room", "/grids/0", "/receptors/0/kind");
    }

    @Test
    void a_file_that_is_no_equipment_is_refused_with_words() {
        for (var file : List.of("", "null", "[]", "3", "a: b: c", "room: [", "room: &a *a", "%", "--- {}\n--- {}")) {
            assertThat(problems(file.getBytes(UTF_8))).isNotEmpty();
        }
        assertThat(problems("name: a: b".getBytes(UTF_8)).toString()).contains("line ");
        assertThat(problems(GOOD.replace("Room 1", "R\u00f6ntgen").getBytes(ISO_8859_1))
                        .toString())
                .contains("UTF-8");
        assertThat(problems(new byte[1_000_001]).toString()).contains("1000001 bytes");
    }

    @Test
    void a_tag_names_no_class() {
        var tagged = GOOD.replace("room: r1", "room: !!java.net.URL [\"http://localhost\"]");
        assertThat(problems(tagged.getBytes(UTF_8))).extracting(Problem::field).containsExactly("/room");
    }

    @Test
    void a_document_of_nothing_but_nulls_is_refused_and_not_a_fault() {
        assertThat(EquipmentReader.read(new EquipmentDocument(null, null, null, null, null, null, null)))
                .isInstanceOf(EquipmentReading.Refused.class);
        assertThat(problems(
                        "{grids: [null], receptors: [null], supports: [{}], tube: {}, generator: {}}".getBytes(UTF_8)))
                .extracting(Problem::field)
                .contains("/grids/0", "/receptors/0", "/supports/0/kind", "/supports/0/sidCm", "/tube/focalSpots");
    }

    @Test
    void a_number_of_a_billion_digits_is_refused_before_it_is_written_out() {
        assertThatThrownBy(() -> Distance.centimetres("1e999999999")).hasMessageContaining("no number of this size");
        assertThatThrownBy(() -> Distance.centimetres("1e-999999999")).hasMessageContaining("no number of this size");
    }

    @Property(tries = 300)
    void whatever_text_comes_reading_answers(@ForAll String text) {
        assertThat(problems(text.getBytes(UTF_8))).isNotEmpty();
    }
}
