package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.restassured.response.Response;
import io.restassured.response.ValidatableResponse;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;

/** Why a step on a change is not taken, each with its status, its code and the next step. */
class ChangeRefusalsWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    private static ValidatableResponse assertRefused(Response answer, int status, String code, String nextStep) {
        return answer.then().statusCode(status).body("code", equalTo(code)).body("detail", containsString(nextStep));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "/findings", "/impact"})
    void a_change_that_is_not_there(String page) {
        var answer = SERVICE.person(Role.LEAD).get(ChangeCalls.CHANGES + "/4711" + page);
        assertRefused(answer, 404, "unknown-change", "see GET /api/v1/changes");
    }

    @Test
    void a_step_on_a_change_that_is_not_there() {
        var answer = calls.by(Role.RADIOGRAPHER)
                .header("If-Match", "\"change-4711-1\"")
                .post(ChangeCalls.CHANGES + "/4711/submit");
        assertRefused(answer, 404, "unknown-change", "see GET /api/v1/changes");
    }

    @ParameterizedTest
    @CsvSource({"r9,1,unknown-room,lists", "r1,99,unknown-version,name one of 1 to", "r2,1,unknown-version,name 0"})
    void a_room_or_a_version_that_is_not_there(String room, int version, String code, String nextStep) {
        var opening = Map.of("title", "Knee", "reason", ChangeCalls.REASON, "baseVersion", version);
        assertRefused(
                calls.by(Role.LEAD).body(opening).post("/api/v1/charts/" + room + "/changes"), 404, code, nextStep);
        var revert = Map.of("version", version, "reason", ChangeCalls.REASON);
        assertRefused(
                calls.by(Role.LEAD).body(revert).post("/api/v1/charts/" + room + "/reverts"), 404, code, nextStep);
    }

    @Test
    void a_row_that_is_not_there() {
        var opened = calls.open(Role.RADIOGRAPHER);
        var row = "SKULL/pa/adult/wall-bucky/15-18";
        assertRefused(
                calls.by(Role.RADIOGRAPHER, opened).delete(ChangeCalls.row(opened, row)),
                404,
                "unknown-row",
                "look at");
        assertRefused(
                calls.by(Role.RADIOGRAPHER, opened).delete(ChangeCalls.address(opened) + "/edits/" + row),
                404,
                "unknown-row",
                "look at its edits");
    }

    @Test
    void a_state_that_does_not_allow_the_step() {
        var withdrawn = calls.step(Role.RADIOGRAPHER, calls.open(Role.RADIOGRAPHER), "withdraw");
        assertRefused(calls.step(Role.RADIOGRAPHER, withdrawn, "submit"), 409, "wrong-state", "is withdrawn");
        assertRefused(calls.edit(Role.RADIOGRAPHER, withdrawn, ChangeCalls.KNEE, 8), 409, "wrong-state", "edited");
        assertRefused(
                calls.step(Role.LEAD, withdrawn, "decline", Map.of("reason", "Not with this detector")),
                409,
                "wrong-state",
                "declined");
    }

    @Test
    void nobody_edits_or_hands_in_what_is_somebody_elses() {
        var opened = calls.open(Role.RADIOGRAPHER);
        assertRefused(calls.edit(Role.LEAD, opened, ChangeCalls.KNEE, 8), 403, "not-allowed", "only its author");
        assertRefused(calls.step(Role.PHYSICIST, opened, "submit"), 403, "not-allowed", "only its author");
        assertRefused(calls.step(Role.LEAD, opened, "withdraw"), 403, "not-allowed", "only its author");
    }

    @Test
    void nobody_signs_or_concurs_with_their_own_change() {
        var own = calls.step(Role.LEAD, calls.edit(Role.LEAD, calls.open(Role.LEAD), ChangeCalls.KNEE, "8"), "submit");
        assertRefused(calls.sign(own), 403, "not-allowed", "somebody else has to look at it");
        var physicists = calls.step(
                Role.PHYSICIST,
                calls.edit(Role.PHYSICIST, calls.open(Role.PHYSICIST), ChangeCalls.KNEE, "8"),
                "submit");
        var concurrence = Map.of("password", ChangeCalls.password(Role.PHYSICIST));
        assertRefused(
                calls.step(Role.PHYSICIST, physicists, "concur", concurrence), 403, "not-allowed", "somebody else");
    }

    @Test
    void a_chart_that_would_be_blocked_is_not_handed_in() {
        var empty = calls.open(Role.RADIOGRAPHER);
        assertRefused(calls.step(Role.RADIOGRAPHER, empty, "submit"), 422, "blocking-findings", "mend them first");
        var fields = calls.fields(ChangeCalls.KNEE);
        fields.put("kV", 300);
        var edited = calls.by(Role.RADIOGRAPHER, empty).body(fields).put(ChangeCalls.row(empty, ChangeCalls.KNEE));
        edited.then().statusCode(200).body("findings.blocking", equalTo(true));
        assertRefused(calls.step(Role.RADIOGRAPHER, edited, "submit"), 422, "blocking-findings", "mend them first")
                .body("findings.findAll { it.level == 'blocking' }.field", hasItem("kV"))
                .body("findings.findAll { it.level == 'blocking' }.row", hasItem(ChangeCalls.KNEE));
    }

    @Test
    void a_large_change_waits_for_the_physicist() {
        var submitted = calls.submitted("ordinary", ChangeCalls.KNEE, "25");
        assertRefused(calls.sign(submitted), 409, "concurrence-needed", "a medical physicist has to concur");
    }

    @Test
    void a_signature_of_another_impact_does_not_count() {
        var submitted = calls.submitted("fast-track", ChangeCalls.KNEE, "25");
        var signature = new HashMap<>(calls.signature(submitted));
        signature.put("impactDigest", "sha256:" + "0".repeat(64));
        assertRefused(calls.step(Role.LEAD, submitted, "sign", signature), 409, "impact-changed", "look at it again");
        var concurrence =
                Map.of("password", ChangeCalls.password(Role.PHYSICIST), "impactDigest", "sha256:" + "0".repeat(64));
        assertRefused(
                calls.step(Role.PHYSICIST, submitted, "concur", concurrence),
                409,
                "impact-changed",
                "look at it again");
    }

    @Test
    void rows_that_others_moved_send_the_change_back_to_its_author() {
        var slower = calls.submitted("fast-track", ChangeCalls.SPINE, "25");
        calls.sign(calls.submitted("fast-track", ChangeCalls.SPINE, "16"))
                .then()
                .statusCode(200);
        assertRefused(calls.sign(slower), 409, "rows-moved", "is returned to its author")
                .body("conflicts", contains(ChangeCalls.SPINE));
        var returned = SERVICE.person(Role.RADIOGRAPHER).get(ChangeCalls.address(slower));
        returned.then().body("state", equalTo("returned")).body("conflicts", contains(ChangeCalls.SPINE));
        assertThat(returned.header("ETag")).isNotEqualTo(slower.header("ETag"));
        var caughtUp = calls.step(Role.RADIOGRAPHER, returned, "catch-up");
        caughtUp.then().statusCode(200).body("findings.blocking", equalTo(true));
        calls.edit(Role.RADIOGRAPHER, caughtUp, ChangeCalls.SPINE, "20")
                .then()
                .statusCode(200)
                .body("conflicts", equalTo(List.of()))
                .body("findings.blocking", equalTo(false));
    }

    @Test
    void a_version_may_not_begin_in_the_past() {
        var submitted = calls.submitted("fast-track", ChangeCalls.TABLETOP_KNEE, "6.3");
        var signature = new HashMap<>(calls.signature(submitted));
        signature.put("inForceFrom", "2026-02-28T23:00:00Z");
        assertRefused(calls.step(Role.LEAD, submitted, "sign", signature), 422, "blocking-findings", "mend")
                .body("findings.field", contains("inForceFrom"));
        var head = SERVICE.person(Role.LEAD).get(ChangeCalls.address(submitted));
        assertThat(head.header("ETag")).isEqualTo(submitted.header("ETag"));
    }

    @Test
    void what_cannot_be_read_is_named_by_its_member() {
        var opened = calls.open(Role.RADIOGRAPHER);
        var fields = calls.fields(ChangeCalls.KNEE);
        fields.put("kV", "seventy");
        fields.put("sidCm", "1e3");
        calls.by(Role.RADIOGRAPHER, opened)
                .body(fields)
                .put(ChangeCalls.row(opened, ChangeCalls.KNEE))
                .then()
                .statusCode(400)
                .body("code", equalTo("invalid-body"))
                .body("errors.pointer", contains("/kV", "/sidCm"))
                .body("errors[0].detail", containsString("write plain digits"));
        calls.by(Role.RADIOGRAPHER, opened)
                .body(Map.of("adjustments", List.of(Map.of("name", "cast", "label", "Cast", "addKv", 45))))
                .put(ChangeCalls.address(opened) + "/adjustments")
                .then()
                .statusCode(400)
                .body("errors.pointer", contains("/adjustments/0/addKv"))
                .body("errors[0].detail", containsString("within 30"));
    }
}
