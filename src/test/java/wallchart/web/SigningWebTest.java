package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import ch.qos.logback.classic.Level;
import ch.qos.logback.classic.Logger;
import ch.qos.logback.classic.spi.ILoggingEvent;
import ch.qos.logback.core.read.ListAppender;
import io.restassured.response.Response;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.slf4j.LoggerFactory;
import wallchart.Validation;
import wallchart.people.Role;
import wallchart.web.request.ChangeBodies;

/** What it takes to sign, and from when on what was signed is answered. Each test has a department of its own. */
class SigningWebTest {

    private static final String TECHNIQUE =
            "/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm=11.5";

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

    private Response signed(Response change, String member, Object value) {
        var signature = new HashMap<>(calls.signature(change));
        if (value == null) {
            signature.remove(member);
        } else {
            signature.put(member, value);
        }
        return calls.step(Role.LEAD, change, "sign", signature);
    }

    private Response submitted() {
        return calls.submitted("ordinary", ChangeCalls.KNEE, "12.5");
    }

    private void assertUntouched(Response change) {
        service.person(Role.LEAD)
                .get(ChangeCalls.address(change))
                .then()
                .body("state", equalTo("submitted"))
                .header("ETag", equalTo(change.header("ETag")));
    }

    /**
     * 21 CFR 11.200(a): a signature without biometrics employs "at least two distinct identification components such as an
     * identification code and password" (1), in a series of signings each takes at least one that only the individual can execute
     * (1)(i), and it is "used only by their genuine owners" (2). Here the session is the first component, the password the second.
     */
    @Validation
    @Test
    void cfr_21_11_200_a_signing_takes_the_password_again_and_nobody_elses_will_do() {
        var first = submitted();
        signed(first, "password", null).then().statusCode(400).body("errors[0].pointer", equalTo("/password"));
        for (var others : new Role[] {Role.RADIOGRAPHER, Role.PHYSICIST}) {
            service.signedIn(others);
            signed(first, "password", ChangeCalls.password(others))
                    .then()
                    .statusCode(403)
                    .body("code", equalTo("wrong-password"));
        }
        assertUntouched(first);
        calls.sign(first).then().statusCode(200).body("decision.by.printedName", equalTo("Pat lead"));
        var second = calls.submitted("ordinary", ChangeCalls.TABLETOP_KNEE, "4");
        signed(second, "password", null).then().statusCode(400);
        assertUntouched(second);
        calls.sign(second).then().statusCode(200);
    }

    /** As above, (2) and (3): whoever tries passwords at a signature is stopped as at the door. */
    @Validation
    @Test
    void cfr_21_11_200_a_a_wrong_password_at_a_signature_counts_against_the_lock() {
        var change = submitted();
        for (int guess = 0; guess < 5; guess++) {
            signed(change, "password", "this is guess " + guess).then().statusCode(403);
        }
        signed(change, "password", ChangeCalls.password(Role.LEAD))
                .then()
                .statusCode(429)
                .header("Retry-After", Integer::valueOf, greaterThan(0))
                .body("code", equalTo("too-many-attempts"));
        assertUntouched(change);
        service.anybody()
                .contentType("application/json")
                .body(Map.of("name", "lead", "password", ChangeCalls.password(Role.LEAD)))
                .post("/api/v1/session")
                .then()
                .statusCode(429);
    }

    @Test
    void concurrence_and_second_review_take_the_password_too() {
        var change = calls.submitted("fast-track", ChangeCalls.KNEE, "20");
        var wrong = ChangeCalls.password(Role.LEAD);
        calls.step(Role.PHYSICIST, change, "concur", Map.of("password", wrong))
                .then()
                .statusCode(403)
                .body("code", equalTo("wrong-password"));
        var signed = calls.sign(change);
        var review = Map.of("password", wrong, "findings", "Exposure indices are on target");
        calls.step(Role.PHYSICIST, signed, "second-review", review)
                .then()
                .statusCode(403)
                .body("code", equalTo("wrong-password"));
        service.person(Role.LEAD)
                .get("/api/v1/second-reviews")
                .then()
                .body("changes.id", hasItem(signed.<Integer>path("id")));
    }

