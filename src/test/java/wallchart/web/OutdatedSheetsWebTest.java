package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.audit.Verification;
import wallchart.chart.ChartFixtures;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.chart.Draft;
import wallchart.chart.Publication;
import wallchart.people.Role;
import wallchart.print.PaperSize;
import wallchart.print.ParsedSheet;
import wallchart.print.PrintedSheet;
import wallchart.print.Selection;
import wallchart.print.SheetNumber;
import wallchart.print.SheetRegister;
import wallchart.print.WallSheets;
import wallchart.store.Actor;

/** What becomes of a sheet on the wall when chart, equipment or time go on. Each test has a department of its own. */
class OutdatedSheetsWebTest {

    private static final String SHEET = "/api/v1/rooms/r1/sheet.pdf";
    private static final String REGISTER = "/api/v1/sheets";

    private final RunningService service = new RunningService();
    private final ChangeCalls calls = new ChangeCalls(service);

    @BeforeEach
    void open() {
        service.start();
    }

    @AfterEach
    void close() {
        service.stop();
    }

    private Response print(RequestSpecification by, String query) {
        var answer = by.get(SHEET + query);
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer;
    }

    private String printed(RequestSpecification by) {
        return print(by, "").header("Content-Disposition").replaceAll(".*-([A-Z0-9]{12})\\.pdf\"", "$1");
    }

    private Response register() {
        return service.person(Role.LEAD).get(REGISTER);
    }

    private Response standing(String sheet) {
        return service.anybody().get(REGISTER + "/" + sheet);
    }

    private Response takeDown(Role role, Response seen) {
        return calls.by(role, seen).post(REGISTER + "/" + seen.path("sheet") + "/taken-down");
    }

    private void signAnotherVersion() {
        var change = calls.submitted("ordinary", ChangeCalls.KNEE, "12.5");
        assertThat(calls.step(Role.LEAD, change, "sign", calls.signature(change))
                        .statusCode())
                .isEqualTo(200);
    }

    @Test
    void a_new_version_supersedes_the_sheets_of_the_one_before_until_they_are_taken_down() {
        var old = printed(service.person(Role.LEAD));
        service.clock().advance(Duration.ofMinutes(1));
        signAnotherVersion();
        var fresh = printed(service.person(Role.LEAD));
        standing(old)
                .then()
                .body("state", equalTo("superseded"))
                .body("since", notNullValue())
                .body("versionInForce", equalTo(3))
                .body("nextStep", containsString("Take it down"));
        standing(fresh).then().body("state", equalTo("current")).body("version", equalTo(3));
        register().then().body("toTakeDown", hasSize(1)).body("sheets", hasSize(2));
        assertThat(takeDown(Role.RADIOGRAPHER, standing(old)).statusCode()).isEqualTo(200);
        register().then().body("toTakeDown", empty()).body("sheets[1].takenDownBy", equalTo("radiographer"));
        standing(old).then().body("takenDownAt", notNullValue()).body("nextStep", containsString("take it down now"));
        assertThat(service.services().audit().verify()).isInstanceOf(Verification.Sound.class);
    }

    /** As many as nobody takes down in years: what does not fit into the list is counted. */
    @Test
    void of_more_sheets_than_a_list_shows_the_rest_is_told() {
        signAnotherVersion();
        var lead = Actor.system("test");
        IntStream.range(0, WallSheets.MOST_LINES + 7).forEach(i -> registerOldSheet(lead, i));
        for (var path : List.of(REGISTER, REGISTER + "?room=r1", "/api/v1/rooms/r1/sheets")) {
            service.person(Role.LEAD)
                    .get(path)
                    .then()
                    .body("toTakeDown", hasSize(WallSheets.MOST_LINES))
                    .body("moreToTakeDown", equalTo(7))
                    .body("sheets", hasSize(WallSheets.MOST_LINES))
                    .body("moreSheets", equalTo(7));
        }
        var newest = register().<String>path("toTakeDown[0].sheet");
        takeDown(Role.LEAD, standing(newest));
        register().then().body("toTakeDown", hasSize(WallSheets.MOST_LINES)).body("moreToTakeDown", equalTo(6));
        service.person(Role.LEAD)
                .get("/api/v1/rooms/r2/sheets")
                .then()
                .body("moreToTakeDown", equalTo(0))
                .body("moreSheets", equalTo(0));
    }

