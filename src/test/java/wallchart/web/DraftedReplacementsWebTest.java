package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;

import io.restassured.response.Response;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.chart.RowFields;
import wallchart.people.Role;

/** What drafts do with rows that a room has already. */
class DraftedReplacementsWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    private Response preview(String draft, Map<String, ?> body) {
        return calls.by(Role.RADIOGRAPHER).body(body).post("/api/v1/charts/" + draft + "/preview");
    }

    private static Map<String, String> knee() {
        return SERVICE.services().charts().version("r1", 2).orElseThrow().content().rows().stream()
                .filter(row -> row.key().toString().equals(ChangeCalls.KNEE))
                .map(RowFields::of)
                .findFirst()
                .orElseThrow();
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    @Test
    void rows_that_the_room_has_stay_unless_all_are_asked_for_and_then_the_draft_shows_what_gives_way() {
        var body = new HashMap<String, Object>();
        body.put("fromRoom", "r1");
        body.put("fromVersion", 1);
        body.put("baseVersion", 2);
        body.put("examinations", List.of("LSPINE/ap/adult/table-bucky"));
        var kept = preview("r1/transfers", body);
        kept.then()
                .statusCode(200)
                .body("rows", empty())
                .body("leftOut[0].reason", containsString("room r1 has a row of its own there, " + ChangeCalls.SPINE))
                .body("leftOut[0].reason", containsString("unless rows is all"));
        body.put("rows", "all");
        preview("r1/transfers", body).then().body("rows", hasSize(1)).body("leftOut", empty());
    }

    @Test
    void what_a_written_technique_would_overwrite_is_shown_with_decibels_kerma_and_a_caution() {
        var body = new HashMap<String, Object>();
        body.put("baseVersion", 2);
        body.put("plan", "variable-kv");
        var technique = new HashMap<String, Object>(knee());
        List.of("bandFromCm", "bandToCm", "thicknessMethod", "thicknessRate").forEach(technique::remove);
        technique.put("referenceThicknessCm", "11.5");
        technique.put("mAs", "40");
        body.put("technique", technique);
        body.put("fromCm", 10);
        body.put("toCm", 13);
        body.put("bandWidthCm", 3);
        double mAs = number(new BigDecimal(knee().get("mAs")));
        var seen = preview("r1/plans", body);
        seen.then()
                .statusCode(200)
                .body("rows[0].before.row", equalTo(ChangeCalls.KNEE))
                .body("rows[0].before.needsPhysicist", equalTo(true))
                .body("rows[0].cautions", hasItem(containsString("takes the place of " + ChangeCalls.KNEE)))
                .body("rows[0].cautions", hasItem(containsString("where the site's limits are 1 dB and 25 % more")));
        assertThat(number(seen.path("rows[0].before.mAs"))).isEqualTo(mAs);
        // at one tube voltage receptor and skin follow the mAs
        assertThat(number(seen.path("rows[0].before.kermaChangePercent"))).isCloseTo(100 * (40 / mAs - 1), within(0.1));
        assertThat(number(seen.path("rows[0].before.exposureShiftDb")))
                .isCloseTo(10 * Math.log10(40 / mAs), within(0.01));
    }

    @Test
    void a_row_over_the_level_of_the_site_is_said_with_level_quantity_and_source() {
        var body = new HashMap<String, Object>();
        body.put("baseVersion", 2);
        body.put("row", ChangeCalls.SPINE);
        body.put("plan", "fixed-kv");
        body.put("fromCm", 24);
        body.put("toCm", 33);
        body.put("bandWidthCm", 3);
        preview("r1/plans", body)
                .then()
                .statusCode(200)
                .body("findings.reason", hasItem(containsString("over the site's reference level of 10 mGy")))
                .body("findings.reason", hasItem(containsString("entrance surface air kerma, with backscatter")));
    }
}
