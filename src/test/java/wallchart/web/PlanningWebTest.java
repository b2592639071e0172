package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.restassured.response.Response;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.chart.RowFields;
import wallchart.people.Role;

/** Charts drafted by the beam model, over HTTP. */
class PlanningWebTest {

    private static final String REASON = "All thicknesses from the technique that the phantom proved";
    private static final String PLANS = "/api/v1/charts/r1/plans";
    private static final String TRANSFERS = "/api/v1/charts/r2/transfers";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    private static Map<String, Object> plan(String kind) {
        var body = new HashMap<String, Object>();
        body.put("title", "Knee in bands of 2 cm");
        body.put("reason", REASON);
        body.put("baseVersion", 2);
        body.put("row", ChangeCalls.KNEE);
        body.put("plan", kind);
        body.put("fromCm", 7);
        body.put("toCm", 16);
        body.put("bandWidthCm", 1.5);
        return body;
    }

    private static Map<String, Object> transfer() {
        var body = new HashMap<String, Object>();
        body.put("title", "Chart of room 1");
        body.put("reason", "The rooms are equipped alike");
        body.put("fromRoom", "r1");
        body.put("fromVersion", 2);
        return body;
    }

    private Response post(String address, Map<String, ?> body) {
        return calls.by(Role.RADIOGRAPHER).body(body).post(address);
    }

    @Test
    void a_plan_is_checked_concurred_with_signed_and_answers_with_its_techniques() {
        var opened = post(PLANS, plan("flat-exposure"));
        opened.then()
                .statusCode(201)
                .body("change.state", equalTo("drafting"))
                .body("change.reason", containsString(REASON))
                .body(
                        "change.reason",
                        containsString("Drafted by the beam model, plan flat-exposure, from row KNEE/ap"))
                .body("change.reason", containsString("slab of water"))
                .body("draft.rows", hasSize(6))
                .body("draft.withdrawn", contains(ChangeCalls.KNEE))
                .body("draft.leftOut", empty());
        var id = opened.path("change.id");
        assertThat(opened.header("Location")).isEqualTo("/api/v1/changes/" + id);
        var change = SERVICE.person(Role.LEAD).get("/api/v1/changes/" + id);
        assertThat(change.header("ETag")).isEqualTo(opened.header("ETag"));
        change.then().body("edits.kind", hasSize(7)).body("edits.kind", hasItem("withdraw"));
        SERVICE.person(Role.LEAD)
                .get("/api/v1/changes/" + id + "/findings")
                .then()
                .statusCode(200)
                .body("blocking", equalTo(false));

        var submitted = calls.step(Role.RADIOGRAPHER, change, "submit");
        submitted.then().statusCode(200);
        var concurred = calls.step(
                Role.PHYSICIST, submitted, "concur", Map.of("password", ChangeCalls.password(Role.PHYSICIST)));
        concurred.then().statusCode(200);
        var signed = calls.sign(concurred);
        signed.then().statusCode(200).body("state", equalTo("signed"));

        List<Map<String, Object>> rows = opened.path("draft.rows");
        for (var row : rows) {
            Map<String, Object> asPlanned = cast(row.get("row"));
            SERVICE.workstation("r1")
                    .get("/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm="
                            + asPlanned.get("referenceThicknessCm"))
                    .then()
                    .statusCode(200)
                    .body("chart.version", equalTo(signed.path("signedVersion")))
                    .body("row.key", equalTo(row.get("key")))
                    .body("set.kV", equalTo(asPlanned.get("kV")))
                    .body("set.mAs", equalTo(asPlanned.get("mAs")));
        }
    }