    private void registerOldSheet(Actor by, int number) {
        var digits = "34679CDFGH";
        var text = String.format("%04d", number).chars().mapToObj(c -> digits.substring(c - '0', c - '0' + 1));
        new SheetRegister(service.database())
                .enter(
                        by,
                        new PrintedSheet(
                                new SheetNumber("CDFGHJKM" + text.collect(Collectors.joining())),
                                "r1",
                                2,
                                "sha256:" + "0".repeat(64),
                                1,
                                PaperSize.A4,
                                Selection.WHOLE,
                                service.clock().instant(),
                                by.name(),
                                "A. Lead",
                                "lead",
                                Optional.empty()));
    }

    @Test
    void a_tube_that_is_measured_anew_is_said_of_the_sheets_of_before() {
        var sheet = printed(service.person(Role.LEAD));
        var measured = EquipmentCalls.output("2026-03-01", 1);
        assertThat(new EquipmentCalls(service).putOutput("r1", measured).statusCode())
                .isEqualTo(200);
        standing(sheet)
                .then()
                .body("state", equalTo("equipment-moved"))
                .body("since", notNullValue())
                .body("nextStep", containsString("print a new sheet"));
        register().then().body("toTakeDown", empty());
    }

    @Test
    void a_version_that_comes_into_force_later_is_announced_and_then_supersedes() {
        var sheet = printed(service.person(Role.LEAD));
        var change = calls.submitted("ordinary", ChangeCalls.KNEE, "12.5");
        var signature = new HashMap<>(calls.signature(change));
        signature.put("inForceFrom", "2026-03-09T06:00:00Z");
        assertThat(calls.step(Role.LEAD, change, "sign", signature).statusCode())
                .isEqualTo(200);
        standing(sheet)
                .then()
                .body("state", equalTo("current"))
                .body("until", equalTo("2026-03-09T06:00:00Z"))
                .body("say", containsString("comes into force later"));
        service.clock().advance(Duration.ofDays(8));
        standing(sheet).then().body("state", equalTo("superseded")).body("since", equalTo("2026-03-09T06:00:00Z"));
    }

    @Test
    void a_review_that_is_overdue_is_said_on_new_sheets_and_of_old_ones() {
        var sheet = printed(service.workstation("r1"));
        service.clock().advance(Duration.ofDays(400));
        standing(sheet).then().body("reviewOverdueSince", equalTo("2027-02-02")).body("say", containsString("overdue"));
        assertThat(ParsedSheet.of(print(service.workstation("r1"), "").asByteArray())
                        .words(1))
                .contains("REVIEW OVERDUE since 2027-02-02");
    }

    /** Somebody signs past the memory of the one who prints, as in the moment between the signature and its announcement. */
    @Test
    void a_version_that_is_signed_while_a_sheet_is_made_stands_on_that_sheet() {
        var services = service.services();
        var lead = Department.person(services.people(), "second-lead", Role.LEAD);
        service.clock().advance(Duration.ofMinutes(1));
        var published = new Charts(service.database(), services.rooms(), ChartRules.adultsOnly())
                .publish(
                        lead,
                        new Draft(
                                "r1",
                                2,
                                ChartFixtures.aChart().withBand(17, 24).content(),
                                "Chart 3",
                                "made in the same moment",
                                "approved for use",
                                Optional.empty(),
                                Department.REVIEW_DUE));
        assertThat(published).isInstanceOf(Publication.Published.class);
        assertThat(services.charts().versions("r1").get(0).number()).isEqualTo(2);
        var sheet = ParsedSheet.of(print(service.workstation("r1"), "").asByteArray());
        assertThat(sheet.words(1)).contains("Version 3, in force since", "17–24");
        register().then().body("sheets", hasSize(1)).body("sheets[0].version", equalTo(3));
    }
}
