package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.anOutput;

import java.time.Duration;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;
import wallchart.store.Actor;

/** A tube falls by 9 % and by 9 % again; the chart was signed before both. Whoever uses, reads or changes the chart is told. */
class OutputMovedWebTest {

    private static final String KNEE =
            "/api/v1/rooms/r1/technique?bodyPart=KNEE&projection=ap&support=table-bucky&thicknessCm=11.5";
    private static final String CAUTION =
            "output measured 2026-04-20 is 17.2 % under that at signing of version 2: tell the lead radiographer";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static String betweenBoth;

    @BeforeAll
    static void two_yearly_measurements() {
        measured("2026-03-20", "0.91");
        betweenBoth = SERVICE.clock().instant().toString();
        measured("2026-04-20", "0.8281");
    }

    private static void measured(String day, String factor) {
        SERVICE.clock().advance(Duration.ofHours(1));
        SERVICE.services()
                .rooms()
                .install(
                        Actor.system("test"),
                        aRoom().withOutput(anOutput(day, factor)).document());
    }

    @Test
    void the_technique_answer_says_so_first_and_said_nothing_after_the_first_step() {
        SERVICE.workstation("r1").get(KNEE).then().statusCode(200).body("cautions[0]", equalTo(CAUTION));
        SERVICE.workstation("r1")
                .get(KNEE + "&at=" + betweenBoth)
                .then()
                .statusCode(200)
                .body("cautions", not(hasItem(containsString("at signing of"))));
    }

    @Test
    void the_chart_held_against_beam_physics_says_so_first_of_all() {
        SERVICE.person(Role.LEAD)
                .get("/api/v1/charts/r1/versions/2/physics")
                .then()
                .statusCode(200)
                .body("cautions", greaterThan(0))
                .body("findings", hasSize(1))
                .body("findings[0].level", equalTo("caution"))
                .body("findings[0].row", equalTo(""))
                .body(
                        "findings[0].reason",
                        allOf(
                                containsString("17.2 % under"),
                                containsString("then measured 2026-01-14, now measured 2026-04-20"),
                                containsString("4 of 4 rows")));
    }

    @Test
    void whoever_opens_a_change_reads_it_among_the_findings() {
        var opened = ChangeCalls.address(new ChangeCalls(SERVICE).open(Role.RADIOGRAPHER));
        SERVICE.person(Role.LEAD)
                .get(opened + "/findings")
                .then()
                .statusCode(200)
                .body("findings.reason", hasItem(containsString("17.2 % under that at signing of version 2")));
    }

    @Test
    void the_effects_of_the_second_measurement_are_told_against_the_first_and_against_the_signature() {
        var effects = SERVICE.person(Role.PHYSICIST).get("/api/v1/rooms/r1/equipment/revisions/3/effects");
        effects.then()
                .statusCode(200)
                .body("comparedWith", equalTo(2))
                .body("affectedRows", equalTo(0))
                .body("charts[0].sinceSigning.comparedWith", equalTo(1))
                .body("charts[0].sinceSigning.affectedRows", equalTo(4))
                .body("charts[0].sinceSigning.moved", hasSize(4));
        assertThat(effects.<Number>path("charts[0].sinceSigning.largestOutputRatio")
                        .doubleValue())
                .isBetween(0.82, 0.83);
    }
}
