package wallchart;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Program.Ended;

/** The built jar at work for a real site: from an empty folder to answers at the workstation, through stops and crashes. */
class SiteIT {

    private static final String KNEE =
            "/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm=12.4&sidCm=112";
    private static final int TERMINATED = 143;

    @TempDir
    private static Path founded;

    private static SiteFolder foundedSite;
    private static String token;

    @TempDir
    private Path folder;

    private SiteFolder site;

    /** The first four steps of the README, each in its own process. */
    @BeforeAll
    static void found_a_site() throws IOException {
        foundedSite = SiteFolder.prepare(founded);
        assertThat(done(foundedSite.addLead())).contains("added alex as lead");
        assertThat(done(foundedSite.run("", "check", "department"))).contains("r1/chart-1.csv", "0 blocking");
        assertThat(done(foundedSite.load(SiteFolder.PASSWORD))).contains("room r1: version 1 published");
        var issued = done(foundedSite.run("", "token", "issue", "r1", "--label", "Room 1 console"));
        token = issued.lines().toList().get(1);
    }

    private static String done(Ended ended) {
        assertThat(ended.exitCode()).as(ended.toString()).isZero();
        assertThat(ended.err()).isEmpty();
        return ended.out();
    }

    @BeforeEach
    void copy_the_site() throws IOException {
        site = foundedSite.copyTo(folder);
    }

    @Test
    void the_workstation_gets_its_technique_and_the_same_one_after_a_stop() throws IOException {
        String digest;
        try (var service = site.serve()) {
            var answer = ask(service, token);
            assertThat(answer.statusCode()).isEqualTo(200);
            assertThat(answer.<Integer>path("chart.version")).isEqualTo(1);
            assertThat(answer.<String>path("chart.signedBy")).isEqualTo("Alex Example");
            assertThat(answer.jsonPath().getDouble("set.mAs")).isPositive();
            digest = answer.path("chart.digest");

            var ended = service.program().terminate();

            assertThat(ended.exitCode()).isIn(0, TERMINATED);
            assertThat(ended.err()).isEmpty();
        }
        try (var service = site.serve()) {
            assertThat(ask(service, token).<String>path("chart.digest")).isEqualTo(digest);
        }
    }

    @Test
    void what_everybody_knows_from_the_demo_opens_no_site() throws IOException {
        try (var service = site.serve()) {
            assertThat(ask(service, "demo-r1").statusCode()).isEqualTo(401);
            assertThat(signIn(service, "lead", "demo-lead")).isEqualTo(401);
            assertThat(signIn(service, SiteFolder.LEAD, "demo-alex")).isEqualTo(401);
            assertThat(signIn(service, SiteFolder.LEAD, SiteFolder.PASSWORD)).isEqualTo(200);
        }
    }

    @Test
    void nothing_acknowledged_is_lost_when_the_process_is_killed() throws IOException {
        String before;
        try (var service = site.serve()) {
            before = ask(service, token).asString();
            service.program().kill();
        }
        try (var service = site.serve()) {
            assertThat(ask(service, token).asString()).isEqualTo(before);
        }
    }

    @Test
    void a_load_killed_after_it_said_published_has_published() throws IOException {
        site.writeVersions(2);
        try (var loading = site.startLoading()) {
            loading.await("version 2 published");
            loading.kill();
        }
        try (var service = site.serve()) {
            assertThat(ask(service, token).<Integer>path("chart.version")).isEqualTo(2);
        }
    }

    @Test
    void loading_the_same_files_again_changes_nothing() throws IOException {
        site.writeVersions(2);
        assertThat(done(site.load(SiteFolder.PASSWORD)))
                .contains("r1/chart-1.csv says what version 1 says, left out", "version 2 published")
                .doesNotContain("version 3");

        assertThat(done(site.load(SiteFolder.PASSWORD)))
                .contains("r1/chart-2.csv says what version 2 says, left out")
                .doesNotContain("published");
    }

    @Test
    void a_wrong_password_loads_nothing(@TempDir Path empty) throws IOException {
        var unloaded = SiteFolder.prepare(empty);
        done(unloaded.addLead());

        refused(unloaded.load("not-the-password-of-alex"), "the password of \"alex\" was not accepted");

        refused(
                unloaded.run("", "token", "issue", "r1", "--label", "Room 1 console"),
                "there is no room \"r1\": load its equipment first");
    }

    @Test
    void two_services_never_share_a_database_file() throws IOException {
        try (var service = site.serve()) {
            refused(site.run("", "serve"), "is in use by another process: stop the other server");
            refused(site.run("", "person", "list"), "is in use by another process: stop the other server");
            assertThat(ask(service, token).statusCode()).isEqualTo(200);
        }
    }

    @Test
    void two_services_never_share_a_port() throws IOException {
        try (var service = site.serve()) {
            int port = URI.create(service.address()).getPort();
            var settings = site.settings("server: {port: " + port + "}\ndatabase: {url: \"jdbc:h2:file:./other\"}\n");

            refused(
                    Program.run(folder, "", Program.jar("serve", "--config", settings)),
                    "cannot listen on 127.0.0.1 port " + port);

            assertThat(folder.resolve("other.mv.db")).doesNotExist();
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "server: {prot: 7070}      | server.prot is no known key",
                "server: {port: 70707}     | server: port is 70707: 0 to 65535",
                "session: {idleMinutes: 1} | session: idleMinutes is 1: 2 to 1440",
            })
    void settings_that_cannot_be_meant_stop_the_start(String text, String why) throws IOException {
        var settings = site.settings(text);

        refused(Program.run(folder, "", Program.jar("serve", "--config", settings)), why);
    }

    private static void refused(Ended ended, String why) {
        assertThat(ended.exitCode()).as(ended.toString()).isEqualTo(1);
        assertThat(ended.err().lines())
                .singleElement()
                .asString()
                .startsWith("wallchart: ")
                .contains(why);
        assertThat(ended.out()).isEmpty();
    }

    private static Response ask(SiteFolder.Service service, String secret) {
        return given().urlEncodingEnabled(false)
                .header("Authorization", "Bearer " + secret)
                .get(service.address() + KNEE);
    }

    private static int signIn(SiteFolder.Service service, String name, String password) {
        return given().contentType("application/json")
                .body(Map.of("name", name, "password", password))
                .post(service.address() + "/api/v1/session")
                .statusCode();
    }
}
