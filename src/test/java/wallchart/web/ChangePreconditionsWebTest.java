package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;

/** Whoever takes a step on a change says which revision of it they saw. */
class ChangePreconditionsWebTest {

    private static final String CHANGE = "/api/v1/changes/{id}";
    private static final String ROW = "/{bodyPart}/{projection}/{patientGroup}/{support}/{band}";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    /** One way to write to a change, with a body that is right. */
    record Write(String operation, Role role, Map<String, ?> body) {
        Response send(ChangeCalls calls, Response change, String ifMatch) {
            var request = calls.by(role).body(body);
            if (ifMatch != null) {
                request.header("If-Match", ifMatch);
            }
            var method = operation.substring(0, operation.indexOf(' '));
            return request.request(
                    method,
                    operation
                            .substring(operation.indexOf('/'))
                            .replace("{id}", change.path("id").toString())
                            .replace(ROW, "/" + ChangeCalls.KNEE));
        }
    }

    static Stream<Write> writes() {
        var calls = new ChangeCalls(SERVICE);
        var reason = Map.of("reason", "Not with this detector");
        var nothing = Map.<String, Object>of();
        var words = Map.of("title", "Knee again", "reason", "Knees are still too noisy");
        return Stream.of(
                new Write("PUT " + CHANGE, Role.RADIOGRAPHER, words),
                new Write("PUT " + CHANGE + "/rows" + ROW, Role.RADIOGRAPHER, calls.fields(ChangeCalls.KNEE)),
                new Write("DELETE " + CHANGE + "/rows" + ROW, Role.RADIOGRAPHER, nothing),
                new Write("DELETE " + CHANGE + "/edits" + ROW, Role.RADIOGRAPHER, nothing),
                new Write("PUT " + CHANGE + "/adjustments", Role.RADIOGRAPHER, Map.of("adjustments", List.of())),
                new Write("DELETE " + CHANGE + "/adjustments", Role.RADIOGRAPHER, nothing),
                new Write("POST " + CHANGE + "/catch-up", Role.RADIOGRAPHER, nothing),
                new Write("POST " + CHANGE + "/submit", Role.RADIOGRAPHER, nothing),
                new Write("POST " + CHANGE + "/withdraw", Role.RADIOGRAPHER, nothing),
                new Write("POST " + CHANGE + "/return", Role.LEAD, reason),
                new Write("POST " + CHANGE + "/decline", Role.LEAD, reason),
                new Write("POST " + CHANGE + "/concur", Role.PHYSICIST, Map.of("password", "not looked at")),
                new Write(
                        "POST " + CHANGE + "/sign",
                        Role.LEAD,
                        Map.of("password", "not looked at", "meaning", "approved", "impactDigest", digest())),
                new Write(
                        "POST " + CHANGE + "/second-review",
                        Role.PHYSICIST,
                        Map.of("password", "not looked at", "findings", "On target in all rooms")));
    }

    private static String digest() {
        return "sha256:" + "0".repeat(64);
    }

    @Test
    void every_write_below_a_change_is_tried_here() {
        var tried = writes().map(Write::operation).toList();
        var writes = new TreeSet<>(ApiDocument.ours().operations());
        writes.removeIf(operation -> operation.startsWith("GET ") || !operation.contains(" " + CHANGE));
        assertThat(new TreeSet<>(tried)).isEqualTo(writes);
    }

    @ParameterizedTest
    @MethodSource("writes")
    void without_a_tag_nothing_is_done(Write write) {
        var opened = calls.open(Role.RADIOGRAPHER);
        for (var header : new String[] {null, "*", " * "}) {
            write.send(calls, opened, header).then().statusCode(428).body("code", equalTo("precondition-required"));
        }
        assertUntouched(opened);
    }

    @ParameterizedTest
    @MethodSource("writes")
    void with_the_tag_of_another_revision_nothing_is_done_and_the_right_tag_is_told(Write write) {
        var opened = calls.open(Role.RADIOGRAPHER);
        var old = opened.header("ETag").replaceAll("-1\"$", "-7\"");
        write.send(calls, opened, old)
                .then()
                .statusCode(412)
                .header("ETag", equalTo(opened.header("ETag")))
                .body("code", equalTo("precondition-failed"));
        assertUntouched(opened);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"change-%s-1", "W/\"change-%s-1\"", "\"change-%s-01\"", "\"change-%s\"", "\"1\"", "\"\"", ","})
    void a_tag_in_another_form_is_no_tag(String form) {
        var opened = calls.open(Role.RADIOGRAPHER);
        var tag = form.replace("%s", opened.path("id").toString());
        calls.by(Role.RADIOGRAPHER)
                .header("If-Match", tag)
                .post(ChangeCalls.address(opened) + "/withdraw")
                .then()
                .statusCode(412);
        assertUntouched(opened);
    }

    @Test
    void the_tag_may_be_one_of_several() {
        var opened = calls.open(Role.RADIOGRAPHER);
        calls.by(Role.RADIOGRAPHER)
                .header("If-Match", "\"other\", " + opened.header("ETag"))
                .post(ChangeCalls.address(opened) + "/withdraw")
                .then()
                .statusCode(200);
    }

    @Test
    void of_two_edits_with_one_tag_one_wins() {
        for (int round = 0; round < 10; round++) {
            var opened = calls.open(Role.RADIOGRAPHER);
            var one = CompletableFuture.supplyAsync(() -> calls.edit(Role.RADIOGRAPHER, opened, ChangeCalls.KNEE, "8"));
            var other =
                    CompletableFuture.supplyAsync(() -> calls.edit(Role.RADIOGRAPHER, opened, ChangeCalls.SPINE, "16"));
            var answers = List.of(one.join(), other.join());
            assertThat(answers).extracting(Response::statusCode).containsExactlyInAnyOrder(200, 412);
            assertThat(answers)
                    .extracting(answer -> answer.header("ETag"))
                    .containsOnly("\"change-" + opened.path("id") + "-2\"");
        }
    }

    private static void assertUntouched(Response opened) {
        var now = SERVICE.person(Role.LEAD).get(ChangeCalls.address(opened));
        assertThat(now.asString()).isEqualTo(opened.asString());
        assertThat(now.header("ETag")).isEqualTo(opened.header("ETag"));
    }
}
