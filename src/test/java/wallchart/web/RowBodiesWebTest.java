package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;
import wallchart.web.view.Json;

/** Rows and adjustments are read as strictly as everything else: every mistake is named by its member or part of the address. */
class RowBodiesWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/kV | {'kV':true}",
                "/kV | {'kV':[63]}",
                "/kV | {'kV':{'set':63}}",
                "/kv | {'kv':63}",
                "/bandCm | {'bandCm':[10]}",
                "/bandCm | {'bandCm':[10,13,16]}",
                "/bandFromCm | {'bandCm':[10,13],'bandFromCm':10}",
                "/bandCm | {'bandFromCm':10,'bandCm':[10,13]}",
                "/aec | {'aec':{'chambers':[1]}}",
                "/aec | {'aec':{'chamber':['left']}}",
                "/key | {'key':'KNEE/ap/adult/table-bucky/1-2'}",
                "/a~1b~0c | {'a/b~c':63}",
                "/notes | {'notes':'\\u0000'}",
                "/notes | {'notes':'\\udc00 alone'}",
                " | {'kV':63,'kV':64}",
                " | []",
                " | null",
                " | 'row'",
                " | {'kV':63",
                " | {'kV':NaN}"
            })
    void a_mistaken_row(String pointer, String body) {
        var opened = calls.open(Role.RADIOGRAPHER);
        var answer = calls.by(Role.RADIOGRAPHER, opened)
                .body(ChangeCalls.json(body))
                .put(ChangeCalls.row(opened, ChangeCalls.KNEE));
        ChangeCalls.assertWrongMember(answer, pointer);
    }

    /** Every row of the chart, manual and automatic, as it is answered: sent back, it is no edit. */
    @Test
    void a_row_is_sent_back_as_it_was_read() throws Exception {
        var opened = calls.open(Role.RADIOGRAPHER);
        var version = SERVICE.person(Role.RADIOGRAPHER).get("/api/v1/charts/r1/versions/" + calls.newest() + "/rows");
        var rows = new ObjectMapper()
                .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
                .readTree(version.asString())
                .get("rows");
        assertThat(rows).anyMatch(row -> row.get("aec").isObject()).anyMatch(row -> row.get("aec")
                .isNull());
        for (var row : rows) {
            calls.by(Role.RADIOGRAPHER, opened)
                    .body(row.toString())
                    .put(ChangeCalls.row(opened, row.get("key").asText()))
                    .then()
                    .statusCode(200)
                    .body("edits", hasSize(0));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"1e999999999", "-63", "63.0000000000000000001", "1E-99", "0x3F"})
    void a_number_that_no_console_has(String number) {
        var opened = calls.open(Role.RADIOGRAPHER);
        var fields = calls.fields(ChangeCalls.KNEE);
        fields.put("kV", "NUMBER");
        var body = new String(Json.bytes(fields), StandardCharsets.UTF_8).replace("\"NUMBER\"", number);
        calls.by(Role.RADIOGRAPHER, opened)
                .body(body)
                .put(ChangeCalls.row(opened, ChangeCalls.KNEE))
                .then()
                .statusCode(400)
                .body("code", equalTo("invalid-body"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "/adjustments | {}",
                "/adjustments | {'adjustments':null}",
                "/adjustments | {'adjustments':'none'}",
                "/adjustments/0 | {'adjustments':[null]}",
                "/adjustments/0 | {'adjustments':['plaster']}",
                "/adjustments/0/name | {'adjustments':[{'name':['plaster']}]}",
                "/adjustments/1/addKV | {'adjustments':[{'name':'a','label':'A','addKv':5},{'name':'b','label':'B','addKV':5,'addKv':5}]}",
                "/adjustments/0/kV | {'adjustments':[{'name':'a','label':'A','kV':5}]}",
                "/rows | {'adjustments':[],'rows':[]}"
            })
    void mistaken_adjustments(String pointer, String body) {
        var opened = calls.open(Role.RADIOGRAPHER);
        var answer = calls.by(Role.RADIOGRAPHER, opened)
                .body(ChangeCalls.json(body))
                .put(ChangeCalls.address(opened) + "/adjustments");
        ChangeCalls.assertWrongMember(answer, pointer);
    }

    @ParameterizedTest
    @CsvSource({
        "bodyPart,KN.EE/ap/adult/table-bucky/10-13",
        "projection,KNEE/ap.pa/adult/table-bucky/10-13",
        "patientGroup,KNEE/ap/a.b/table-bucky/10-13",
        "support,KNEE/ap/adult/floor/10-13",
        "band,KNEE/ap/adult/table-bucky/13-10",
        "band,KNEE/ap/adult/table-bucky/10-10",
        "band,KNEE/ap/adult/table-bucky/10",
        "band,KNEE/ap/adult/table-bucky/10-13-16",
        "band,KNEE/ap/adult/table-bucky/ten-13"
    })
    void a_part_of_the_address_that_no_row_has(String part, String key) {
        var opened = calls.open(Role.RADIOGRAPHER);
        for (var place : new String[] {"/rows/", "/edits/"}) {
            calls.by(Role.RADIOGRAPHER, opened)
                    .delete(ChangeCalls.address(opened) + place + key)
                    .then()
                    .statusCode(400)
                    .body("code", equalTo("invalid-parameter"))
                    .body("errors[0].parameter", equalTo(part));
        }
    }

    @Test
    void sixty_five_kibibytes_are_too_many() {
        var opened = calls.open(Role.RADIOGRAPHER);
        var body = "{\"notes\":\"" + "n".repeat(65 * 1024) + "\"}";
        calls.by(Role.RADIOGRAPHER, opened)
                .body(body)
                .put(ChangeCalls.row(opened, ChangeCalls.KNEE))
                .then()
                .statusCode(413);
        calls.by(Role.RADIOGRAPHER, opened)
                .body(body)
                .post(ChangeCalls.address(opened) + "/submit")
                .then()
                .statusCode(413);
    }

    @Test
    void another_media_type_is_not_read() {
        var opened = calls.open(Role.RADIOGRAPHER);
        calls.by(Role.RADIOGRAPHER, opened)
                .contentType("text/plain")
                .body("{\"kV\":63}")
                .put(ChangeCalls.row(opened, ChangeCalls.KNEE))
                .then()
                .statusCode(415);
    }
}
