package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;

import io.restassured.config.DecoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.response.Response;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.people.Role;

/** A room's pack over HTTP: what is in it, how long it is served, and what makes a new one. */
class PackWebTest {

    private static final String PACK = "/api/v1/rooms/r1/pack";
    private static final String SPINE = "LSPINE/ap/adult/table-bucky/18-24";

    private final RunningService service = new RunningService();

    @BeforeEach
    void start() {
        service.start();
    }

    @AfterEach
    void stop() {
        service.stop();
    }

    private Response pack() {
        return service.workstation("r1").get(PACK);
    }

    private void later(Duration time) {
        service.clock().set(service.clock().instant().plus(time).toString());
    }

    @Test
    void it_is_what_the_document_promises() {
        var opened = OpenedPack.of(pack());
        assertThat(ApiDocument.ours().violations("/components/schemas/Pack", opened.text()))
                .isEmpty();
        assertThat(ApiDocument.ours()
                        .violations("/components/schemas/Pack", opened.text().replace("\"room\":", "\"rom\":")))
                .as("the document notices another member")
                .isNotEmpty();
        assertThat(opened.header().path("typ").asText()).isEqualTo("wallchart-pack+jws");
        assertThat(opened.issuedAt()).isEqualTo(RunningService.NOW);
        assertThat(opened.content().path("next").isNull()).isTrue();
    }

    @Test
    void bands_are_half_open_and_no_step_is_left_out() {
        var rows = OpenedPack.of(pack()).content().path("answers");
        var first = rows.path(SPINE).path("thicknessCm");
        assertThat(first.path(0).asDouble()).isEqualTo(18);
        assertThat(first.path(first.size() - 1).asDouble()).isEqualTo(23.5);
        assertThat(first).hasSize(12);
        assertThat(rows.path("LSPINE/ap/adult/table-bucky/24-30")
                        .path("thicknessCm")
                        .path(0)
                        .asDouble())
                .isEqualTo(24);
    }

    @Test
    void an_answer_put_together_again_is_the_live_one() {
        var opened = OpenedPack.of(pack());
        var kept = opened.content().path("answers").path(SPINE);
        var live = service.workstation("r1")
                .get("/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&thicknessCm=20.5&adjust=plaster");
        var technique =
                opened.answer(kept.path("adjusted").path("plaster").path(5)).path("technique");
        assertThat(technique.path("set").toString())
                .isEqualTo(new com.fasterxml.jackson.databind.ObjectMapper()
                        .valueToTree(live.jsonPath().getMap("set"))
                        .toString());
        assertThat(StreamSupport.stream(technique.path("steps").spliterator(), false)
                        .map(step -> step.path("text").asText()))
                .isEqualTo(live.<java.util.List<String>>path("steps.text"));
    }

    @Test
    void it_is_served_from_memory_for_five_minutes_and_then_given_out_anew_with_the_same_content() {
        var first = pack();
        later(Duration.ofSeconds(299));
        assertThat(pack().header("ETag")).isEqualTo(first.header("ETag"));
        service.workstation("r1")
                .header("If-None-Match", first.header("ETag"))
                .get(PACK)
                .then()
                .statusCode(304);
        later(Duration.ofSeconds(1));
        var again = pack();
        assertThat(again.header("ETag")).isNotEqualTo(first.header("ETag"));
        assertThat(OpenedPack.of(again).issuedAt())
                .isEqualTo(Instant.parse(RunningService.NOW).plusSeconds(300).toString());
        assertThat(again.<String>path("payload")).isEqualTo(first.path("payload"));
    }

    @Test
    void a_clock_that_is_set_back_serves_nothing_of_the_future() {
        pack();
        later(Duration.ofSeconds(-30));
        assertThat(OpenedPack.of(pack()).issuedAt())
                .isEqualTo(Instant.parse(RunningService.NOW).minusSeconds(30).toString());
    }

    @Test
    void a_new_version_is_in_it_at_once_and_one_for_later_is_announced() {
        assertThat(OpenedPack.of(pack()).content().path("chart").path("version").asInt())
                .isEqualTo(2);
        var calls = new ChangeCalls(service);
        var tomorrow = service.clock().instant().plus(Duration.ofDays(1)).toString();
        var change = calls.submitted("ordinary", ChangeCalls.KNEE, 11);
        var signature = calls.signature(change);
        signature.put("inForceFrom", tomorrow);
        calls.step(Role.LEAD, change, "sign", signature).then().statusCode(200);
        var announced = OpenedPack.of(pack()).content();
        assertThat(announced.path("chart").path("version").asInt()).isEqualTo(2);
        assertThat(announced.path("next").path("version").asInt()).isEqualTo(3);
        assertThat(announced.path("next").path("inForceFrom").asText()).isEqualTo(tomorrow);
        later(Duration.ofDays(1));
        var now = OpenedPack.of(pack()).content();
        assertThat(now.path("chart").path("version").asInt()).isEqualTo(3);
        assertThat(now.path("next").isNull()).isTrue();
    }

    @Test
    void a_version_for_later_that_a_newer_one_overtook_is_not_announced() {
        var calls = new ChangeCalls(service);
        var change = calls.submitted("ordinary", ChangeCalls.KNEE, 11);
        var signature = calls.signature(change);
        signature.put(
                "inForceFrom",
                service.clock().instant().plus(Duration.ofDays(1)).toString());
        calls.step(Role.LEAD, change, "sign", signature).then().statusCode(200);
        calls.sign(calls.submitted("ordinary", ChangeCalls.KNEE, 10)).then().statusCode(200);
        var content = OpenedPack.of(pack()).content();
        assertThat(content.path("chart").path("version").asInt()).isEqualTo(4);
        assertThat(content.path("next").isNull()).isTrue();
    }

    @Test
    void an_overdue_review_is_said_from_the_day_it_is_overdue() {
        var due = Department.REVIEW_DUE + "T12:00:00Z";
        service.clock().set(due);
        assertThat(OpenedPack.of(pack()).text()).doesNotContain("was due for review");
        later(Duration.ofDays(1));
        assertThat(OpenedPack.of(pack()).text()).contains("was due for review");
    }

    @Test
    void whoever_takes_no_gzip_gets_the_same() {
        var packed = pack();
        var plain = service.workstation("r1")
                .config(RestAssuredConfig.config()
                        .decoderConfig(DecoderConfig.decoderConfig().noContentDecoders()))
                .get(PACK);
        assertThat(packed.header("Content-Encoding")).isEqualTo("gzip");
        assertThat(plain.header("Content-Encoding")).isNull();
        assertThat(plain.asString()).isEqualTo(packed.asString());
        assertThat(plain.header("ETag")).isNotEqualTo(packed.header("ETag"));
    }

    @Test
    void a_room_without_a_chart_and_a_room_that_nobody_knows_have_none() {
        service.workstation("r2")
                .get("/api/v1/rooms/r2/pack")
                .then()
                .statusCode(409)
                .body("code", equalTo("no-chart-in-force"));
        service.person(Role.LEAD).get("/api/v1/rooms/r9/pack").then().statusCode(404);
    }
}
