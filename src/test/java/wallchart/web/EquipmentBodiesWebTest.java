package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static wallchart.web.EquipmentCalls.output;
import static wallchart.web.EquipmentCalls.outputAt;
import static wallchart.web.EquipmentCalls.with;
import static wallchart.web.EquipmentCalls.without;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;

/** What is wrong with a body about equipment is told by its place, and nothing of it is entered. */
class EquipmentBodiesWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final EquipmentCalls calls = new EquipmentCalls(SERVICE);

    @AfterEach
    void nothing_was_entered() {
        assertThat(calls.revisions("r1")).hasSize(1);
    }

    /** A body with one mistake, and where it is told. */
    record Wrong(String pointer, Map<String, Object> body) {}

    static Stream<Wrong> wrongOutputs() {
        var sound = output("2026-03-01", 1);
        return Stream.of(
                new Wrong("/measuredOn", without(sound, "measuredOn")),
                new Wrong("/measuredOn", with(sound, "measuredOn", "2026-03-04")),
                new Wrong("/measuredOn", with(sound, "measuredOn", "1 March 2026")),
                new Wrong("/hvlMmAl", without(sound, "hvlMmAl")),
                new Wrong("/hvlMmAl", with(sound, "hvlMmAl", "3.1")),
                new Wrong("/totalFiltrationMmAl", with(sound, "totalFiltrationMmAl", -3)),
                new Wrong("/uncertaintyPercent", without(sound, "uncertaintyPercent")),
                new Wrong("/microGyPerMAsAtOneMetre", without(sound, "microGyPerMAsAtOneMetre")),
                new Wrong("/microGyPerMAsAtOneMetre", outputAt("2026-03-01", "60 29.9", "100 83")),
                new Wrong("", outputAt("2026-03-01", "100 83", "60 29.9", "80 54.8")),
                new Wrong("/microGyPerMAsAtOneMetre/1", outputAt("2026-03-01", "60 29.9", "80 0", "100 83")),
                new Wrong("/reason", without(sound, "reason")),
                new Wrong("/reason", with(sound, "reason", "")),
                new Wrong("/reason", with(sound, "reason", "  a  b  c  ")),
                new Wrong("/reason", with(sound, "reason", "bell \u0007 in the words")),
                new Wrong("/reason", with(sound, "reason", "x".repeat(2001))),
                new Wrong("/confirmed", with(sound, "confirmed", List.of("output-at-80"))),
                new Wrong("/confirmed/0", with(sound, "confirmed", List.of("Output 80"))),
                new Wrong("/confirmed/0", with(sound, "confirmed", List.of(""))),
                new Wrong("/replacesMeasuredOn", with(sound, "replacesMeasuredOn", "2026-01-14")),
                new Wrong("/kilovolts", with(sound, "kilovolts", 80)));
    }

    @ParameterizedTest
    @MethodSource("wrongOutputs")
    void of_a_measurement(Wrong wrong) {
        ChangeCalls.assertWrongMember(calls.putOutput("r1", wrong.body()), wrong.pointer());
    }

    static Stream<Wrong> wrongDocuments() {
        return Stream.of(
                new Wrong("/document", Map.of("reason", EquipmentCalls.REASON)),
                new Wrong("/document/room", document("room", "r2")),
                new Wrong("/document/name", document("name", null)),
                new Wrong("/document/tube", document("tube", null)),
                new Wrong("/document/grids", document("grids", null)),
                new Wrong("/document/supports/1/grids", document("grids", List.of())),
                new Wrong("/document/generator/voltage", document("generator", Map.of("voltage", 1))),
                new Wrong("/document/patient", document("patient", "nobody")),
                new Wrong("/reason", with(document("name", "Another"), "reason", "")),
                new Wrong("/signature", with(document("name", "Another"), "signature", "me")));
    }

    private static Map<String, Object> document(String member, Object value) {
        Map<String, Object> inForce = new EquipmentCalls(SERVICE).inForce("r1").path("document");
        var other = new LinkedHashMap<>(inForce);
        other.put(member, value);
        var body = new LinkedHashMap<String, Object>();
        body.put("document", other);
        body.put("reason", EquipmentCalls.REASON);
        return body;
    }

    @ParameterizedTest
    @MethodSource("wrongDocuments")
    void of_all_the_equipment(Wrong wrong) {
        calls.put("r1", "", wrong.body())
                .then()
                .statusCode(400)
                .body("code", equalTo("invalid-body"))
                .body("errors.pointer", hasItem(wrong.pointer()));
    }

    @Test
    void of_a_grid() {
        var factors = List.of(Map.of("kV", 70, "factor", 3.4));
        var reason = EquipmentCalls.REASON;
        assertWrongGrid("/factors", Map.of("reason", reason));
        assertWrongGrid("/factors", Map.of("factors", List.of(), "reason", reason));
        assertWrongGrid("/factors/0/factor", Map.of("factors", List.of(Map.of("kV", 70)), "reason", reason));
        assertWrongGrid("/reason", Map.of("factors", factors));
        assertWrongGrid("", Map.of("factors", factors, "reason", reason)); // focused, and no focal range
        assertWrongGrid(
                "/focalRangeCm",
                Map.of("factors", factors, "reason", reason, "focalRangeCm", Map.of("from", 120, "to", 100)));
        assertWrongGrid("/ratio", Map.of("factors", factors, "reason", reason, "ratio", 12));
    }

    private void assertWrongGrid(String pointer, Map<String, ?> body) {
        ChangeCalls.assertWrongMember(calls.put("r1", "/grids/g10", body), pointer);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "[]",
                "{",
                "{}{}",
                "{\"reason\":\"once\",\"reason\":\"twice\"}",
                "{\"hvlMmAl\":1e999999999}",
                "{\"hvlMmAl\":3.1000000001}",
                "{\"microGyPerMAsAtOneMetre\":{}}",
                "{\"microGyPerMAsAtOneMetre\":[null,null,null]}",
                "{\"confirmed\":[null]}",
                "{\"confirmed\":80}",
            })
    void that_is_no_measurement_at_all(String body) {
        for (var part : List.of("/tube/output", "", "/grids/g10")) {
            calls.put("r1", part, body).then().statusCode(400).body("code", equalTo("invalid-body"));
        }
        calls.writing()
                .body(body)
                .post(EquipmentCalls.address("r1") + "/effects")
                .then()
                .statusCode(400);
    }

    @Test
    void that_is_too_large_or_no_json() {
        calls.put("r1", "", "{" + " ".repeat(70_000) + "}").then().statusCode(413);
        SERVICE.person(Role.PHYSICIST)
                .header("X-CSRF-Token", SERVICE.signedIn(Role.PHYSICIST).csrfToken())
                .header("If-Match", "\"x\"")
                .contentType("text/plain")
                .body("{}")
                .put(EquipmentCalls.address("r1") + "/tube/output")
                .then()
                .statusCode(415);
    }

    @Test
    void with_the_limit_and_the_next_step_in_words() {
        calls.putOutput("r1", outputAt("2026-03-01", "60 29.9", "100 83"))
                .then()
                .body("detail", containsString("needs 3 or more"));
        calls.putOutput("r1", with(output("2026-03-01", 1), "measuredOn", "2026-03-04"))
                .then()
                .body("detail", containsString("a day that has not come yet"));
    }
}
