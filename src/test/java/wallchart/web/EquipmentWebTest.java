package wallchart.web;

import static java.util.Comparator.comparing;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.web.EquipmentCalls.REASON;
import static wallchart.web.EquipmentCalls.address;
import static wallchart.web.EquipmentCalls.anOddOutput;
import static wallchart.web.EquipmentCalls.output;
import static wallchart.web.EquipmentCalls.with;
import static wallchart.web.EquipmentCalls.without;

import com.fasterxml.jackson.databind.json.JsonMapper;
import io.restassured.response.Response;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;
import wallchart.store.Actor;
import wallchart.store.CanonicalJson;

/** A medical physicist enters what was measured; charts, answers and ledger follow at once, and the past stays as it was. */
class EquipmentWebTest {

    private static final String KNEE =
            "/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm=11.5";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final EquipmentCalls calls = new EquipmentCalls(SERVICE);

    /** Number of the revision that a test begins with: the room as the department was founded with it. */
    private int first;

    @BeforeEach
    void the_equipment_of_the_foundation() {
        SERVICE.clock().advance(Duration.ofSeconds(5));
        var rooms = SERVICE.services().rooms();
        rooms.install(
                Actor.system("test"),
                aRoom().withName("Room 1, " + SERVICE.clock().instant()).document());
        first = rooms.revisions("r1").size();
    }

    private Response technique(String more) {
        return SERVICE.workstation("r1").get(KNEE + more);
    }

    @Test
    void the_equipment_is_told_as_it_was_written_and_its_digest_covers_just_that() throws Exception {
        var answer = calls.inForce("r1");
        answer.then()
                .statusCode(200)
                .header("ETag", startsWith("\"equipment-" + first + "-"))
                .body("room", equalTo("r1"))
                .body("revision", equalTo(first))
                .body("measuredOn", equalTo("2026-01-14"))
                .body("document.generator.mAs.series", equalTo("R'10"))
                .body("document.tube.output.microGyPerMAsAtOneMetre", hasSize(6));
        var document = new JsonMapper().readTree(answer.asString()).get("document");
        assertThat(CanonicalJson.of(document.toString()).digest()).isEqualTo(answer.path("digest"));
        SERVICE.person(Role.LEAD)
                .header("If-None-Match", answer.header("ETag"))
                .get(address("r1"))
                .then()
                .statusCode(304);
    }

    @Test
    void a_new_measurement_answers_at_once_and_the_past_answers_with_the_old_one() {
        var before = SERVICE.clock().instant();
        technique("").then().body("dose.outputSource", startsWith("measured 2026-01-14"));
        SERVICE.clock().advance(Duration.ofSeconds(5));
        calls.putOutput("r1", output("2026-03-01", 1))
                .then()
                .statusCode(200)
                .header("ETag", startsWith("\"equipment-" + (first + 1) + "-"))
                .body("revision", equalTo(first + 1))
                .body("replaces", equalTo(first))
                .body("changed", equalTo(true))
                .body("installedBy", equalTo("physicist"));
        technique("")
                .then()
                .body("dose.outputSource", startsWith("measured 2026-03-01"))
                .body("equipment.revision", equalTo(first + 1));
        technique("&at=" + before)
                .then()
                .body("dose.outputSource", startsWith("measured 2026-01-14"))
                .body("equipment.revision", equalTo(first));
        technique("&at=" + SERVICE.clock().instant()).then().body("equipment.revision", equalTo(first + 1));
        technique("&at=" + SERVICE.clock().instant().minusNanos(1000))
                .then()
                .body("equipment.revision", equalTo(first));
    }

    @Test
    void the_ledger_says_who_why_and_what_it_moves() {
        calls.putOutput("r1", output("2026-03-01", 1)).then().statusCode(200);
        SERVICE.person(Role.LEAD)
                .get("/api/v1/audit/events?room=r1&action=equipment-installed&limit=100")
                .then()
                .body("events", hasSize(first + 1))
                .body("events[-1].actor", equalTo("physicist"))
                .body("events[-1].reason", equalTo(REASON))
                .body("events[-1].details.entered", equalTo("tube output"))
                .body("events[-1].details.measuredOn", equalTo("2026-03-01"))
                .body("events[-1].details.confirmed", hasSize(0))
                .body("events[-1].details.calibration", hasItem(startsWith("fitted: ")))
                .body("events[-1].details.largestOutputRatioAt", endsWith("3 mm Al"))
                .body("events[-1].details.chartVersions", equalTo(List.of(2)))
                .body("events[-1].details.largestOutputRatio", startsWith("0.8"));
        SERVICE.person(Role.PHYSICIST).get("/api/v1/audit/verification").then().body("sound", equalTo(true));
    }

