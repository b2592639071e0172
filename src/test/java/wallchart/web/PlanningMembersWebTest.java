package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wallchart.chart.RowFields;
import wallchart.people.Role;

/** Every member of a plan and of a transfer: left out, null, empty, of another type, twice, unknown. What comes of it is never a fault. */
class PlanningMembersWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static final List<String> PLAN_MEMBERS = List.of(
            "title", "reason", "baseVersion", "row", "technique", "plan", "kVPerCm", "fromCm", "toCm", "bandWidthCm");

    private static final List<String> TRANSFER_MEMBERS = List.of(
            "title",
            "reason",
            "baseVersion",
            "fromRoom",
            "fromVersion",
            "bodyPart",
            "examinations",
            "rows",
            "supports",
            "grids",
            "receptors");

    private static final List<String> MAY_BE_LEFT_OUT =
            List.of("baseVersion", "bodyPart", "examinations", "rows", "supports", "grids", "receptors", "kVPerCm");

    /** JSON of every type, empty, well-formed and not what anybody means. */
    private static final List<String> VALUES = List.of(
            "null",
            "''",
            "' '",
            "'x'",
            "'KNEE'",
            "'a/b~c'",
            "'\\u0000'",
            "'\\ud800'",
            "true",
            "0",
            "-1",
            "1.5",
            "2147483648",
            "1e999999999",
            "-1e-999999999",
            "[]",
            "[null]",
            "['']",
            "['x']",
            "['KNEE/ap/adult/tabletop','KNEE/ap/adult/tabletop']",
            "[[]]",
            "[{}]",
            "[1]",
            "{}",
            "{'':''}",
            "{'':null}",
            "{'x':null}",
            "{'x':''}",
            "{'x':'y'}",
            "{'x':1}",
            "{'x':{}}",
            "{'x':[null]}",
            "{'a/b~c':'d'}",
            "{'none':'none'}",
            "{'g10':null}",
            "{'dr1':null}",
            "{'tabletop':null}",
            "{'tabletop':'tabletop','tabletop':'tabletop'}");

    private static final List<String> FIELD_VALUES = List.of(
            "null",
            "''",
            "'x'",
            "'\\u0000'",
            "true",
            "0",
            "-1",
            "1e999999999",
            "[]",
            "[null]",
            "[1,2]",
            "{}",
            "{'chambers':[null]}",
            "{'chambers':['left'],'density':0,'backupMAs':null}");

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    private static Map<String, String> plan() {
        var body = new LinkedHashMap<String, String>();
        body.put("title", "'Knee in bands of 2 cm'");
        body.put("reason", "'All thicknesses from one technique'");
        body.put("row", "'" + ChangeCalls.KNEE + "'");
        body.put("plan", "'variable-kv'");
        body.put("fromCm", "9");
        body.put("toCm", "15");
        body.put("bandWidthCm", "3");
        return body;
    }

    private static Map<String, String> transfer() {
        var body = new LinkedHashMap<String, String>();
        body.put("title", "'Chart of room 1'");
        body.put("reason", "'The rooms are equipped alike'");
        body.put("fromRoom", "'r1'");
        body.put("fromVersion", "2");
        return body;
    }

    private static final Map<String, Map<String, String>> BODIES = Map.of(
            "/api/v1/charts/r1/plans", plan(),
            "/api/v1/charts/r1/plans/preview", plan(),
            "/api/v1/charts/r2/transfers", transfer(),
            "/api/v1/charts/r2/transfers/preview", transfer());

    static Stream<Arguments> members() {
        return BODIES.keySet().stream().sorted().flatMap(address -> names(address)
                .map(member -> Arguments.of(address, member)));
    }

    static Stream<String> addresses() {
        return BODIES.keySet().stream().sorted();
    }

    private static Stream<String> names(String address) {
        return (address.contains("plans") ? PLAN_MEMBERS : TRANSFER_MEMBERS).stream();
    }

    private static String json(Map<String, String> body) {
        return ChangeCalls.json(body.entrySet().stream()
                .map(member -> "'" + member.getKey() + "':" + member.getValue())
                .collect(Collectors.joining(",", "{", "}")));
    }

    /** What it opens is taken back: the same draft may not be open twice. */
    private Response post(String address, String body) {
        var answer = calls.by(Role.RADIOGRAPHER).body(body).post(address);
        if (answer.statusCode() == 201) {
            calls.by(Role.RADIOGRAPHER, answer)
                    .post(answer.header("Location") + "/withdraw")
                    .then()
                    .statusCode(200);
        }
        return answer;
    }

    private static Map<String, String> with(String address, String member, String value) {
        var body = new LinkedHashMap<>(BODIES.get(address));
        body.put(member, value);
        return body;
    }

    /** Answered, or refused with what is wrong; never a fault. */
    private static void assertNoFault(Response answer, String sent) {
        assertThat(answer.statusCode()).as(sent).isIn(200, 201, 400, 404, 422);
        if (answer.statusCode() >= 400) {
            assertThat(answer.<String>path("code")).as(sent).isNotBlank();
        }
    }

    @ParameterizedTest
    @MethodSource("members")
    void whatever_a_member_holds_is_answered_or_refused_with_its_name(String address, String member) {
        for (var value : VALUES) {
            var sent = json(with(address, member, value));
            var answer = post(address, sent);
            assertNoFault(answer, sent);
            if (answer.statusCode() == 400) {
                var pointers = answer.<List<String>>path("errors.pointer");
                assertThat(pointers).as(sent).allMatch(at -> isNamed(at, member));
            }
        }
    }

    /** What stands twice inside a member leaves no JSON to point into; which row is meant depends on two other members. */
    private static boolean isNamed(String pointer, String member) {
        return pointer.isEmpty()
                || pointer.equals("/" + member)
                || pointer.startsWith("/" + member + "/")
                || List.of("technique", "baseVersion").contains(member) && pointer.equals("/row");
    }

    @ParameterizedTest
    @MethodSource("members")
    void a_member_that_is_left_out_is_as_one_that_is_null(String address, String member) {
        var body = new LinkedHashMap<>(BODIES.get(address));
        body.remove(member);
        var without = post(address, json(body));
        var withNull = post(address, json(with(address, member, "null")));
        assertNoFault(without, member);
        assertThat(withNull.statusCode()).isEqualTo(without.statusCode());
        if (MAY_BE_LEFT_OUT.contains(member)) {
            assertThat(without.statusCode()).isIn(200, 201);
        }
        if (address.endsWith("/preview") || without.statusCode() >= 400) {
            assertThat(withNull.<Object>path("rows")).isEqualTo(without.<Object>path("rows"));
        }
    }

    @ParameterizedTest
    @MethodSource("members")
    void a_member_that_stands_twice_is_refused(String address, String member) {
        for (var first : List.of("null", "'x'", "[]", "{}")) {
            var whole = json(with(address, member, BODIES.get(address).getOrDefault(member, "null")));
            var twice = ChangeCalls.json("{'" + member + "':" + first + ",") + whole.substring(1);
            var answer = post(address, twice);
            assertThat(answer.statusCode()).as(twice).isEqualTo(400);
            assertThat(answer.<String>path("code")).as(twice).isEqualTo("invalid-body");
        }
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void a_member_that_there_is_not_is_refused_with_its_name(String address) {
        for (var name : List.of("colour", "Row", "title ", "", "a/b", "examination", "__proto__")) {
            for (var value : List.of("null", "'x'", "{}")) {
                ChangeCalls.assertWrongMember(
                        post(address, json(with(address, name, value))), "/" + name.replace("/", "~1"));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("addresses")
    void a_body_that_is_no_object_is_refused(String address) {
        for (var body : List.of("null", "[]", "''", "0", "true", "{", "", "{'title'}", "[{}]", "{}")) {
            var answer = post(address, ChangeCalls.json(body));
            assertThat(answer.statusCode()).as(body).isEqualTo(400);
        }
    }

    @ParameterizedTest
    @MethodSource("techniqueFields")
    void whatever_a_field_of_a_technique_that_is_written_out_holds(String field) {
        for (var value : FIELD_VALUES) {
            var technique = written();
            technique.put(field, value);
            var body = plan();
            body.remove("row");
            body.put("technique", json(technique));
            var sent = json(body);
            assertNoFault(post("/api/v1/charts/r1/plans/preview", sent), sent);
        }
    }

    static Stream<String> techniqueFields() {
        return Stream.concat(RowFields.NAMES.stream(), Stream.of("bandCm", "kVWindow", "aec", "key", ""));
    }

    /** The knee of the department, as somebody would write it out. */
    private Map<String, String> written() {
        var technique = new LinkedHashMap<String, String>();
        calls.fields(ChangeCalls.KNEE)
                .forEach((name, value) -> technique.put(name, value == null ? "null" : "'" + value + "'"));
        List.of("bandFromCm", "bandToCm", "thicknessMethod", "thicknessRate").forEach(technique::remove);
        return technique;
    }
}