    /** As version 2 has it; another test here withdraws it. */
    private static Map<String, String> knee() {
        return SERVICE.services().charts().version("r1", 2).orElseThrow().content().rows().stream()
                .filter(row -> row.key().toString().equals(ChangeCalls.KNEE))
                .map(RowFields::of)
                .findFirst()
                .orElseThrow();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> cast(Object members) {
        return (Map<String, Object>) members;
    }

    private static Map<String, Object> read(String members) throws IOException {
        var mapper = new ObjectMapper().enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
        return mapper.readValue(ChangeCalls.json("{" + members + "}"), new TypeReference<>() {});
    }

    private static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    @Test
    void a_look_at_a_plan_shows_every_factor_and_keeps_nothing() {
        int before = SERVICE.person(Role.LEAD).get("/api/v1/changes").path("changes.size()");
        var seen = post(PLANS + "/preview", plan("variable-kv"));
        seen.then()
                .statusCode(200)
                .body("baseVersion", equalTo(2))
                .body("rows.from.row", everyItem(equalTo(ChangeCalls.KNEE)))
                .body("rows.factors", everyItem(hasSize(2)))
                .body("assumptions", hasItem(containsString("40 to 150 kV")));
        List<Map<String, Object>> rows = seen.path("rows");
        for (var row : rows) {
            double product = number(cast(row.get("from")).get("mAs"));
            for (Object factor : (List<?>) row.get("factors")) {
                product *= number(cast(factor).get("value"));
            }
            double exact = number(cast(row.get("exact")).get("mAs"));
            assertThat(product).isCloseTo(exact, within(exact * 1e-4)); // six digits are shown
        }
        assertThat(SERVICE.person(Role.LEAD).get("/api/v1/changes").<Integer>path("changes.size()"))
                .isEqualTo(before);
    }

    @Test
    void a_technique_that_is_written_out_is_planned_from_as_well() {
        var body = plan("fixed-kv");
        body.remove("row");
        var technique = new HashMap<String, Object>(knee());
        List.of("bandFromCm", "bandToCm", "thicknessMethod", "thicknessRate").forEach(technique::remove);
        technique.put("projection", "lateral");
        technique.put("referenceThicknessCm", 11);
        technique.put("mAs", 8);
        body.put("technique", technique);
        post(PLANS + "/preview", body)
                .then()
                .statusCode(200)
                .body("rows", hasSize(6))
                .body("rows.kind", everyItem(equalTo("add")))
                .body("rows[0].from.mAs", equalTo(8))
                .body("withdrawn", empty());
        var own = technique.put("grid", "g99");
        ChangeCalls.assertWrongMember(post(PLANS + "/preview", body), "/technique");
        technique.put("grid", own);
        technique.put("bandFromCm", 1);
        technique.put("colour", "red");
        technique.put("kV", "sixty");
        post(PLANS + "/preview", body).then().statusCode(400).body("errors.pointer", hasItem("/technique/colour"));
        technique.remove("colour");
        post(PLANS + "/preview", body)
                .then()
                .statusCode(400)
                .body("errors.pointer", contains("/technique/bandFromCm", "/technique/kV"));
    }

    @Test
    void decibels_are_told_to_hundredths_without_what_is_left_of_arithmetic() {
        var flat = post(PLANS + "/preview", plan("flat-exposure"));
        flat.then().body("rows.bandEndsDb.flatten()", everyItem(equalTo(0)));
        List<Number> rounding = post(PLANS + "/preview", plan("fixed-kv")).path("rows.roundingDeviation");
        assertThat(rounding).isNotEmpty().allSatisfy(dB -> assertThat(number(dB) * 100)
                .isCloseTo(Math.round(number(dB) * 100), within(1e-3)));
    }

    @Test
    void of_a_chest_nothing_is_planned_and_the_answer_says_why() {
        var body = plan("flat-exposure");
        body.remove("row");
        var technique = new HashMap<String, Object>(knee());
        List.of("bandFromCm", "bandToCm", "thicknessMethod", "thicknessRate").forEach(technique::remove);
        technique.put("bodyPart", "CHEST");
        technique.put("referenceThicknessCm", 23);
        body.put("technique", technique);
        var answer = post(PLANS + "/preview", body);
        ChangeCalls.assertWrongMember(answer, "/technique");
        answer.then()
                .body("errors[0].detail", containsString("is of CHEST/ap/adult/table-bucky, mostly lung"))
                .body("errors[0].detail", containsString("a slab of water does not stand for it"));
        ChangeCalls.assertWrongMember(post(PLANS, body), "/technique");
    }

    @Test
    void a_plan_of_which_nothing_is_possible_is_no_change_and_says_why() {
        var body = plan("fixed-kv");
        body.put("fromCm", 40);
        body.put("toCm", 44);
        post(PLANS, body)
                .then()
                .statusCode(422)
                .body("code", equalTo("blocking-findings"))
                .body("findings[0].reason", containsString("not predicted: the thickness is"));
        post(PLANS + "/preview", body)
                .then()
                .statusCode(200)
                .body("rows", empty())
                .body("leftOut", hasSize(3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/row | 'row':null",
                "/row | 'row':'KNEE/ap/adult/table-bucky/1-2'",
                "/row | 'row':'LSPINE/ap/adult/table-bucky/24-30'",
                "/row | 'technique':{}",
                "/plan | 'plan':'as-before'",
                "/plan | 'plan':null",
                "/kVPerCm | 'kVPerCm':2",
                "/kVPerCm | 'plan':'variable-kv','kVPerCm':11",
                "/kVPerCm | 'plan':'variable-kv','kVPerCm':1e999999999",
                "/fromCm | 'fromCm':-1",
                "/fromCm | 'fromCm':'7'",
                "/fromCm | 'fromCm':7.123",
                "/toCm | 'toCm':7",
                "/toCm | 'toCm':61",
                "/toCm | 'toCm':null",
                "/bandWidthCm | 'bandWidthCm':0",
                "/bandWidthCm | 'bandWidthCm':0.1",
                "/baseVersion | 'baseVersion':-1",
                "/reason | 'reason':'short'",
                "/title | 'title':''",
                "/colour | 'colour':'red'",
            })
    void a_mistaken_plan(String pointer, String members) throws IOException {
        var body = plan("fixed-kv");
        body.putAll(read(members));
        ChangeCalls.assertWrongMember(post(PLANS, body), pointer);
    }

    @Test
    void a_plan_for_a_version_that_is_not_there_is_refused() {
        var body = plan("fixed-kv");
        body.put("baseVersion", 99);
        post(PLANS, body).then().statusCode(404).body("code", equalTo("unknown-version"));
        post("/api/v1/charts/r9/plans", body).then().statusCode(404).body("code", equalTo("unknown-room"));
    }

    @Test
    void a_chart_is_brought_to_a_room_that_has_none_with_its_adjustments_and_what_cannot_come_is_named() {
        var seen = post(TRANSFERS + "/preview", transfer());
        seen.then()
                .statusCode(200)
                .body("baseVersion", equalTo(0))
                .body("rows.kind", everyItem(equalTo("add")))
                .body("rows.key", hasItem(ChangeCalls.KNEE))
                .body("leftOut.row", contains("LSPINE/ap/adult/table-bucky/24-30"))
                .body("leftOut[0].reason", containsString("the generator of room r2 has no AEC"))
                .body("adjustments.name", contains("plaster", "lytic"))
                .body("statement", containsString("r2: output not measured, by the beam model, uncalibrated"))
                .body("rows[0].factors.name", contains("output", "beam", "grid", "distance", "target", "voltage"))
                .body("rows[0].from.room", equalTo("r1"));
        var opened = post(TRANSFERS, transfer());
        opened.then()
                .statusCode(201)
                .body("change.room", equalTo("r2"))
                .body("change.baseVersion", equalTo(0))
                .body("change.adjustments", notNullValue())
                .body("change.reason", containsString("uncalibrated"));
        SERVICE.person(Role.LEAD)
                .get("/api/v1/changes/" + opened.path("change.id") + "/findings")
                .then()
                .body("blocking", equalTo(false));
    }

    @Test
    void a_version_brought_to_itself_is_refused() {
        var body = transfer();
        body.put("baseVersion", 2);
        ChangeCalls.assertWrongMember(post("/api/v1/charts/r1/transfers/preview", body), "/fromVersion");
        ChangeCalls.assertWrongMember(post("/api/v1/charts/r1/transfers", body), "/fromVersion");
    }

    @Test
    void a_transfer_takes_the_body_part_and_the_examinations_that_are_named() {
        var body = transfer();
        body.put("bodyPart", "KNEE");
        post(TRANSFERS + "/preview", body).then().body("rows", hasSize(2));
        body.put("examinations", List.of("KNEE/ap/adult/tabletop"));
        body.put("receptors", Map.of("dr1", "cr1"));
        post(TRANSFERS + "/preview", body)
                .then()
                .body("rows.row.receptor", contains("cr1"))
                .body("assumptions", hasItem(containsString("different kinds")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/fromRoom | 'fromRoom':'r9'",
                "/fromRoom | 'fromRoom':null",
                "/fromVersion | 'fromVersion':99",
                "/fromVersion | 'fromVersion':'2'",
                "/bodyPart | 'bodyPart':'SKULL'",
                "/bodyPart | 'bodyPart':'knee'",
                "/examinations | 'bodyPart':'KNEE','examinations':['LSPINE/ap/adult/table-bucky']",
                "/examinations/1 | 'examinations':['KNEE/ap/adult/tabletop','SKULL/pa/adult/tabletop']",
                "/examinations/0 | 'examinations':[null]",
                "/rows | 'rows':'some'",
                "/supports/table-bucky | 'supports':{'table-bucky':'ceiling'}",
                "/supports/table-bucky | 'supports':{'table-bucky':'mobile'}",
                "/supports/floor | 'supports':{'floor':'mobile'}",
                "/grids/g10 | 'grids':{'g10':'g99'}",
                "/grids | 'grids':{'G 10':'none'}",
                "/receptors/dr9 | 'receptors':{'dr9':'dr1'}",
                "/reason | 'reason':'short'",
                "/colour | 'colour':'red'",
            })
    void a_mistaken_transfer(String pointer, String members) throws IOException {
        var body = transfer();
        body.putAll(read(members));
        ChangeCalls.assertWrongMember(post(TRANSFERS, body), pointer);
    }
}
