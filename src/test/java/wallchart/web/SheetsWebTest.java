package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.audit.Verification;
import wallchart.people.Role;
import wallchart.print.ParsedSheet;

/** Sheets over HTTP: who prints what is on record, and each sheet says of itself whether it may go on hanging. */
class SheetsWebTest {

    private static final String SHEET = "/api/v1/rooms/r1/sheet.pdf";
    private static final String REGISTER = "/api/v1/sheets";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final RunningService service = SERVICE;
    private final ChangeCalls calls = new ChangeCalls(service);

    /** Sheets of one instant are in no order, so time goes on. */
    @BeforeEach
    void later() {
        service.clock().advance(Duration.ofSeconds(1));
    }

    private int entered() {
        return register().path("sheets.size()");
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
    void a_sheet_is_a_pdf_with_a_name_that_tells_what_it_is() {
        var answer = print(service.workstation("r1"), "");
        assertThat(answer.contentType()).isEqualTo("application/pdf");
        assertThat(answer.header("Content-Disposition"))
                .matches("attachment; filename=\"chart-r1-version-2-a4-[A-Z0-9]{12}\\.pdf\"");
        assertThat(ParsedSheet.of(answer.asByteArray()).words(1))
                .contains("Room r1", "Version 2, in force since 2026-02-02 07:00 UTC");
    }

    @Test
    void who_printed_what_when_stands_in_the_register_and_in_the_ledger() {
        var sheet = printed(service.person(Role.RADIOGRAPHER));
        register()
                .then()
                .body("sheets[0].sheet.replace('-', '')", equalTo(sheet))
                .body("sheets[0].printedBy", equalTo("Pat radiographer"))
                .body("sheets[0].role", equalTo("radiographer"))
                .body("sheets[0].version", equalTo(2))
                .body("sheets[0].equipmentRevision", equalTo(1))
                .body("sheets[0].paper", equalTo("a4"))
                .body("sheets[0].state", equalTo("current"))
                .body("toTakeDown", empty());
        service.person(Role.PHYSICIST)
                .get("/api/v1/audit/events?action=sheet-printed&room=r1&actor=radiographer")
                .then()
                .body("events[-1].object", equalTo("sheet/" + sheet));
        assertThat(service.services().audit().verify()).isInstanceOf(Verification.Sound.class);
    }

    @Test
    void a_workstation_prints_its_own_room_in_its_own_name() {
        printed(service.workstation("r1"));
        register().then().body("sheets[0].printedBy", equalTo("the workstation of room r1"));
        service.workstation("r2").get(SHEET).then().statusCode(403);
    }

    @Test
    void asking_for_the_head_alone_prints_nothing() {
        int before = entered();
        var head = service.workstation("r1").head(SHEET + "?region=spine");
        head.then().statusCode(200).contentType("application/pdf");
        assertThat(head.header("Content-Length"))
                .as("a length that a file would not have")
                .isNull();
        service.workstation("r2").head("/api/v1/rooms/r2/sheet.pdf").then().statusCode(409);
        assertThat(entered()).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "?region=spine&patientGroup=adult", "?paper=letter"})
    void how_many_pages_a_sheet_will_have_is_said_before_it_is_printed(String query) {
        var foreseen = service.workstation("r1").head(SHEET + query).header("Sheet-Pages");
        var printed = print(service.workstation("r1"), query);
        assertThat(printed.header("Sheet-Pages")).isEqualTo(foreseen);
        assertThat(ParsedSheet.of(printed.asByteArray()).pages()).isEqualTo(Integer.parseInt(foreseen));
        service.workstation("r1").head(SHEET + "?region=chest").then().statusCode(400);
    }

    /** A viewer that shows it in place would ask once more at each reload, and in ranges where it is told that it can. */
    @Test
    void a_file_is_sent_to_be_kept_and_not_to_be_asked_for_in_pieces() {
        var answer = print(service.workstation("r1").header("Range", "bytes=0-99"), "");
        assertThat(answer.header("Accept-Ranges")).isEqualTo("none");
        assertThat(answer.header("Content-Disposition")).startsWith("attachment; ");
        assertThat(ParsedSheet.of(answer.asByteArray()).pages()).isPositive();
    }

