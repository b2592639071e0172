package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;

import io.restassured.response.ValidatableResponse;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a caller gets wrong is refused with the name of the field; nothing is guessed, nothing ignored. */
class TechniqueParametersWebTest {

    private static final String EXAMINATION = "bodyPart=LSPINE&projection=ap";
    private static final String QUESTION = EXAMINATION + "&thicknessCm=21";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static ValidatableResponse ask(String query) {
        return SERVICE.workstation("r1")
                .get("/api/v1/rooms/r1/technique?" + query)
                .then();
    }

    private static ValidatableResponse wrong(String parameter, String query) {
        return ask(query)
                .statusCode(400)
                .body("code", equalTo("invalid-parameter"))
                .body("errors.parameter", hasItem(parameter));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "0",
                "0.00",
                "-1",
                "-0",
                "60.01",
                "61",
                "99999",
                "NaN",
                "Infinity",
                "-Infinity",
                "1e308",
                "1e1",
                "0x10",
                "1%2C5",
                "%20",
                "%2021",
                "21%20",
                "+21",
                "%2B21",
                "21.",
                ".5",
                "1.2.3",
                "21.001",
                "21cm",
                "%D9%A1%D9%A2",
                "%EF%BC%91%EF%BC%92",
                "21f",
                "21d",
                "1_0",
                "%00",
                "21%00"
            })
    void a_thickness_that_is_no_plain_number_over_0_up_to_60(String thickness) {
        wrong("thicknessCm", EXAMINATION + "&thicknessCm=" + thickness)
                .body("errors[0].detail", containsString("over 0 and at most 60 cm"));
    }

    @Test
    void a_thickness_of_a_thousand_digits_is_not_repeated_whole() {
        var answer = wrong("thicknessCm", EXAMINATION + "&thicknessCm=" + "9".repeat(1000));
        assertThat(answer.extract().<String>path("errors[0].value")).hasSizeLessThan(50);
    }

    @ParameterizedTest
    @ValueSource(strings = {"18", "18.0", "18.00", "0018", "23.99"})
    void a_thickness_may_be_written_in_any_plain_way(String thickness) {
        ask(EXAMINATION + "&thicknessCm=" + thickness).statusCode(200);
    }

    @Test
    void sixty_centimetres_are_a_thickness_that_the_chart_does_not_have() {
        ask(EXAMINATION + "&thicknessCm=60").statusCode(422);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "39.99", "400.01", "-110", "NaN", "1e2", "110.001", "", "%20"})
    void a_distance_outside_40_to_400_cm(String sid) {
        wrong("sidCm", QUESTION + "&sidCm=" + sid).body("errors[0].detail", containsString("40 to 400 cm"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "15.74", "157.49", "40.123", "40in"})
    void a_distance_in_inches_outside_the_same_limits(String sid) {
        wrong("sidIn", QUESTION + "&sidIn=" + sid);
    }

    @Test
    void a_distance_in_two_units_at_once() {
        wrong("sidIn", QUESTION + "&sidCm=100&sidIn=40").body("errors[0].detail", containsString("one unit"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"bodyPart", "projection", "thicknessCm"})
    void what_is_missing_is_named(String parameter) {
        var without = QUESTION.replaceAll(parameter + "=[^&]*&?", "");
        wrong(parameter, without).body("errors[0].detail", containsString("is missing"));
    }

    @Test
    void everything_that_is_missing_is_named_at_once() {
        ask("patientGroup=adult")
                .statusCode(400)
                .body("errors.parameter", containsInAnyOrder("bodyPart", "projection", "thicknessCm"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"patient=1", "Grid=g10", "=1", "thicknesscm=21", "x[]=1"})
    void a_parameter_that_does_not_exist(String parameter) {
        ask(QUESTION + "&" + parameter).statusCode(400).body("detail", containsString("there is no such parameter"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "thicknessCm=21",
                "bodyPart=KNEE",
                "grid=g10&grid=g10",
                "at=2026-02-03T00:00:00Z&at=2026-02-03T00:00:00Z"
            })
    void a_parameter_that_stands_twice(String again) {
        wrong(again.substring(0, again.indexOf('=')), QUESTION + "&" + again)
                .body("errors[0].detail", containsString("stands 2 times"));
    }

    @Test
    void the_same_adjustment_twice() {
        wrong("adjust", QUESTION + "&adjust=plaster&adjust=plaster");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "bodyPart=knee",
                "bodyPart=%20KNEE",
                "bodyPart=",
                "bodyPart=KNEEKNEEKNEEKNEEK",
                "bodyPart=KN%C3%89E",
                "bodyPart='%20OR%201=1"
            })
    void a_body_part_that_is_no_term(String parameter) {
        wrong("bodyPart", "projection=ap&thicknessCm=21&" + parameter);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "patientGroup=Adult",
                "patientGroup=",
                "support=bucky",
                "support=TABLETOP",
                "grid=G10",
                "grid=",
                "grid=../g10",
                "adjust=",
                "adjust=a%20b",
                "adjust=a&adjust=B"
            })
    void a_name_that_is_no_name(String parameter) {
        wrong(parameter.substring(0, parameter.indexOf('=')), QUESTION + "&" + parameter);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "%2B100000-01-01T00:00:00Z",
                "-100000-01-01T00:00:00Z",
                "2026-02-03",
                "2026-02-03T10:00:00",
                "2026-02-03T10:00Z",
                "now",
                "",
                "1770105600",
                "2026-02-30T10:00:00Z",
                "2026-02-03T10:00:00+02:00",
                "2026-02-03T24:01:00Z",
                "2026-02-03T10:00:60Z",
                "2026-02-03T10:00:00Z[UTC]"
            })
    void an_instant_without_seconds_or_offset_or_that_is_none(String at) {
        wrong("at", QUESTION + "&at=" + at).body("errors[0].detail", containsString("RFC 3339"));
    }
}