    @Test
    void a_password_stands_in_no_answer_no_log_and_no_record() {
        var log = new ListAppender<ILoggingEvent>();
        log.start();
        var root = (Logger) LoggerFactory.getLogger("ROOT");
        var ours = (Logger) LoggerFactory.getLogger("wallchart");
        root.addAppender(log);
        ours.setLevel(Level.TRACE);
        try {
            var change = submitted();
            var answers = signed(change, "password", "a wrong guess of mine").asString()
                    + calls.sign(change).asString()
                    + service.person(Role.PHYSICIST).get("/api/v1/audit/export").asString();
            LoggerFactory.getLogger("wallchart.test").info("the log is listened to");
            var lines =
                    log.list.stream().map(ILoggingEvent::getFormattedMessage).toList();
            assertThat(lines).contains("the log is listened to");
            assertThat(lines + answers)
                    .doesNotContain("a wrong guess of mine")
                    .doesNotContain(ChangeCalls.password(Role.LEAD));
        } finally {
            ours.setLevel(null);
            root.detachAppender(log);
        }
        assertThat(new ChangeBodies.Signature(
                                "secret words", "approved", "sha256:0", Optional.empty(), Optional.empty())
                        + " "
                        + new ChangeBodies.Concurrence("secret words", Optional.empty())
                        + new ChangeBodies.SecondReview("secret words", "on target"))
                .doesNotContain("secret");
    }

    @Test
    void a_scheduled_version_does_not_answer_before_its_instant() {
        int before = calls.newest();
        var from = Instant.parse(RunningService.NOW).plusSeconds(7200);
        var signed = signed(submitted(), "inForceFrom", from.toString());
        signed.then().statusCode(200).body("signedVersion", equalTo(before + 1));
        assertThat(answering("")).isEqualTo(before);
        assertThat(answering("&at=" + from.minusMillis(1))).isEqualTo(before);
        assertThat(answering("&at=" + from)).isEqualTo(before + 1);
        service.clock().set(from.minusMillis(1).toString());
        assertThat(answering("")).isEqualTo(before);
        service.clock().set(from.toString());
        assertThat(answering("")).isEqualTo(before + 1);
    }

    private int answering(String at) {
        return service.workstation("r1").get(TECHNIQUE + at).path("chart.version");
    }

    @Test
    void the_day_of_review_is_the_signers_or_the_sites_interval() {
        signed(submitted(), "reviewDue", "2026-09-30").then().statusCode(200);
        calls.sign(calls.submitted("ordinary", ChangeCalls.KNEE, "10")).then().statusCode(200);
        var year = LocalDate.parse(RunningService.NOW.substring(0, 10)).plusYears(1);
        service.person(Role.LEAD)
                .get("/api/v1/charts/r1/versions")
                .then()
                .body("versions[0].reviewDue", equalTo(year.toString()))
                .body("versions[1].reviewDue", equalTo("2026-09-30"))
                .body("versions[1].signature.meaning", equalTo("approved for use"));
    }

    @Test
    void a_room_without_a_chart_gets_its_first_version_by_a_change() {
        var fields = calls.fields(ChangeCalls.TABLETOP_KNEE);
        var opened = calls.by(Role.RADIOGRAPHER)
                .body(Map.of("title", "First chart", "reason", "The room opens in spring", "baseVersion", 0))
                .post("/api/v1/charts/r2/changes");
        opened.then().statusCode(201).body("onVersion", equalTo(0));
        var edited = calls.by(Role.RADIOGRAPHER, opened)
                .body(fields)
                .put(ChangeCalls.row(opened, ChangeCalls.TABLETOP_KNEE));
        edited.then().body("edits.kind", contains("add")).body("findings.blocking", equalTo(false));
        var submitted = calls.step(Role.RADIOGRAPHER, edited, "submit");
        service.person(Role.LEAD)
                .get(ChangeCalls.address(submitted) + "/impact")
                .then()
                .body("onVersion", equalTo(0))
                .body("rows[0].before", nullValue())
                .body("rows[0].remarks[0]", containsString("nothing to compare"));
        var concurred = calls.step(
                Role.PHYSICIST,
                submitted,
                "concur",
                Map.of("password", ChangeCalls.password(Role.PHYSICIST), "impactDigest", calls.digest(submitted)));
        calls.sign(concurred).then().statusCode(200).body("signedVersion", equalTo(1));
        service.workstation("r2")
                .get("/api/v1/rooms/r2/technique?bodyPart=KNEE&projection=ap&thicknessCm=11.5")
                .then()
                .statusCode(200)
                .body("chart.version", equalTo(1))
                .body("set", notNullValue())
                .body("cautions", not(hasItem("")));
    }
}
