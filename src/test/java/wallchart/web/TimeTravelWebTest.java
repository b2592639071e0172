package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.equalTo;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import io.restassured.path.json.JsonPath;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.chart.Draft;
import wallchart.chart.Publication;
import wallchart.people.Role;
import wallchart.store.Actor;

/** What a room answered at any instant of the past is answered again, with the version of that day and the signature behind it. */
class TimeTravelWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static final String ROOM = "r7";
    private static final int QUESTIONS = 400;

    /** What this test itself noted when it published: from that instant on the room answers so. */
    private record Noted(
            Instant from, int version, String digest, String signer, Instant signedAt, String meaning, String mAs) {}

    /** And how the room was equipped from that instant on. */
    private record Equipped(Instant from, int revision) {}

    private static final List<Noted> NOTED = new ArrayList<>();
    private static final List<Equipped> EQUIPPED = new ArrayList<>();
    private static Instant last;

    @BeforeAll
    static void a_year_of_versions_and_equipment() {
        var people = SERVICE.services().people();
        var una = Department.person(people, "una", Role.LEAD);
        var ole = Department.person(people, "ole", Role.LEAD);
        equip("2026-03-03T08:00:00Z", "Room 7");
        publish("2026-03-10T09:30:00.000001Z", una, "20", Optional.empty());
        publish("2026-04-02T16:45:10.5Z", ole, "25", Optional.empty());
        equip("2026-05-01T06:00:00Z", "Room 7, new tube");
        publish("2026-05-20T07:00:00Z", una, "32", Optional.of("2026-06-01T00:00:00Z")); // scheduled
        publish("2026-06-01T00:00:00Z", ole, "40", Optional.empty()); // takes its place in its first instant
        equip("2026-07-15T12:00:00Z", "Room 7, new receptor");
        publish("2026-08-01T08:00:00Z", una, "50", Optional.of("2026-09-01T08:00:00Z"));
        publish("2026-08-15T10:00:00Z", ole, "63", Optional.empty()); // urgent: the scheduled one never comes
        publish("2026-09-20T08:00:00Z", una, "50", Optional.of("2026-10-01T00:00:00Z")); // and this one does
        publish("2026-11-11T11:11:11.111111Z", ole, "20", Optional.empty()); // says again what the first said
        last = Instant.parse("2027-01-01T00:00:00Z");
        SERVICE.clock().set(last.toString());
    }

    private static void equip(String at, String name) {
        SERVICE.clock().set(at);
        SERVICE.services()
                .rooms()
                .install(
                        Actor.system("test"),
                        aRoom().withId(ROOM).withName(name).document());
        EQUIPPED.add(new Equipped(Instant.parse(at), EQUIPPED.size() + 1));
    }

    private static void publish(String at, Actor by, String mAs, Optional<String> inForceFrom) {
        SERVICE.clock().set(at);
        int base = NOTED.size();
        var draft = new Draft(
                ROOM,
                base,
                aChart().with(aRow().withMAs(mAs)).content(),
                "Chart " + (base + 1),
                "made for the tests of this service",
                "approved as number " + (base + 1),
                inForceFrom.map(Instant::parse),
                LocalDate.parse("2028-01-01"));
        var published = (Publication.Published) SERVICE.services().charts().publish(by, draft);
        NOTED.add(new Noted(
                Instant.parse(inForceFrom.orElse(at)),
                base + 1,
                published.version().head().digest(),
                "Pat " + by.name(),
                Instant.parse(at),
                "approved as number " + (base + 1),
                mAs));
    }

    private static Optional<Noted> expected(Instant at) {
        return NOTED.stream().filter(noted -> !noted.from().isAfter(at)).reduce((before, after) -> after);
    }

    private static JsonPath answer(Instant at) {
        return SERVICE.workstation(ROOM)
                .get("/api/v1/rooms/" + ROOM + "/technique?bodyPart=LSPINE&projection=ap&thicknessCm=21&at=" + at)
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private static void assertTold(Instant at) {
        var expected = expected(at).orElseThrow();
        var chart = answer(at);
        assertThat(chart.getInt("chart.version")).as("at " + at).isEqualTo(expected.version());
        assertThat(chart.getString("chart.digest")).isEqualTo(expected.digest());
        assertThat(chart.getString("chart.inForceFrom"))
                .isEqualTo(expected.from().toString());
        assertThat(chart.getString("chart.signedBy")).isEqualTo(expected.signer());
        assertThat(chart.getString("chart.signedAt"))
                .isEqualTo(expected.signedAt().toString());
        assertThat(chart.getString("chart.meaning")).isEqualTo(expected.meaning());
        assertThat(chart.getString("row.mAs")).isEqualTo(expected.mAs());
        var equipped = EQUIPPED.stream().filter(one -> !one.from().isAfter(at)).count();
        assertThat(chart.getInt("equipment.revision")).isEqualTo((int) equipped);
    }

    @Test
    void every_instant_of_the_past_is_answered_by_the_version_of_that_instant() {
        var first = NOTED.get(0).from();
        var random = new Random(20_261_125);
        long seconds = Duration.between(first, last).toSeconds();
        for (int i = 0; i < QUESTIONS; i++) {
            assertTold(first.plusSeconds(Math.floorMod(random.nextLong(), seconds))
                    .plusNanos(1_000L * random.nextInt(1_000_000)));
        }
    }

    @Test
    void a_version_answers_from_its_first_microsecond_and_not_one_earlier() {
        for (var noted : NOTED.subList(1, NOTED.size())) {
            assertTold(noted.from());
            assertTold(noted.from().minusNanos(1_000));
        }
        EQUIPPED.subList(1, EQUIPPED.size())
                .forEach(equipped -> assertTold(equipped.from().minusNanos(1_000)));
    }

    /** The third was to come into force in the very instant in which the fourth did, the fifth after the urgent sixth. */
    @Test
    void a_scheduled_version_that_was_overtaken_never_answers() {
        for (int overtaken : List.of(3, 5)) {
            var from = NOTED.get(overtaken - 1).from();
            assertThat(expected(from).orElseThrow().version()).isEqualTo(overtaken + 1);
            assertTold(from);
            assertTold(from.plusSeconds(1));
        }
    }

    @Test
    void before_the_first_version_there_was_no_answer() {
        var first = NOTED.get(0).from();
        for (var at :
                List.of(first.minusNanos(1_000), first.minusSeconds(86_400), Instant.parse("1999-01-01T00:00:00Z"))) {
            SERVICE.workstation(ROOM)
                    .get("/api/v1/rooms/" + ROOM + "/technique?bodyPart=LSPINE&projection=ap&thicknessCm=21&at=" + at)
                    .then()
                    .statusCode(409)
                    .body("code", equalTo("no-chart-in-force"));
        }
    }

    /** The note of the test and the history of the service tell the same. */
    @Test
    void the_history_names_the_same_digests_and_signers() {
        var history = SERVICE.person(Role.PHYSICIST)
                .get("/api/v1/charts/" + ROOM + "/versions")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        for (var noted : NOTED) {
            var version = "versions.find { it.version == " + noted.version() + " }.";
            assertThat(history.getString(version + "digest")).isEqualTo(noted.digest());
            assertThat(history.getString(version + "signature.printedName")).isEqualTo(noted.signer());
            assertThat(history.getString(version + "signature.meaning")).isEqualTo(noted.meaning());
        }
    }
}
