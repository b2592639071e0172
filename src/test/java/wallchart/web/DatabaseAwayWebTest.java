package wallchart.web;

import static org.hamcrest.Matchers.equalTo;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The database goes away while the service runs: rooms go on, nothing else pretends to. */
class DatabaseAwayWebTest {

    private static final String QUESTION =
            "/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&support=table-bucky&thicknessCm=21";
    private static final long LONGER_THAN_REMEMBERED_MS = 1_100;

    private final RunningService service = new RunningService();

    @BeforeEach
    void a_room_that_has_asked_before() throws InterruptedException {
        service.start();
        service.workstation("r1").get(QUESTION).then().statusCode(200);
        service.database().close();
        Thread.sleep(LONGER_THAN_REMEMBERED_MS);
    }

    @AfterEach
    void stop() {
        service.stop();
    }

    @Test
    void the_room_gets_its_technique_from_memory() {
        service.workstation("r1").get(QUESTION).then().statusCode(200).body("chart.version", equalTo(2));
        service.workstation("r1").get("/api/v1/rooms/r1").then().statusCode(200);
    }

    @Test
    void what_needs_the_database_says_when_to_come_back() {
        service.anybody()
                .get("/api/v1/health/ready")
                .then()
                .statusCode(503)
                .header("Retry-After", "5")
                .body("code", equalTo("unavailable"));
        service.anybody()
                .header("Authorization", "Bearer never-seen-before")
                .get(QUESTION)
                .then()
                .statusCode(503);
    }
}