    @Test
    void what_it_does_to_each_row_is_told_before_and_after_it_is_entered() {
        var body = output("2026-03-01", 1);
        var tried = calls.tryOutput("r1", without(body, "reason"));
        tried.then()
                .statusCode(200)
                .body("comparedWith", equalTo(first))
                .body("outputs.kV", equalTo(List.of(50, 60, 80, 100, 120, 150)))
                .body("charts[0].version", equalTo(2))
                .body("charts[0].rows", equalTo(4))
                .body("calibration", hasItem(startsWith("fitted: ")))
                .body("largestOutputRatioAt.kV", notNullValue())
                .body("largestOutputRatioAt.totalFiltrationMmAl", equalTo(3))
                .body("fittedFiltration.beforeMmAl", notNullValue())
                .body("fittedFiltration.afterMmAl", notNullValue())
                .body("limits", containsString("40 to 150 kV"));
        assertThat(calls.revisions("r1")).hasSize(first);
        Map<String, Object> expected = tried.path("");
        Map<String, Object> entered = calls.putOutput("r1", body).path("effects");
        assertThat(entered).isEqualTo(expected);
        Map<String, Object> later = SERVICE.person(Role.RADIOGRAPHER)
                .get(address("r1") + "/revisions/" + (first + 1) + "/effects")
                .path("");
        assertThat(later).isEqualTo(expected);
    }

    @Test
    void a_fifth_less_output_is_a_fifth_less_exposure_in_every_row_that_is_not_ended_by_aec() {
        calls.putOutput("r1", output("2026-02-28", 1)).then().statusCode(200);
        List<Map<String, Object>> moved =
                calls.putOutput("r1", output("2026-03-01", 0.8)).path("effects.charts[0].moved");
        assertThat(moved).hasSize(4).allSatisfy(row -> {
            boolean aec = row.get("row").toString().endsWith("24-30");
            assertThat(row.get("predictedShiftDb")).hasToString(aec ? "0" : "-0.97"); // 10 log10(0.8)
            assertThat(row.get("kermaChangePercent")).isEqualTo(aec ? 0 : -20);
            assertThat(row.get("affected")).isEqualTo(true);
        });
        assertThat(calls.revisions("r1").get(0).get("affectedRows")).isEqualTo(4);
        assertThat(calls.revisions("r1").get(0).get("largestOutputRatio")).isEqualTo("0.8");
    }

    @Test
    void a_version_that_is_signed_for_later_is_looked_at_too() {
        var change = new ChangeCalls(SERVICE);
        var submitted = change.submitted("ordinary", ChangeCalls.KNEE, 8);
        change.step(Role.PHYSICIST, submitted, "concur", Map.of("password", ChangeCalls.password(Role.PHYSICIST)));
        var body = change.signature(submitted);
        body.put("inForceFrom", "2026-04-01T00:00:00Z");
        var seen = SERVICE.person(Role.LEAD).get(ChangeCalls.address(submitted));
        change.step(Role.LEAD, seen, "sign", body).then().statusCode(200);
        calls.tryOutput("r1", output("2026-03-01", 1)).then().body("charts.version", equalTo(List.of(2, 3)));
    }

    @Test
    void a_point_that_does_not_fit_is_questioned_until_exactly_it_is_confirmed() {
        calls.putOutput("r1", anOddOutput("2026-03-01"))
                .then()
                .statusCode(422)
                .body("code", equalTo("questioned-measurement"))
                .body("errors", hasSize(1))
                .body("errors[0].pointer", equalTo("/microGyPerMAsAtOneMetre/3"))
                .body("errors[0].value", equalTo("64.7 uGy/mAs"))
                .body("errors[0].detail", containsString("80 kV"))
                .body("detail", containsString("\"confirmed\": [\"output-at-80\"]"))
                .body("errors[0].confirm", equalTo("output-at-80"))
                .body("fit.points.find { it.questioned }.kV", equalTo(80));
        calls.putOutput("r1", with(anOddOutput("2026-03-01"), "confirmed", List.of("output-at-100")))
                .then()
                .statusCode(422);
        assertThat(calls.revisions("r1")).hasSize(first);
        calls.putOutput("r1", with(anOddOutput("2026-03-01"), "confirmed", List.of("output-at-80")))
                .then()
                .statusCode(200);
        assertThat(calls.revisions("r1").get(0).get("confirmed")).isEqualTo(List.of("output-at-80"));
        SERVICE.person(Role.LEAD)
                .get(address("r1") + "/calibration")
                .then()
                .statusCode(200)
                .body("points.findAll { it.questioned }.kV", equalTo(List.of(80)))
                .body("confirmed", equalTo(List.of("output-at-80")));
    }

