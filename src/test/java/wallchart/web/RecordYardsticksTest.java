package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.store.StoreFixtures.asOwner;

import io.restassured.path.json.JsonPath;
import io.restassured.response.ValidatableResponse;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.chart.Draft;
import wallchart.chart.Publication;
import wallchart.people.Role;
import wallchart.store.Actor;

/**
 * What published rules ask of records and signatures, used as yardsticks; no claim that one of them applies to a department or is
 * complied with. 21 CFR Part 11 is quoted in parts and ISO 9001 paraphrased, both from memory.
 */
class RecordYardsticksTest {

    private static final String VERSION_1 = "/api/v1/charts/r1/versions/1";
    private static final String QUESTION = "/api/v1/rooms/r1/technique?bodyPart=LSPINE&projection=ap&thicknessCm=21";

    private final RunningService service = new RunningService();

    @BeforeEach
    void start() {
        service.start();
    }

    @AfterEach
    void stop() {
        service.stop();
    }

    private ValidatableResponse get(String address) {
        return service.person(Role.PHYSICIST).get(address).then().statusCode(200);
    }

    private JsonPath events(String query) {
        return get("/api/v1/audit/events?" + query).extract().jsonPath();
    }

    private void assertSound(boolean sound) {
        get("/api/v1/audit/verification").body("sound", equalTo(sound));
    }

    private void publish(String mAs, Optional<Instant> inForceFrom) {
        var charts = service.services().charts();
        int base = charts.versions("r1").get(0).number();
        var by = Department.person(service.services().people(), "lead-" + base, Role.LEAD);
        var draft = new Draft(
                "r1",
                base,
                aChart().with(aRow().withMAs(mAs)).content(),
                "Chart " + (base + 1),
                "made for the tests of this service",
                "approved for use",
                inForceFrom,
                Department.REVIEW_DUE);
        assertThat(charts.publish(by, draft)).isInstanceOf(Publication.Published.class);
    }

    /** 11.10(e): "secure, computer-generated, time-stamped audit trails"; "record changes shall not obscure previously recorded information". */
    @Test
    void cfr_21_section_11_10_e_a_new_version_does_not_obscure_the_one_before() {
        var rows = get(VERSION_1 + "/rows").extract().asString();
        var before = events("room=r1&action=version-signed");
        assertThat(before.getList("events.object")).isEqualTo(List.of("r1/version/1", "r1/version/2"));
        assertThat(before.getList("events.at"))
                .isEqualTo(List.of(Department.FIRST_VERSION_FROM, Department.SECOND_VERSION_FROM));

        publish("32", Optional.empty());

        var after = events("room=r1&action=version-signed");
        assertThat(after.getList("events").subList(0, 2)).isEqualTo(before.getList("events"));
        assertThat(after.getString("events[2].at")).isEqualTo(RunningService.NOW);
        assertThat(after.getString("events[2].actor")).isEqualTo("lead-2");
        assertThat(get(VERSION_1 + "/rows").extract().asString()).isEqualTo(rows);
        assertSound(true);
    }

    /** The same of an account: what it was, who changed it, when and into what. */
    @Test
    void cfr_21_section_11_10_e_a_change_of_an_account_does_not_obscure_what_it_was() {
        var people = service.services().people();
        Department.person(people, "rae", Role.RADIOGRAPHER);
        var rae = people.findByName("rae").orElseThrow();
        var before = events("action=account-added").getList("events");

        people.changeRole(Actor.person(99, "office", "administrator"), rae.id(), rae.revision(), Role.LEAD);

        assertThat(events("action=account-added").getList("events").subList(0, before.size()))
                .isEqualTo(before);
        var added = "events.find { it.object == 'person/" + rae.id() + "' }.";
        assertThat(events("action=account-added").getString(added + "details.role"))
                .isEqualTo("radiographer");
        var changed = events("action=role-changed");
        assertThat(changed.getString(added + "details.from")).isEqualTo("radiographer");
        assertThat(changed.getString(added + "details.to")).isEqualTo("lead");
        assertThat(changed.getString(added + "actor")).isEqualTo("office");
        assertThat(changed.getString(added + "at")).isEqualTo(RunningService.NOW);
        assertSound(true);
    }

