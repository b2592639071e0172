package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.ValidatableResponse;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.equipment.EquipmentFixtures;
import wallchart.people.Role;
import wallchart.store.Actor;

/** A version of a chart held against beam physics, asked by people. */
class ChartPhysicsWebTest {

    private static final String PHYSICS = "/api/v1/charts/r1/versions/2/physics";

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private static ValidatableResponse get(String address) {
        return SERVICE.person(Role.RADIOGRAPHER).get(address).then();
    }

    @Test
    void the_whole_version_is_graded_for_the_equipment_of_now() {
        get(PHYSICS)
                .statusCode(200)
                .header("Cache-Control", "private, no-cache")
                .body("room", equalTo("r1"))
                .body("version", equalTo(2))
                .body("equipment.revision", equalTo(1))
                .body("limits.maxJumpDb", equalTo(1))
                .body("limits.maxSlopeDbPerCm", equalTo(0.5f))
                .body("stationRoundingDb", is(0.53605f))
                .body("holdsFor", hasItem(containsString("slab of water")))
                .body("examinations.bodyPart", contains("LSPINE", "KNEE", "KNEE"));
    }

    @Test
    void a_manual_row_has_a_curve_grades_and_a_cost_and_an_aec_row_a_sentence() {
        get(PHYSICS + "?bodyPart=LSPINE")
                .body("examinations", hasSize(1))
                .body("examinations[0].reference.row", equalTo("LSPINE/ap/adult/table-bucky/18-24"))
                .body("examinations[0].receptorQuantity", equalTo("energy-absorbed-in-csi"))
                .body("examinations[0].rows[0].curve.thicknessCm", hasSize(14))
                .body("examinations[0].rows[0].curve[0].thicknessCm", equalTo(18))
                .body("examinations[0].rows[0].curve[7].receptorExposureDb", is(0))
                .body("examinations[0].rows[0].notPredicted", empty())
                .body("examinations[0].rows[0].grades.rule", contains("thickness", "fifteen-percent", "grid"))
                .body("examinations[0].rows[0].dose.upperBound", is(false))
                .body("examinations[0].rows[1].curve", empty())
                .body("examinations[0].rows[1].notPredicted.reason", contains("AEC ends the exposure: not predicted"))
                .body("examinations[0].rows[1].grades", empty())
                .body("examinations[0].rows[1].dose.upperBound", is(true));
    }

    @Test
    void going_without_a_grid_is_offered_with_its_saving_and_what_it_leaves_out() {
        get(PHYSICS + "?bodyPart=KNEE&support=table-bucky")
                .body("examinations[0].offers.grid", hasItem("none"))
                .body("examinations[0].offers.savedPercent", everyItem(notNullValue()))
                .body(
                        "examinations[0].offers.text",
                        everyItem(containsString("noise and contrast were not predicted")));
    }

    /** Hundredths of a dB, as a console's steps are compared: what is smaller is noise of the arithmetic. */
    @Test
    void no_decibel_has_more_than_two_places() {
        List<Number> decibels = get(PHYSICS)
                .extract()
                .path("examinations.rows.flatten().curve.flatten().receptorExposureDb.findAll { it != null }");

        assertThat(decibels).isNotEmpty().allSatisfy(exposure -> assertThat(
                        new BigDecimal(exposure.toString()).stripTrailingZeros().scale())
                .isLessThanOrEqualTo(2));
    }

    @Test
    void findings_are_cautions_and_notes_and_never_block() {
        get(PHYSICS)
                .body("examinations.findings.flatten().level", everyItem(not(equalTo("blocking"))))
                .body(
                        "examinations[0].findings.reason",
                        hasItem(allOf(containsString("AEC"), containsString("upper bound"))));
    }

    @Test
    void examinations_are_chosen_by_each_part_of_their_key() {
        get(PHYSICS + "?bodyPart=KNEE&projection=ap&patientGroup=adult&support=tabletop")
                .statusCode(200)
                .body("examinations", hasSize(1))
                .body("examinations[0].support", equalTo("tabletop"))
                .body("examinations[0].offers", empty());
        get(PHYSICS + "?support=table-bucky").body("examinations.bodyPart", contains("LSPINE", "KNEE"));
    }

    @Test
    void an_examination_that_the_version_has_not_is_no_empty_list() {
        get(PHYSICS + "?bodyPart=HAND").statusCode(404).body("code", equalTo("unknown-row"));
        get("/api/v1/charts/r1/versions/3/physics").statusCode(404).body("code", equalTo("unknown-version"));
        get("/api/v1/charts/r9/versions/1/physics").statusCode(404).body("code", equalTo("unknown-room"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"?bodyPart=knee", "?support=bed", "?projection=ap&projection=pa", "?thicknessCm=3"})
    void a_parameter_that_is_none_is_refused(String query) {
        get(PHYSICS + query).statusCode(400).body("code", equalTo("invalid-parameter"));
    }

    /** In a service of its own, because the equipment changes. */
    @Test
    void what_is_known_is_not_sent_again_until_the_equipment_changes() {
        var service = new RunningService().start();
        try {
            var first = service.person(Role.PHYSICIST).get(PHYSICS);
            var tag = first.header("ETag");
            var known =
                    service.person(Role.PHYSICIST).header("If-None-Match", tag).get(PHYSICS);
            assertThat(known.statusCode()).isEqualTo(304);

            service.services()
                    .rooms()
                    .install(
                            Actor.system("test"),
                            EquipmentFixtures.aRoom().uncalibrated().document());

            var after =
                    service.person(Role.PHYSICIST).header("If-None-Match", tag).get(PHYSICS);
            assertThat(after.statusCode()).isEqualTo(200);
            after.then()
                    .body("equipment.revision", equalTo(2))
                    .body("holdsFor", hasItem(containsString("no measured output")));
        } finally {
            service.stop();
        }
    }

    @Test
    void a_rule_outside_the_model_has_no_number() {
        get(PHYSICS)
                .body(
                        "examinations.rows.flatten().grades.flatten().findAll { it.verdict == 'not-predicted' }.errorPercent",
                        everyItem(nullValue()));
    }
}
