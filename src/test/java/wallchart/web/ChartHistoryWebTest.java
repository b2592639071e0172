package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;

import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;

/** Every version of a room's chart, what it held, and what changed. */
class ChartHistoryWebTest {

    private static final String CHART = "/api/v1/charts/r1";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static ValidatableResponse get(String address) {
        return SERVICE.person(Role.LEAD).get(address).then();
    }

    @Test
    void the_history_is_newest_first_and_signed() {
        get(CHART + "/versions")
                .statusCode(200)
                .body("versions.version", contains(2, 1))
                .body("versions[0].reason", equalTo("made for the tests of this service"))
                .body("versions[0].signature.printedName", equalTo("Pat first-lead"))
                .body("versions[0].signature.meaning", equalTo("approved for use"))
                .body("versions[1].inForceFrom", equalTo(Department.FIRST_VERSION_FROM));
    }

    @Test
    void a_room_without_a_chart_has_an_empty_history() {
        get("/api/v1/charts/r2/versions").statusCode(200).body("versions", empty());
    }

    @Test
    void a_version_says_how_much_it_holds_and_links_to_its_neighbours() {
        get(CHART + "/versions/1")
                .statusCode(200)
                .body("version", equalTo(1))
                .body("rows", equalTo(1))
                .body("adjustments", equalTo(0))
                .header("Link", containsString("</api/v1/charts/r1/versions/2>; rel=\"successor-version\""))
                .header("Link", containsString("</api/v1/charts/r1/versions/2>; rel=\"latest-version\""))
                .header("Link", not(containsString("predecessor")));
        get(CHART + "/versions/2")
                .body("rows", equalTo(4))
                .body("adjustments", equalTo(2))
                .header("Link", containsString("</api/v1/charts/r1/versions/1>; rel=\"predecessor-version\""))
                .header("Link", not(containsString("successor")));
    }

    @Test
    void the_rows_of_a_version_are_whole_and_may_be_kept_for_ever() {
        get(CHART + "/versions/2/rows")
                .statusCode(200)
                .header("Cache-Control", "private, max-age=31536000, immutable")
                .body("version", equalTo(2))
                .body("rows", hasSize(4))
                .body("rows[0].mAs", equalTo(20))
                .body("rows[1].aec.chambers", contains("left", "right"))
                .body("rows[2].support", equalTo("tabletop"))
                .body("adjustments.name", contains("plaster", "lytic"))
                .body("adjustments[0].addKV", equalTo(6))
                .body("adjustments[1].timesMAs", equalTo(0.75f));
    }

    @Test
    void two_versions_are_compared_row_by_row() {
        get(CHART + "/compare?from=1&to=2")
                .statusCode(200)
                .body("added", hasSize(3))
                .body("withdrawn", empty())
                .body("amended.key", contains("LSPINE/ap/adult/table-bucky/18-24"))
                .body("amended[0].fields.field", contains("mAs"))
                .body("amended[0].fields[0].before", equalTo("25"))
                .body("amended[0].fields[0].after", equalTo("20"))
                .body("addedAdjustments.name", containsInAnyOrder("plaster", "lytic"));
        get(CHART + "/compare?from=2&to=1").body("added", empty()).body("withdrawn", hasSize(3));
        get(CHART + "/compare?from=2&to=2").body("amended", empty()).body("reordered", equalTo(false));
    }

    @ParameterizedTest
    @CsvSource({
        "/versions,'private, no-cache'",
        "/versions/1,'private, no-cache'",
        "/versions/2/rows,'private, max-age=31536000, immutable'",
        "/compare?from=1&to=2,'private, max-age=31536000, immutable'"
    })
    void what_the_caller_already_has_is_not_sent_again(String address, String keeping) {
        var first = get(CHART + address)
                .statusCode(200)
                .header("Cache-Control", keeping)
                .extract();
        var tag = first.header("ETag");
        assertThat(tag).matches("\"[0-9a-f.-]+\"");
        for (var known : new String[] {tag, "W/" + tag, "\"other\", " + tag, "*"}) {
            var again = SERVICE.person(Role.LEAD).header("If-None-Match", known).get(CHART + address);
            assertThat(again.statusCode()).as(known).isEqualTo(304);
            assertThat(again.header("ETag")).isEqualTo(tag);
            assertThat(again.header("Cache-Control")).isEqualTo(keeping);
            assertThat(again.asString()).isEmpty();
        }
        SERVICE.person(Role.LEAD)
                .header("If-None-Match", "\"other\"")
                .get(CHART + address)
                .then()
                .statusCode(200);
    }

    @Test
    void each_version_has_a_tag_of_its_own() {
        var first = get(CHART + "/versions/1/rows").extract().header("ETag");
        var second = get(CHART + "/versions/2/rows").extract().header("ETag");
        assertThat(first).isNotEqualTo(second);
    }

    @Test
    void a_tag_opens_no_door() {
        SERVICE.anybody()
                .header("If-None-Match", "*")
                .get(CHART + "/versions/1")
                .then()
                .statusCode(401);
        SERVICE.person(Role.LEAD)
                .header("If-None-Match", "*")
                .get(CHART + "/versions/9")
                .then()
                .statusCode(404);
    }

    @ParameterizedTest
    @ValueSource(strings = {"/versions/3", "/versions/999999/rows", "/compare?from=1&to=3", "/compare?from=3&to=1"})
    void a_version_that_is_not_there(String address) {
        get(CHART + address).statusCode(404).body("code", equalTo("unknown-version"));
    }

    @Test
    void a_room_that_is_not_there() {
        get("/api/v1/charts/r9/versions").statusCode(404).body("code", equalTo("unknown-room"));
        get("/api/v1/charts/r9/versions/1/rows").statusCode(404).body("code", equalTo("unknown-room"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/versions/0",
                "/versions/x",
                "/versions/01",
                "/versions/-1",
                "/versions/1.0",
                "/versions/99999999999",
                "/compare",
                "/compare?from=1",
                "/compare?from=1&to=x",
                "/compare?from=1&to=2&to=2",
                "/compare?from=1&to=2&by=row",
                "/versions?limit=1"
            })
    void a_number_that_is_no_number(String address) {
        get(CHART + address).statusCode(400).body("code", equalTo("invalid-parameter"));
    }
}
