package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;

/** Many people compute at once; the room that asks for a technique does not wait for them. */
class CostlyTurnsWebTest {

    private static final String KNEE =
            "/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm=11.5";
    private static final int MANY = 40;

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    @Test
    void techniques_are_answered_while_forty_ask_for_beam_physics_who_are_served_or_asked_to_come_again() {
        var lead = SERVICE.signedIn(Role.LEAD);
        assertThat(lead).isNotNull();
        var threads = Executors.newFixedThreadPool(MANY);
        List<CompletableFuture<Response>> costly = IntStream.range(0, MANY)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> SERVICE.person(Role.LEAD).get("/api/v1/charts/r1/versions/2/physics"), threads))
                .toList();
        for (int i = 0; i < MANY; i++) {
            long before = System.nanoTime();
            SERVICE.workstation("r1").get(KNEE).then().statusCode(200);
            assertThat(Duration.ofNanos(System.nanoTime() - before)).isLessThan(Duration.ofSeconds(3));
        }
        for (var asked : costly) {
            var answer = asked.join();
            assertThat(answer.statusCode()).isIn(200, 503);
            if (answer.statusCode() == 503) {
                assertThat(answer.<String>path("code")).isEqualTo("busy");
                assertThat(answer.header("Retry-After")).isEqualTo("3");
            }
        }
        threads.shutdown();
    }
}