    @Test
    void the_curve_of_the_fit_goes_through_what_is_fitted_at_the_measured_tube_voltages() {
        var tried = calls.tryOutput("r1", without(output("2026-03-01", 1), "reason"));
        tried.then().statusCode(200).body("fit.points.kV", equalTo(List.of(50, 60, 80, 100, 120, 150)));
        List<Map<String, Number>> curve = tried.path("fit.curve");
        List<Map<String, Number>> points = tried.path("fit.points");
        assertThat(curve).hasSize(21).isSortedAccordingTo(comparing(point -> point.get("kV")
                .doubleValue()));
        for (var point : points) {
            var there = curve.stream()
                    .filter(other -> other.get("kV").equals(point.get("kV")))
                    .findFirst();
            assertThat(there.orElseThrow().get("fitted").doubleValue())
                    .isCloseTo(point.get("fitted").doubleValue(), within(0.001));
        }
    }

    /** Air kerma in uGy is 8.76 times the exposure in mR: all values are divided by it. */
    @Test
    void a_slip_of_unit_is_questioned_where_it_stands_in_the_whole_document_too() {
        var slip = output("2026-03-01", 1 / 8.76);
        calls.tryOutput("r1", slip)
                .then()
                .statusCode(422)
                .body("errors.confirm", equalTo(List.of("output-step", "output-size")))
                .body("errors.pointer", equalTo(List.of("/microGyPerMAsAtOneMetre", "/microGyPerMAsAtOneMetre")))
                .body("errors[1].detail", containsString("1 mR is 8.76 uGy"));
        Map<String, Object> document = calls.inForce("r1").path("document");
        var tube = with(cast(document.get("tube")), "output", without(slip, "reason"));
        calls.put("r1", "", Map.of("document", with(document, "tube", tube), "reason", REASON))
                .then()
                .statusCode(422)
                .body("errors[0].pointer", equalTo("/document/tube/output/microGyPerMAsAtOneMetre"));
        calls.putOutput("r1", with(slip, "confirmed", List.of("output-size", "output-step")))
                .then()
                .statusCode(200)
                .body("effects.calibration[0]", endsWith(": confirmed"));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> cast(Object object) {
        return (Map<String, Object>) object;
    }

    @Test
    void an_older_measurement_is_taken_only_from_whoever_names_the_newer() {
        var older = output("2025-12-30", 1);
        calls.putOutput("r1", older)
                .then()
                .statusCode(422)
                .body("code", equalTo("older-measurement"))
                .body("detail", containsString("\"replacesMeasuredOn\": \"2026-01-14\""));
        calls.putOutput("r1", with(older, "replacesMeasuredOn", "2026-01-14"))
                .then()
                .statusCode(200);
    }

    @Test
    void all_of_the_equipment_is_entered_by_sending_it_back_with_what_differs() {
        calls.put("r1", "", calls.renamed("r1", "Room 1, ground floor"))
                .then()
                .statusCode(200)
                .body("effects.affectedRows", equalTo(0))
                .body("effects.charts[0].moved", hasSize(0));
        SERVICE.workstation("r1").get("/api/v1/rooms/r1").then().body("name", equalTo("Room 1, ground floor"));
        SERVICE.person(Role.LEAD)
                .get(address("r1") + "/revisions/" + first)
                .then()
                .header("ETag", startsWith("\"equipment-" + first + "-"))
                .body("document.name", startsWith("Room 1, 2026-"));
        calls.put("r1", "", calls.renamed("r1", "Room 1, ground floor"))
                .then()
                .statusCode(200)
                .body("changed", equalTo(false))
                .body("revision", equalTo(first + 1));
    }

    @Test
    void measured_factors_of_a_grid_are_entered_alone() {
        var body = Map.of(
                "focalRangeCm", Map.of("from", 100, "to", 120),
                "factors", List.of(Map.of("kV", 70, "factor", 3.4), Map.of("kV", 120, "factor", 4.5)),
                "reason", "Factors measured behind 20 cm of water");
        calls.put("r1", "/grids/g10", body)
                .then()
                .statusCode(200)
                .body("effects.gridFactors.grid", equalTo(List.of("g10", "g10", "g10")))
                .body("effects.gridFactors.kV", equalTo(List.of(70, 90, 120)))
                .body("effects.gridFactors[0].changePercent", equalTo(6.3f)); // 3.4 / 3.2
        calls.inForce("r1")
                .then()
                .body("document.grids[0].factors", hasSize(2))
                .body("document.grids[0].focalDistanceCm", equalTo(110))
                .body("reason", startsWith("Factors measured"));
        calls.put("r1", "/grids/g77", body)
                .then()
                .statusCode(404)
                .body("code", equalTo("unknown-part"))
                .body("detail", containsString("g10, g8"));
    }

    @Test
    void of_two_who_saw_the_same_one_wins_and_the_other_is_told_what_there_is() {
        for (int round = 1; round <= 5; round++) {
            var tag = calls.inForce("r1").header("ETag");
            var one = output("2026-03-01", 1 + round / 100.0);
            var other = output("2026-03-01", 1 - round / 100.0);
            var answers = List.of(sending(tag, one), sending(tag, other)).stream()
                    .map(CompletableFuture::join)
                    .toList();
            assertThat(answers).extracting(Response::statusCode).containsExactlyInAnyOrder(200, 412);
            assertThat(answers)
                    .extracting(answer -> answer.header("ETag"))
                    .containsOnly(calls.inForce("r1").header("ETag"));
            assertThat(calls.revisions("r1")).hasSize(first + round);
        }
    }

    private CompletableFuture<Response> sending(String tag, Map<String, Object> body) {
        var request = calls.writing().header("If-Match", tag).body(body);
        return CompletableFuture.supplyAsync(() -> request.put(address("r1") + "/tube/output"));
    }

    @Test
    void nothing_is_entered_by_whoever_does_not_say_what_they_saw() {
        var tag = calls.inForce("r1").header("ETag");
        var writes = Map.of(
                "",
                calls.renamed("r1", "Another name"),
                "/tube/output",
                output("2026-03-01", 1),
                "/grids/g10",
                Map.of("factors", List.of(), "reason", REASON));
        writes.forEach((part, body) -> {
            calls.writing().body(body).put(address("r1") + part).then().statusCode(428);
            calls.writing()
                    .header("If-Match", tag.replace("equipment-" + first, "equipment-" + (first + 1)))
                    .body(body)
                    .put(address("r1") + part)
                    .then()
                    .statusCode(412)
                    .header("ETag", equalTo(tag));
        });
        assertThat(calls.revisions("r1")).hasSize(first);
    }

    @Test
    void a_tube_that_nobody_measured_is_uncalibrated_and_says_what_would_do() {
        SERVICE.person(Role.RADIOGRAPHER)
                .get(address("r2") + "/calibration")
                .then()
                .statusCode(200)
                .body("calibrated", equalTo(false))
                .body("reason", containsString("three tube voltages"))
                .body("measuredOn", nullValue())
                .body("points", hasSize(0));
        calls.putOutput("r2", output("2026-03-01", 1))
                .then()
                .statusCode(200)
                .body("effects.charts", hasSize(0))
                .body("effects.outputs", hasSize(6));
        SERVICE.person(Role.RADIOGRAPHER)
                .get(address("r2") + "/calibration")
                .then()
                .body("calibrated", equalTo(true))
                .body("halfValueLayer.measured", equalTo(3.1f))
                .body("halfValueLayer.modelledAsFitted.toString()", startsWith("3.09"))
                .body("filtration.statedMmAl", equalTo(3));
    }

    @Test
    void the_first_revision_has_none_to_be_compared_with_and_one_that_is_not_there_is_named() {
        for (var path : List.of("/revisions/1/effects", "/revisions/999", "/revisions/999/effects")) {
            SERVICE.person(Role.LEAD)
                    .get(address("r1") + path)
                    .then()
                    .statusCode(404)
                    .body("code", equalTo("unknown-revision"));
        }
        SERVICE.person(Role.LEAD).get(address("r9")).then().statusCode(404).body("code", equalTo("unknown-room"));
    }
}
