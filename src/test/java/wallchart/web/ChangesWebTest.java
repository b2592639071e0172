package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;

/** The way of a change over HTTP, from the radiographer who proposes it to the room that answers with it. */
class ChangesWebTest {

    private static final String TECHNIQUE =
            "/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm=11.5";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    private static Response technique() {
        return SERVICE.workstation("r1").get(TECHNIQUE);
    }

    private Map<String, Object> concurrence() {
        return Map.of("password", ChangeCalls.password(Role.PHYSICIST));
    }

    @Test
    void a_radiographer_proposes_a_physicist_concurs_the_lead_signs_and_the_room_answers() {
        int base = calls.newest();
        var opened = calls.open(Role.RADIOGRAPHER);
        opened.then().statusCode(201).body("state", equalTo("drafting")).body("baseVersion", equalTo(base));
        assertThat(opened.<Integer>path("author.personId"))
                .isEqualTo(
                        SERVICE.person(Role.RADIOGRAPHER).get("/api/v1/session").path("personId"));
        assertThat(opened.header("Location")).isEqualTo(ChangeCalls.address(opened));
        assertThat(opened.header("ETag")).isEqualTo("\"change-" + opened.path("id") + "-1\"");

        float before =
                Float.parseFloat(calls.fields(ChangeCalls.KNEE).get("mAs").toString());
        var edited = calls.edit(Role.RADIOGRAPHER, opened, ChangeCalls.KNEE, before * 2);
        edited.then()
                .statusCode(200)
                .body("edits.key", contains(ChangeCalls.KNEE))
                .body("edits[0].kind", equalTo("amend"))
                .body("edits[0].row.mAs", equalTo((int) before * 2))
                .body("findings.blocking", equalTo(false));

        SERVICE.person(Role.LEAD)
                .get(ChangeCalls.address(edited) + "/impact")
                .then()
                .statusCode(200)
                .body("needsPhysicist", equalTo(true))
                .body("onVersion", equalTo(base))
                .body("limits.maxKermaRisePercent", equalTo(25))
                .body("rows.row", contains(ChangeCalls.KNEE))
                .body("rows[0].kind", equalTo("amended"))
                .body("rows[0].before.mAs", equalTo((int) before))
                .body("rows[0].after.mAs", equalTo((int) before * 2))
                .body("rows[0].fields.field", contains("mAs"))
                .body("rows[0].exposureShiftDb", equalTo(3.01f)) // 10 log10(2) = 3.0103, from the definition
                .body("rows[0].kermaChangePercent", equalTo(100))
                .body("adjustments", empty());

        var submitted = calls.step(Role.RADIOGRAPHER, edited, "submit");
        submitted.then().statusCode(200).body("state", equalTo("submitted"));
        calls.sign(submitted).then().statusCode(409).body("code", equalTo("concurrence-needed"));
        var concurred = calls.step(Role.PHYSICIST, submitted, "concur", concurrence());
        concurred
                .then()
                .statusCode(200)
                .body("concurrence.by.printedName", equalTo("Pat physicist"))
                .body("concurrence.impactDigest", equalTo(calls.digest(submitted)));
        assertThat(technique().<Integer>path("chart.version")).isEqualTo(base);

        calls.sign(concurred)
                .then()
                .statusCode(200)
                .body("state", equalTo("signed"))
                .body("signedVersion", equalTo(base + 1))
                .body("decision.by.printedName", equalTo("Pat lead"))
                .body("decision.reason", equalTo("approved for use"));
        technique()
                .then()
                .statusCode(200)
                .body("chart.version", equalTo(base + 1))
                .body("chart.signedBy", equalTo("Pat lead"))
                .body("row.mAs", equalTo((int) before * 2));
        SERVICE.person(Role.PHYSICIST)
                .get("/api/v1/audit/events?limit=500&room=r1")
                .then()
                .body(
                        "events.action",
                        hasItems("change-opened", "change-edited", "change-submitted", "change-concurred"));
        SERVICE.person(Role.PHYSICIST).get("/api/v1/audit/verification").then().body("sound", equalTo(true));
    }

    @Test
    void a_change_is_returned_mended_and_declined() {
        var submitted = calls.submitted("ordinary", ChangeCalls.SPINE, "16");
        var returned =
                calls.step(Role.PHYSICIST, submitted, "return", Map.of("reason", "Show the exposure indices, please"));
        returned.then()
                .statusCode(200)
                .body("state", equalTo("returned"))
                .body("decision.by.printedName", equalTo("Pat physicist"))
                .body("decision.reason", equalTo("Show the exposure indices, please"));
        var edited = calls.edit(Role.RADIOGRAPHER, returned, ChangeCalls.SPINE, "25");
        edited.then().body("state", equalTo("returned")).body("decision.reason", containsString("exposure indices"));
        var renamed = calls.by(Role.RADIOGRAPHER, edited)
                .body(Map.of("title", "Spine, with indices", "reason", "Indices of 40 spines are a step under target"))
                .put(ChangeCalls.address(edited));
        renamed.then()
                .statusCode(200)
                .body("title", equalTo("Spine, with indices"))
                .body("findings", notNullValue());
        var again = calls.step(Role.RADIOGRAPHER, renamed, "submit");
        calls.step(Role.LEAD, again, "decline", Map.of("reason", "Not with this detector"))
                .then()
                .statusCode(200)
                .body("state", equalTo("declined"));
    }

