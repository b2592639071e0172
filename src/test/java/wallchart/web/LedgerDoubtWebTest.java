package wallchart.web;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;

import io.restassured.specification.RequestSpecification;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wallchart.audit.Ledger;
import wallchart.people.Role;
import wallchart.store.Actor;

/** While the ledger is in doubt, nobody learns from a refusal how the machine names its files; who looks into the doubt does. */
class LedgerDoubtWebTest {

    private static final Ledger LEDGER = new Ledger();
    private static final String DOUBT = "/var/lib/department/ledger/checkpoints.jsonl: line 3 is cut off";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    @ParameterizedTest
    @EnumSource(Role.class)
    void what_is_refused_names_no_file_to_any_role(Role role) {
        var client = role == Role.WORKSTATION ? SERVICE.workstation("r1") : SERVICE.person(role);
        stop();
        refused(client);
    }

    private static void refused(RequestSpecification client) {
        client.get("/api/v1/rooms/r1/sheet.pdf")
                .then()
                .statusCode(503)
                .body("code", equalTo("ledger-in-doubt"))
                .body("detail", containsString("the ledger is in doubt"))
                .body("detail", not(containsString("/")))
                .body("detail", not(containsString("checkpoints")));
        SERVICE.database().run(Actor.system("test"), tx -> LEDGER.stop(tx, null));
    }

    @Test
    void the_physicist_sees_what_is_in_doubt_under_audit() {
        var physicist = SERVICE.person(Role.PHYSICIST);
        stop();
        physicist.get("/api/v1/audit/verification").then().body("stopped", equalTo(DOUBT));
        SERVICE.database().run(Actor.system("test"), tx -> LEDGER.stop(tx, null));
    }

    private static void stop() {
        SERVICE.database().run(Actor.system("test"), tx -> LEDGER.stop(tx, DOUBT));
    }
}
