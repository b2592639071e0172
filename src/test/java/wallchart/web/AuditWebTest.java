package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;
import wallchart.store.Sha256;

/** The ledger over HTTP: for those who audit, and for nobody else. */
class AuditWebTest {

    private static final String AUDIT = "/api/v1/audit";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    @Test
    void every_signature_and_every_equipment_is_an_event() {
        SERVICE.person(Role.PHYSICIST)
                .get(AUDIT + "/events?room=r1")
                .then()
                .statusCode(200)
                .body("events.action", hasItems("equipment-installed", "version-signed"))
                .body(
                        "events.findAll { it.action == 'version-signed' }.object",
                        contains("r1/version/1", "r1/version/2"))
                .body("events.find { it.object == 'r1/version/2' }.details.printedName", equalTo("Pat first-lead"))
                .body("events.find { it.object == 'r1/version/2' }.actor", equalTo("first-lead"))
                .body("next", nullValue());
    }

    @Test
    void pages_lead_to_each_other() {
        var first =
                SERVICE.person(Role.LEAD).get(AUDIT + "/events?limit=1").then().statusCode(200);
        first.body("events.seq", contains(1)).body("next", equalTo(1));
        SERVICE.person(Role.LEAD).get(AUDIT + "/events?limit=1&after=1").then().body("events.seq", contains(2));
        SERVICE.person(Role.LEAD).get(AUDIT + "/events?after=999999999").then().body("events", empty());
    }

    @Test
    void the_newest_come_first_where_they_are_asked_for() {
        var auditor = SERVICE.person(Role.LEAD);
        var first = auditor.get(AUDIT + "/events?order=newest&limit=1").jsonPath();
        int newest = first.getInt("next");
        assertThat(first.getInt("events[0].seq")).isEqualTo(newest);
        SERVICE.person(Role.LEAD)
                .get(AUDIT + "/events?order=newest&limit=1&after=" + newest)
                .then()
                .body("events.seq", contains(newest - 1));
        SERVICE.person(Role.LEAD)
                .get(AUDIT + "/events?order=newest&after=1")
                .then()
                .body("events", empty())
                .body("next", nullValue());
    }

    @Test
    void one_event_comes_with_its_text_and_its_neighbours() {
        var whole = SERVICE.person(Role.PHYSICIST).get(AUDIT + "/events/2");
        whole.then()
                .statusCode(200)
                .body("event.seq", equalTo(2))
                .body("hashFits", equalTo(true))
                .body("before", equalTo(1))
                .body("next", equalTo(3));
        // SHA-256 of the text by the platform: FIPS 180-4
        assertThat(Sha256.hex(whole.jsonPath().getString("text")))
                .isEqualTo(whole.jsonPath().getString("event.hash"));
        SERVICE.person(Role.PHYSICIST).get(AUDIT + "/events/1").then().body("before", nullValue());
    }

    @Test
    void an_event_that_nobody_entered_is_not_found() {
        SERVICE.person(Role.LEAD)
                .get(AUDIT + "/events/999999999")
                .then()
                .statusCode(404)
                .body("code", equalTo("unknown-event"));
        for (var mistaken : new String[] {"0", "x", "01", "1234567890"}) {
            SERVICE.person(Role.LEAD)
                    .get(AUDIT + "/events/" + mistaken)
                    .then()
                    .statusCode(400)
                    .body("errors[0].parameter", equalTo("seq"));
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "after=-1",
                "order=last",
                "after=x",
                "after=01",
                "limit=0",
                "limit=501",
                "room=R1",
                "action=Version",
                "actor=a%27b",
                "from=yesterday",
                "other=1",
                "limit=1&limit=2"
            })
    void a_mistaken_filter_is_named(String query) {
        SERVICE.person(Role.PHYSICIST)
                .get(AUDIT + "/events?" + query)
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo(query.substring(0, query.indexOf('='))));
    }

    @Test
    void the_proof_says_how_many_events_it_holds_for() {
        SERVICE.person(Role.PHYSICIST)
                .get(AUDIT + "/verification")
                .then()
                .statusCode(200)
                .body("sound", equalTo(true))
                .body("stopped", nullValue())
                .body("checkedAt", notNullValue())
                .body("firstBad", nullValue());
    }

    @Test
    void the_export_is_a_line_for_each_event() {
        var answer = SERVICE.person(Role.PHYSICIST).get(AUDIT + "/export");
        answer.then().statusCode(200).contentType(containsString("application/x-ndjson"));
        var last = SERVICE.person(Role.PHYSICIST).get(AUDIT + "/verification").jsonPath();
        assertThat(answer.asString().lines().toList()).hasSize(last.getInt("events"));
        assertThat(answer.asString()).contains("\"hash\":\"" + last.getString("head") + "\"");
    }

    private static Response review(String body) {
        return SERVICE.person(Role.PHYSICIST)
                .header("X-CSRF-Token", SERVICE.signedIn(Role.PHYSICIST).csrfToken())
                .contentType("application/json")
                .body(body)
                .post(AUDIT + "/reviews");
    }

    @Test
    void a_review_is_an_event_with_its_period_its_filter_and_its_findings() {
        review(
                        """
                {"from": "2026-01-01T00:00:00Z", "to": "2026-03-01T00:00:00Z", "room": "r1",
                 "findings": "Both versions signed by the lead; nothing to remark."}""")
                .then()
                .statusCode(201)
                .body("action", equalTo("audit-reviewed"))
                .body("actor", equalTo("physicist"))
                .body("room", equalTo("r1"))
                .body("details.from", equalTo("2026-01-01T00:00:00Z"))
                .body("details.findings", containsString("nothing to remark"))
                .body("requestId", notNullValue());
        SERVICE.person(Role.LEAD)
                .get(AUDIT + "/events?action=audit-reviewed")
                .then()
                .body("events.details.room", hasItems("r1"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/findings | {'from':'2026-01-01T00:00:00Z','to':'2026-03-01T00:00:00Z','findings':'ok        .'}",
                "/findings | {'from':'2026-01-01T00:00:00Z','to':'2026-03-01T00:00:00Z'}",
                "/findings | {'from':'2026-01-01T00:00:00Z','to':'2026-03-01T00:00:00Z','findings':'half a character: \\ud83d'}",
                "/to | {'from':'2026-03-01T00:00:00Z','to':'2026-01-01T00:00:00Z','findings':'nothing to remark'}",
                "/from | {'from':'last month','to':'2026-01-01T00:00:00Z','findings':'nothing to remark'}",
                "/room | {'from':'2026-01-01T00:00:00Z','to':'2026-03-01T00:00:00Z','room':'R 1','findings':'nothing to remark'}"
            })
    void a_mistaken_review_is_refused_by_its_member(String pointer, String body) {
        review(body.replace('\'', '"')).then().statusCode(400).body("errors[0].pointer", equalTo(pointer));
    }

    @ParameterizedTest
    @EnumSource(
            value = Role.class,
            names = {"RADIOGRAPHER", "ADMINISTRATOR"})
    void others_may_not_read_it(Role role) {
        for (var page : new String[] {"/events", "/verification", "/export"}) {
            SERVICE.person(role).get(AUDIT + page).then().statusCode(403).body("code", equalTo("not-allowed"));
        }
        SERVICE.workstation("r1").get(AUDIT + "/events").then().statusCode(403);
        SERVICE.anybody().get(AUDIT + "/events").then().statusCode(401);
    }
}