    @Test
    void where_no_chart_is_in_force_nothing_is_printed() {
        int before = entered();
        service.workstation("r2")
                .get("/api/v1/rooms/r2/sheet.pdf")
                .then()
                .statusCode(409)
                .body("code", equalTo("no-chart-in-force"));
        assertThat(entered()).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({
        "?paper=a5,paper",
        "?paper=A4,paper",
        "?region=arm,region",
        "?patientGroup=-,patientGroup",
        "?patientGroup=neonate,patientGroup",
        "?region=chest,region",
        "?room=r2,room",
        "?paper=a4&paper=letter,paper"
    })
    void what_cannot_be_printed_is_said_and_not_entered(String query, String parameter) {
        int before = entered();
        service.workstation("r1")
                .get(SHEET + query)
                .then()
                .statusCode(400)
                .body("errors[0].parameter", equalTo(parameter));
        assertThat(entered()).isEqualTo(before);
    }

    @Test
    void a_part_of_the_chart_says_on_every_page_that_it_is_a_part() {
        var parsed = ParsedSheet.of(print(service.workstation("r1"), "?region=spine&patientGroup=adult&paper=letter")
                .asByteArray());
        assertThat(IntStream.rangeClosed(1, parsed.pages()).mapToObj(parsed::words))
                .allSatisfy(page -> assertThat(page).contains("Part of the chart only: Spine; Adult"));
        assertThat(parsed.words()).contains("Lumbar spine").doesNotContain("Knee");
        register().then().body("sheets[0].region", equalTo("spine")).body("sheets[0].patientGroup", equalTo("adult"));
    }

    @Test
    void whoever_stands_before_a_sheet_reads_without_a_name_whether_it_holds() {
        var sheet = printed(service.person(Role.LEAD));
        var answer = standing(sheet.toLowerCase(java.util.Locale.ROOT).replaceAll("(....)(?=.)", "$1-"));
        answer.then()
                .statusCode(200)
                .body("state", equalTo("current"))
                .body("version", equalTo(2))
                .body("since", nullValue())
                .body("say", containsString("version 2 of the chart is in force"))
                .body("nextStep", containsString("this room only"));
        assertThat(answer.asString()).doesNotContain("Pat", "lead", "sha256");
    }

    @ParameterizedTest
    @CsvSource({"CDFGHJKMNPQR,404", "CDFG-HJKM-NPQR,404", "AAAAAAAAAAAA,400", "1,400", "CDFGHJKMNPQRC,400"})
    void a_number_that_no_sheet_has_is_answered_in_words(String number, int status) {
        standing(number).then().statusCode(status).body("detail", containsString("sheet"));
    }

    @Test
    void whoever_notes_it_a_second_time_is_told_that_it_was_noted() {
        var sheet = printed(service.person(Role.LEAD));
        var seen = standing(sheet);
        assertThat(takeDown(Role.LEAD, seen).statusCode()).isEqualTo(200);
        takeDown(Role.LEAD, seen).then().statusCode(412).header("ETag", containsString("taken-down"));
        assertThat(takeDown(Role.RADIOGRAPHER, standing(sheet)).statusCode()).isEqualTo(200);
        register().then().body("sheets[0].takenDownBy", equalTo("lead"));
        calls.by(Role.LEAD).post(REGISTER + "/" + sheet + "/taken-down").then().statusCode(428);
        service.person(Role.PHYSICIST)
                .get("/api/v1/audit/events?action=sheet-taken-down")
                .then()
                .body("events.findAll { it.object == 'sheet/" + sheet + "' }", hasSize(1));
    }

    @Test
    void the_register_of_one_room_has_no_sheet_of_another() {
        printed(service.workstation("r1"));
        for (var path : List.of("/api/v1/rooms/r1/sheets", REGISTER + "?room=r1")) {
            service.person(Role.LEAD).get(path).then().body("sheets.size()", greaterThan(0));
        }
        for (var path : List.of("/api/v1/rooms/r2/sheets", REGISTER + "?room=r2")) {
            service.person(Role.LEAD).get(path).then().body("sheets", empty());
        }
    }

    @Test
    void every_sheet_has_a_number_of_its_own() {
        var numbers = IntStream.range(0, 5)
                .mapToObj(i -> printed(service.workstation("r1")))
                .distinct()
                .toList();
        assertThat(numbers).hasSize(5).allSatisfy(number -> assertThat(number)
                .matches("[34679BCDFGHJKMNPQRSTVWXYZ]{12}"));
    }

    @Test
    void the_address_on_the_sheet_is_the_services_own_whatever_host_was_claimed() {
        var sheet = ParsedSheet.of(print(service.workstation("r1").header("Host", "charts.example:8443"), "")
                .asByteArray());
        assertThat(sheet.words())
                .contains("open http://127.0.0.1:" + service.port() + "/sheets/")
                .doesNotContain("charts.example");
    }
}
