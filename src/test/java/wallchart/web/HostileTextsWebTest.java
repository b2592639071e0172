package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static wallchart.web.EquipmentCalls.address;
import static wallchart.web.EquipmentCalls.output;
import static wallchart.web.EquipmentCalls.with;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Role;

/** Texts that would break lists, sheets and digests, and answers to mistakes that would be larger than what was sent. */
class HostileTextsWebTest {

    private static final int LARGEST_ANSWER = 20_000;

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final EquipmentCalls calls = new EquipmentCalls(SERVICE);

    /** The name is written as JSON escapes it. */
    private String named(String name) throws JsonProcessingException {
        return new JsonMapper().writeValueAsString(calls.renamed("r1", "NAME")).replace("NAME", name);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Room\\u0000 1",
                "Room\\u001b[2J",
                "Room\\n1",
                "Room \\u202e1",
                "Room \\ud800",
                "Room\\u2028 1",
                "Room \\ue000"
            })
    void no_room_takes_a_name_that_cannot_be_printed(String name) throws JsonProcessingException {
        calls.put("r1", "", named(name))
                .then()
                .statusCode(400)
                .body("code", equalTo("invalid-body"))
                .body("errors.pointer", hasItem("/document/name"));
    }

    @Test
    void no_room_takes_a_name_of_sixty_thousand_letters_and_the_answer_does_not_repeat_it()
            throws JsonProcessingException {
        var answer = calls.put("r1", "", named("x".repeat(60_000)));
        answer.then()
                .statusCode(400)
                .body("errors.pointer", hasItem("/document/name"))
                .body("errors.detail", hasItem(containsString("at most 120")));
        assertThat(answer.asString().length()).isLessThan(LARGEST_ANSWER);
    }

    @Test
    void a_long_name_in_the_place_of_an_id_is_not_repeated_either() throws JsonProcessingException {
        var body = new JsonMapper()
                .writeValueAsString(calls.renamed("r1", "Room 1"))
                .replace("\"dr1\"", "\"" + "x".repeat(10_000) + "\"");
        var answer = calls.put("r1", "", body);
        answer.then().statusCode(400);
        assertThat(answer.asString().length()).isLessThan(LARGEST_ANSWER);
    }

    @Test
    void of_two_thousand_mistakes_fifty_are_told_and_the_rest_is_counted() {
        var points = Collections.nCopies(1500, Map.of("kV", -1, "output", -1));
        var answer = calls.putOutput("r1", with(output("2026-01-20", 1), "microGyPerMAsAtOneMetre", points));
        answer.then()
                .statusCode(400)
                .body("errors", hasSize(50))
                .body("errorsLeftOut", equalTo(1500 - 50))
                .body("detail", containsString("; and " + (1500 - 5) + " more"));
        assertThat(answer.asString().length()).isLessThan(LARGEST_ANSWER);
    }

    @Test
    void a_change_takes_no_reason_that_reads_otherwise_than_it_is_written() {
        var changes = new ChangeCalls(SERVICE);
        for (var reason : List.of("Images too noisy \u202etimbus", "Images too noisy " + "\u0331".repeat(1000))) {
            changes.by(Role.RADIOGRAPHER)
                    .body(Map.of("title", "Knee", "reason", reason, "baseVersion", changes.newest()))
                    .post("/api/v1/charts/r1/changes")
                    .then()
                    .statusCode(400)
                    .body("errors.pointer", hasItem("/reason"));
        }
    }

    @Test
    void a_body_that_is_no_json_is_told_so_in_words_of_json() {
        calls.writing()
                .header("If-Match", calls.inForce("r1").header("ETag"))
                .body("{\"document\" {}}")
                .put(address("r1"))
                .then()
                .statusCode(400)
                .body("detail", allOf(containsString("commas, brackets"), not(containsString("indentation"))));
        calls.writing()
                .header("If-Match", calls.inForce("r1").header("ETag"))
                .body("{\"document\": [1], \"reason\": \"measured again\"}")
                .put(address("r1"))
                .then()
                .statusCode(400)
                .body("detail", not(containsString("example")));
    }

    @Test
    void a_star_is_no_sight_of_anything() {
        calls.writing()
                .header("If-Match", "*")
                .body(output("2026-01-20", 1))
                .put(address("r1") + "/tube/output")
                .then()
                .statusCode(428)
                .body("detail", startsWith("If-Match * is not accepted"));
    }
}