    /** 11.50(a): "the printed name of the signer; the date and time when the signature was executed; and the meaning". */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void cfr_21_section_11_50_a_signed_version_shows_printed_name_date_and_time_and_meaning(int number) {
        var at = number == 1 ? Department.FIRST_VERSION_FROM : Department.SECOND_VERSION_FROM;
        get("/api/v1/charts/r1/versions/" + number)
                .body("signature.printedName", equalTo("Pat first-lead"))
                .body("signature.at", equalTo(at))
                .body("signature.meaning", equalTo("approved for use"));
        get(QUESTION + "&at=" + at)
                .body("chart.signedBy", equalTo("Pat first-lead"))
                .body("chart.signedAt", equalTo(at))
                .body("chart.meaning", equalTo("approved for use"));
    }

    /** 11.70: signatures are linked to their records so that they "cannot be excised, copied, or otherwise transferred". */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE chart_version SET signed_at = (SELECT signed_at FROM chart_version WHERE number = 1),"
                        + " in_force_from = (SELECT in_force_from FROM chart_version WHERE number = 1) WHERE number = 2",
                "UPDATE chart_version SET meaning = '' WHERE number = 1",
                "UPDATE chart_version SET printed_name = 'Somebody else' WHERE number = 2",
                "UPDATE chart_version SET number = 3 - number", // the contents change their signatures
                "UPDATE chart_row SET notes = 'other' WHERE introduced_in = 1" // and a signature its content
            })
    void cfr_21_section_11_70_a_signature_cannot_be_moved_to_another_record(String tampering) {
        assertSound(true);
        asOwner(
                service.database(),
                "DROP TRIGGER chart_version_append_only",
                "DROP TRIGGER chart_row_append_only",
                "SET REFERENTIAL_INTEGRITY FALSE",
                tampering);
        assertSound(false);
    }

    /**
     * 7.5.3.2 asks for control of retrieval, use and changes of documents, such as by versions. That obsolete ones are kept from
     * unintended use, and marked where they are kept at all, is said in so many words in the edition of 2008, 4.2.3 g.
     */
    @Test
    void iso_9001_2015_clause_7_5_3_2_an_obsolete_version_never_answers_a_room() {
        var from = Instant.parse("2026-03-05T08:00:00Z");
        assertAnswers(2);
        publish("32", Optional.empty());
        assertAnswers(3);
        publish("40", Optional.of(from));
        service.clock().set("2026-03-05T07:59:59.999999Z");
        assertAnswers(3);
        service.clock().set(from.toString());
        assertAnswers(4);
        service.clock().set("2029-01-01T00:00:00Z");
        assertAnswers(4);
        service.workstation("r1").get(QUESTION + "&version=2").then().statusCode(400);
    }

    private void assertAnswers(int version) {
        service.workstation("r1")
                .get(QUESTION)
                .then()
                .statusCode(200)
                .body("chart.version", equalTo(version))
                .body("cautions", not(hasItem(containsString("not the chart in force now"))));
    }

    /** The same clauses: what is kept to explain the past is marked, so that nobody takes it for what holds now. */
    @Test
    void iso_9001_2015_clause_7_5_3_2_an_answer_from_an_obsolete_version_says_so() {
        get(QUESTION + "&at=2026-01-20T08:00:00Z")
                .body("chart.version", equalTo(1))
                .body(
                        "cautions[0]",
                        equalTo("Version 1 is not the chart in force now: that is version 2 since "
                                + Department.SECOND_VERSION_FROM));
        get(QUESTION + "&at=" + RunningService.NOW)
                .body("chart.version", equalTo(2))
                .body("cautions", not(hasItem(containsString("not the chart in force now"))));
    }
}