    @Test
    void its_author_reads_who_did_what_to_it_and_why() {
        var opened = calls.open(Role.RADIOGRAPHER);
        var first = calls.edit(Role.RADIOGRAPHER, opened, ChangeCalls.SPINE, "16");
        var second = calls.edit(Role.RADIOGRAPHER, first, ChangeCalls.SPINE, "25");
        var submitted = calls.step(Role.RADIOGRAPHER, second, "submit");
        var returned = calls.step(Role.LEAD, submitted, "return", Map.of("reason", "Two radiographers should look"));
        var again = calls.step(Role.RADIOGRAPHER, returned, "submit");
        calls.sign(calls.step(Role.PHYSICIST, again, "concur", concurrence()))
                .then()
                .statusCode(200);

        SERVICE.person(Role.RADIOGRAPHER)
                .get(ChangeCalls.address(opened) + "/history")
                .then()
                .statusCode(200)
                .body(
                        "steps.step",
                        contains("opened", "edited", "submitted", "returned", "submitted", "concurred", "signed"))
                .body("steps[0].words", equalTo(ChangeCalls.REASON))
                .body("steps[0].printedName", equalTo("Pat radiographer"))
                .body("steps[1].rows", contains(ChangeCalls.SPINE))
                .body("steps[1].edits", equalTo(2))
                .body("steps[3].words", equalTo("Two radiographers should look"))
                .body("steps[3].role", equalTo("lead"))
                .body("steps[6].words", equalTo("approved for use"))
                .body("steps[6].version", equalTo(calls.newest()));
    }

    @Test
    void the_history_of_a_change_is_its_own() {
        var other = calls.edit(Role.LEAD, calls.open(Role.LEAD), ChangeCalls.KNEE, "20");
        var opened = calls.open(Role.RADIOGRAPHER);
        SERVICE.person(Role.ADMINISTRATOR)
                .get(ChangeCalls.address(opened) + "/history")
                .then()
                .body("steps.step", contains("opened"));
        calls.step(Role.LEAD, other, "withdraw").then().statusCode(200);
        SERVICE.person(Role.ADMINISTRATOR)
                .get(ChangeCalls.CHANGES + "/999999/history")
                .then()
                .statusCode(404)
                .body("code", equalTo("unknown-change"));
    }

    @Test
    void its_author_withdraws_a_change() {
        var opened = calls.open(Role.LEAD);
        calls.step(Role.LEAD, opened, "withdraw").then().statusCode(200).body("state", equalTo("withdrawn"));
    }

    @Test
    void a_fast_track_change_is_signed_at_once_and_looked_at_afterwards() {
        var signed = calls.sign(calls.submitted("fast-track", ChangeCalls.TABLETOP_KNEE, "8"));
        signed.then()
                .statusCode(200)
                .body("kind", equalTo("fast-track"))
                .body("state", equalTo("signed"))
                .body("secondReview.done", nullValue());
        int id = signed.path("id");
        SERVICE.person(Role.RADIOGRAPHER)
                .get("/api/v1/second-reviews")
                .then()
                .statusCode(200)
                .body("changes.id", hasItem(id));
        var review =
                Map.of("password", ChangeCalls.password(Role.PHYSICIST), "findings", "Exposure indices are on target");
        calls.step(Role.PHYSICIST, signed, "second-review", review)
                .then()
                .statusCode(200)
                .body("secondReview.done.by.printedName", equalTo("Pat physicist"))
                .body("secondReview.done.reason", equalTo("Exposure indices are on target"));
        SERVICE.person(Role.LEAD).get("/api/v1/second-reviews?open=true").then().body("changes.id", not(hasItem(id)));
        SERVICE.person(Role.LEAD)
                .get("/api/v1/second-reviews?open=false")
                .then()
                .body("changes.id", hasItem(id));
    }

    @Test
    void a_version_is_brought_back_in_one_step() {
        var prepared = calls.by(Role.RADIOGRAPHER)
                .body(Map.of("version", 1, "reason", "The new grid was taken out again"))
                .post("/api/v1/charts/r1/reverts");
        prepared.then()
                .statusCode(201)
                .header("Location", equalTo(ChangeCalls.address(prepared)))
                .body("kind", equalTo("revert"))
                .body("revertsTo", equalTo(1))
                .body("title", containsString("1"));
        calls.edit(Role.RADIOGRAPHER, prepared, ChangeCalls.KNEE, 8).then().statusCode(409);
    }

    @Test
    void changes_are_listed_newest_first_page_by_page() {
        int older = calls.open(Role.RADIOGRAPHER).path("id");
        int newer = calls.open(Role.LEAD).path("id");
        SERVICE.person(Role.ADMINISTRATOR)
                .get(ChangeCalls.CHANGES + "?state=drafting&room=r1&limit=1")
                .then()
                .statusCode(200)
                .body("changes.id", contains(newer))
                .body("changes[0].author.printedName", equalTo("Pat lead"))
                .body("next", equalTo(newer));
        SERVICE.person(Role.ADMINISTRATOR)
                .get(ChangeCalls.CHANGES + "?limit=1&before=" + newer)
                .then()
                .body("changes.id", contains(older));
        SERVICE.person(Role.ADMINISTRATOR)
                .get(ChangeCalls.CHANGES + "?room=r2")
                .then()
                .body("changes", hasSize(0))
                .body("next", nullValue());
    }

    @Test
    void a_change_is_read_with_the_tag_that_its_next_step_needs() {
        var opened = calls.open(Role.RADIOGRAPHER);
        SERVICE.person(Role.ADMINISTRATOR)
                .header("If-None-Match", opened.header("ETag"))
                .get(ChangeCalls.address(opened))
                .then()
                .statusCode(200)
                .header("ETag", equalTo(opened.header("ETag")))
                .header("Cache-Control", equalTo("no-store"))
                .body("reason", equalTo(ChangeCalls.REASON));
    }
}
