package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;

/**
 * Who may use what, whole: every caller at every address with every method. The table below is written by hand, not read from the
 * routes, so whoever adds an address decides here a second time who may use it.
 *
 * <p>Every request carries a query parameter that no address knows, so whoever is let in is told so (400) and nothing is changed.
 */
class AccessMatrixTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static final List<String> METHODS = List.of("GET", "HEAD", "POST", "PUT", "DELETE", "PATCH", "OPTIONS");
    private static final Set<String> WRITES = Set.of("POST", "PUT", "DELETE");

    private static final String ROW = "{bodyPart}/{projection}/{patientGroup}/{support}/{band}";

    /** Let in: +; not known: 401; known, but not allowed: 403. HEAD is as GET. {row} stands for the five parts of a row's key. */
    private static final String TABLE =
            """
            #                                                    nobody own-room other-room radiographer lead physicist administrator
            GET    /                                             +      +        +          +            +    +         +
            GET    /room-worker.js                                +      +        +          +            +    +         +
            GET    /rooms/{room}                                 +      +        +          +            +    +         +
            GET    /charts/{room}                                +      +        +          +            +    +         +
            GET    /changes                                      +      +        +          +            +    +         +
            GET    /changes/{id}                                 +      +        +          +            +    +         +
            GET    /equipment/{room}                             +      +        +          +            +    +         +
            GET    /audit                                        +      +        +          +            +    +         +
            GET    /sheets                                       +      +        +          +            +    +         +
            GET    /sheets/{id}                                  +      +        +          +            +    +         +
            GET    /pages/{file}                                 +      +        +          +            +    +         +
            GET    /pages/{folder}/{file}                        +      +        +          +            +    +         +
            GET    /docs                                         +      +        +          +            +    +         +
            GET    /docs/{file}                                  +      +        +          +            +    +         +
            GET    /openapi.json                                 +      +        +          +            +    +         +
            GET    /problems/{code}                              +      +        +          +            +    +         +
            GET    /api/v1/health/live                           +      +        +          +            +    +         +
            GET    /api/v1/health/ready                          +      +        +          +            +    +         +
            POST   /api/v1/session                               +      +        +          +            +    +         +
            GET    /api/v1/session                               401    403      403        +            +    +         +
            PUT    /api/v1/session/password                      401    403      403        +            +    +         +
            GET    /api/v1/people                                401    403      403        403          +    +         +
            POST   /api/v1/people                                401    403      403        403          403  403       +
            GET    /api/v1/people/{id}                           401    403      403        403          +    +         +
            PUT    /api/v1/people/{id}/role                      401    403      403        403          403  403       +
            PUT    /api/v1/people/{id}/password                  401    403      403        403          403  403       +
            POST   /api/v1/people/{id}/disable                   401    403      403        403          403  403       +
            POST   /api/v1/people/{id}/enable                    401    403      403        403          403  403       +
            GET    /api/v1/room-tokens                           401    403      403        403          +    +         +
            POST   /api/v1/room-tokens                           401    403      403        403          403  403       +
            GET    /api/v1/room-tokens/{id}                      401    403      403        403          +    +         +
            POST   /api/v1/room-tokens/{id}/revoke               401    403      403        403          403  403       +
            GET    /api/v1/site                                  401    +        +          +            +    +         +
            GET    /api/v1/rooms                                 401    +        +          +            +    +         +
            GET    /api/v1/rooms/{room}                          401    +        403        +            +    +         +
            GET    /api/v1/rooms/{room}/technique                401    +        403        +            +    +         +
            GET    /api/v1/rooms/{room}/pack                     401    +        403        +            +    +         +
            GET    /api/v1/rooms/{room}/sheet.pdf                401    +        403        +            +    +         +
            GET    /api/v1/rooms/{room}/sheets                   401    403      403        +            +    +         +
            GET    /api/v1/sheets                                401    403      403        +            +    +         +
            GET    /api/v1/sheets/{id}                           +      +        +          +            +    +         +
            POST   /api/v1/sheets/{id}/taken-down                401    403      403        +            +    +         +
            GET    /api/v1/rooms/{room}/equipment                                    401    403      403        +            +    +         +
            PUT    /api/v1/rooms/{room}/equipment                                    401    403      403        403          403  +         403
            POST   /api/v1/rooms/{room}/equipment/effects                            401    403      403        403          +    +         403
            PUT    /api/v1/rooms/{room}/equipment/tube/output                        401    403      403        403          403  +         403
            POST   /api/v1/rooms/{room}/equipment/tube/output/effects                401    403      403        403          +    +         403
            PUT    /api/v1/rooms/{room}/equipment/grids/{grid}                       401    403      403        403          403  +         403
            GET    /api/v1/rooms/{room}/equipment/calibration                        401    403      403        +            +    +         +
            GET    /api/v1/rooms/{room}/equipment/revisions                          401    403      403        +            +    +         +
            GET    /api/v1/rooms/{room}/equipment/revisions/{number}                 401    403      403        +            +    +         +
            GET    /api/v1/rooms/{room}/equipment/revisions/{number}/effects         401    403      403        +            +    +         +
            GET    /api/v1/charts/{room}/versions                401    403      403        +            +    +         +
            GET    /api/v1/charts/{room}/versions/{number}       401    403      403        +            +    +         +
            GET    /api/v1/charts/{room}/versions/{number}/rows  401    403      403        +            +    +         +
            GET    /api/v1/charts/{room}/versions/{number}/physics 401  403      403        +            +    +         +
            GET    /api/v1/charts/{room}/versions/{number}/courses 401  403      403        +            +    +         +
            GET    /api/v1/charts/{room}/versions/{number}/findings 401 403      403        +            +    +         +
            GET    /api/v1/charts/{room}/compare                 401    403      403        +            +    +         +
            POST   /api/v1/charts/{room}/changes                 401    403      403        +            +    +         403
            POST   /api/v1/charts/{room}/reverts                 401    403      403        +            +    +         403
            POST   /api/v1/charts/{room}/plans                   401    403      403        +            +    +         403
            POST   /api/v1/charts/{room}/plans/preview           401    403      403        +            +    +         403
            POST   /api/v1/charts/{room}/transfers               401    403      403        +            +    +         403
            POST   /api/v1/charts/{room}/transfers/preview       401    403      403        +            +    +         403
            GET    /api/v1/changes                               401    403      403        +            +    +         +
            GET    /api/v1/changes/{id}                          401    403      403        +            +    +         +
            PUT    /api/v1/changes/{id}                          401    403      403        +            +    +         403
            GET    /api/v1/changes/{id}/history                  401    403      403        +            +    +         +
            GET    /api/v1/changes/{id}/findings                 401    403      403        +            +    +         +
            GET    /api/v1/changes/{id}/impact                   401    403      403        +            +    +         +
            PUT    /api/v1/changes/{id}/rows/{row}               401    403      403        +            +    +         403
            DELETE /api/v1/changes/{id}/rows/{row}               401    403      403        +            +    +         403
            DELETE /api/v1/changes/{id}/edits/{row}              401    403      403        +            +    +         403
            PUT    /api/v1/changes/{id}/adjustments              401    403      403        +            +    +         403
            DELETE /api/v1/changes/{id}/adjustments              401    403      403        +            +    +         403
            POST   /api/v1/changes/{id}/catch-up                 401    403      403        +            +    +         403
            POST   /api/v1/changes/{id}/submit                   401    403      403        +            +    +         403
            POST   /api/v1/changes/{id}/withdraw                 401    403      403        +            +    +         403
            POST   /api/v1/changes/{id}/return                   401    403      403        403          +    +         403
            POST   /api/v1/changes/{id}/decline                  401    403      403        403          +    403       403
            POST   /api/v1/changes/{id}/concur                   401    403      403        403          403  +         403
            POST   /api/v1/changes/{id}/sign                     401    403      403        403          +    403       403
            POST   /api/v1/changes/{id}/second-review            401    403      403        403          403  +         403
            GET    /api/v1/second-reviews                        401    403      403        +            +    +         +
            GET    /api/v1/audit/events                          401    403      403        403          +    +         403
            GET    /api/v1/audit/events/{seq}                    401    403      403        403          +    +         403
            GET    /api/v1/audit/verification                    401    403      403        403          +    +         403
            POST   /api/v1/audit/reviews                         401    403      403        403          403  +         403
            GET    /api/v1/audit/export                          401    403      403        403          +    +         403
            DELETE /api/v1/session                               401    403      403        +            +    +         +
            """;

    private static final Map<String, List<String>> EXPECTED = read(TABLE);

    private static Map<String, List<String>> read(String table) {
        var rows = new LinkedHashMap<String, List<String>>();
        for (var line : table.lines().filter(text -> !text.startsWith("#")).toList()) {
            var cells = List.of(line.strip().split(" +"));
            rows.put(cells.get(0) + " " + cells.get(1).replace("{row}", ROW), cells.subList(2, cells.size()));
        }
        return rows;
    }

    private record Caller(String name, RequestSpecification plain, RequestSpecification withCsrfToken) {}

    private static List<Caller> callers() {
        var callers = new ArrayList<Caller>();
        callers.add(new Caller("nobody", SERVICE.anybody(), SERVICE.anybody()));
        for (var room : List.of("r1", "r2")) {
            callers.add(new Caller("workstation " + room, SERVICE.workstation(room), SERVICE.workstation(room)));
        }
        for (var role : List.of(Role.RADIOGRAPHER, Role.LEAD, Role.PHYSICIST, Role.ADMINISTRATOR)) {
            var token = SERVICE.signedIn(role).csrfToken();
            callers.add(new Caller(
                    role.slug(), SERVICE.person(role), SERVICE.person(role).header("X-CSRF-Token", token)));
        }
        return callers;
    }

    @Test
    void every_route_has_a_line_and_every_line_a_route() {
        var routes = ApiDocument.ours().operations().stream()
                .filter(operation -> !operation.startsWith("HEAD "))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(new TreeSet<>(EXPECTED.keySet())).isEqualTo(routes);
    }

    @Test
    void everybody_may_do_exactly_what_the_table_says() {
        assertThat(differences(EXPECTED)).isEmpty();
    }

    @Test
    void a_wrong_cell_would_be_noticed() {
        var wrong = new LinkedHashMap<>(EXPECTED);
        wrong.keySet().retainAll(Set.of("GET /api/v1/audit/export", "GET /api/v1/rooms/{room}"));
        wrong.put("GET /api/v1/audit/export", List.of("401", "403", "403", "403", "+", "+", "+"));
        wrong.put("GET /api/v1/rooms/{room}", List.of("401", "+", "+", "+", "+", "+", "+"));
        assertThat(differences(wrong))
                .containsExactlyInAnyOrder(
                        "GET /api/v1/audit/export by administrator: 403, not +",
                        "HEAD /api/v1/audit/export by administrator: 403, not +",
                        "GET /api/v1/rooms/{room} by workstation r2: 403, not +",
                        "HEAD /api/v1/rooms/{room} by workstation r2: 403, not +");
    }

    /** The last lines of the table end sessions; so they are asked last, of callers who need none afterwards. */
    private static List<String> differences(Map<String, List<String>> expected) {
        var differences = new ArrayList<String>();
        var callers = callers();
        expected.forEach((operation, cells) -> {
            for (int i = 0; i < cells.size(); i++) {
                var caller = callers.get(i);
                for (var method : methods(operation)) {
                    var found = outcome(caller.withCsrfToken(), method, operation);
                    if (!found.equals(cells.get(i))) {
                        differences.add(method + operation.substring(operation.indexOf(' ')) + " by " + caller.name()
                                + ": " + found + ", not " + cells.get(i));
                    }
                }
            }
        });
        return differences;
    }

    private static List<String> methods(String operation) {
        return operation.startsWith("GET ")
                ? List.of("GET", "HEAD")
                : List.of(operation.split(" ")[0]);
    }

    private static String outcome(RequestSpecification caller, String method, String operation) {
        int status = status(caller, method, operation);
        return status == 401 || status == 403 || status == 405 ? String.valueOf(status) : "+";
    }

    private static int status(RequestSpecification caller, String method, String operation) {
        return io.restassured.RestAssured.given()
                .spec(caller)
                .request(method, address(operation) + "?nobody=knows")
                .statusCode();
    }

    private static String address(String operation) {
        return operation
                .substring(operation.indexOf(' ') + 1)
                .replace("{room}", "r1")
                .replace("{number}", "1")
                .replace("{id}", "1")
                .replace("{seq}", "1")
                .replace(ROW, "KNEE/ap/adult/table-bucky/10-13")
                .replace("{grid}", "g10")
                .replace("/pages/{folder}/{file}", "/pages/directives/live.js")
                .replace("/pages/{file}", "/pages/base.css")
                .replace("{file}", "docs.js")
                .replace("{code}", "fault");
    }

    @Test
    void any_other_method_is_refused_to_everybody() {
        var addresses = EXPECTED.keySet().stream()
                .map(operation -> operation.substring(operation.indexOf(' ')))
                .distinct()
                .toList();
        for (var address : addresses) {
            for (var method : METHODS) {
                boolean known = EXPECTED.containsKey((method.equals("HEAD") ? "GET" : method) + address);
                for (var caller : known ? List.<Caller>of() : callers()) {
                    assertThat(outcome(caller.withCsrfToken(), method, method + address))
                            .as(method + address + " by " + caller.name())
                            .isEqualTo("405");
                }
            }
        }
    }

    @Test
    void nobody_who_is_signed_in_changes_anything_without_the_csrf_token() {
        EXPECTED.forEach((operation, cells) -> {
            var method = operation.split(" ")[0];
            for (int i = 3; i < cells.size() && !cells.get(0).equals("+") && WRITES.contains(method); i++) {
                assertThat(status(callers().get(i).plain(), method, operation))
                        .as(operation + " by " + callers().get(i).name())
                        .isEqualTo(403);
            }
        });
    }
}
