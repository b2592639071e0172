package wallchart.web;

import static org.hamcrest.Matchers.contains;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import wallchart.people.Role;

/** Rows and adjustments of a change over HTTP: written, moved, withdrawn and taken back. */
class ChangeEditsWebTest {

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    @Test
    void a_row_is_written_in_numbers_and_its_key_is_taken_from_the_address() {
        var fields = calls.fields(ChangeCalls.TABLETOP_KNEE);
        List.of("bodyPart", "projection", "patientGroup", "support", "bandFromCm", "bandToCm")
                .forEach(fields::remove);
        fields.put("referenceThicknessCm", 11.5);
        fields.put("kV", 63);
        fields.put("mAs", 4);
        fields.put("notes", null);
        var opened = calls.open(Role.PHYSICIST);
        calls.by(Role.PHYSICIST, opened)
                .body(fields)
                .put(ChangeCalls.row(opened, ChangeCalls.TABLETOP_KNEE))
                .then()
                .statusCode(200)
                .body("edits[0].row.key", equalTo(ChangeCalls.TABLETOP_KNEE))
                .body("edits[0].row.mAs", equalTo(4))
                .body("edits[0].row.notes", equalTo(""));
    }

    @Test
    void another_key_in_the_body_moves_the_row() {
        var fields = calls.fields(ChangeCalls.TABLETOP_KNEE);
        fields.put("bandToCm", "14.5");
        fields.remove("referenceThicknessCm");
        var opened = calls.open(Role.RADIOGRAPHER);
        calls.by(Role.RADIOGRAPHER, opened)
                .body(fields)
                .put(ChangeCalls.row(opened, ChangeCalls.TABLETOP_KNEE))
                .then()
                .statusCode(200)
                .body("edits.find { it.kind == 'withdraw' }.key", equalTo(ChangeCalls.TABLETOP_KNEE))
                .body("edits.find { it.kind == 'add' }.key", equalTo("KNEE/ap/adult/tabletop/10-14.5"));
    }

    @Test
    void an_edit_is_answered_with_what_it_does_to_the_chart() {
        var opened = calls.open(Role.RADIOGRAPHER);
        calls.edit(Role.RADIOGRAPHER, opened, ChangeCalls.KNEE, 11)
                .then()
                .statusCode(200)
                .body("findings.findings.findAll { it.row == '" + ChangeCalls.KNEE + "' }.field", hasItem("mAs"))
                .body("findings.findings.level", not(empty()));
        SERVICE.person(Role.ADMINISTRATOR)
                .get(ChangeCalls.address(opened) + "/findings")
                .then()
                .statusCode(200)
                .body("findings.field", hasItem("mAs"));
    }

    @Test
    void an_edit_is_taken_back_and_a_row_is_withdrawn() {
        var edited = calls.edit(Role.RADIOGRAPHER, calls.open(Role.RADIOGRAPHER), ChangeCalls.KNEE, "8");
        var undone =
                calls.by(Role.RADIOGRAPHER, edited).delete(ChangeCalls.address(edited) + "/edits/" + ChangeCalls.KNEE);
        undone.then().statusCode(200).body("edits", empty());
        var withdrawn =
                calls.by(Role.RADIOGRAPHER, undone).body("{}").delete(ChangeCalls.row(undone, ChangeCalls.KNEE));
        withdrawn.then().statusCode(200).body("edits.kind", contains("withdraw"));
        SERVICE.person(Role.LEAD)
                .get(ChangeCalls.address(edited) + "/impact")
                .then()
                .body("rows[0].kind", equalTo("withdrawn"))
                .body("rows[0].after", nullValue())
                .body("rows[0].exposureShiftDb", nullValue())
                .body("needsPhysicist", equalTo(false));
    }

    @Test
    void the_named_adjustments_may_be_put_as_they_are_answered() {
        var opened = calls.open(Role.RADIOGRAPHER);
        var answered = SERVICE.person(Role.RADIOGRAPHER)
                .get("/api/v1/charts/r1/versions/1/rows")
                .jsonPath()
                .getList("adjustments");
        calls.by(Role.RADIOGRAPHER, opened)
                .body(Map.of("adjustments", answered))
                .put(ChangeCalls.address(opened) + "/adjustments")
                .then()
                .statusCode(200)
                .body("adjustments.wanted", equalTo(answered));
    }

    @Test
    void the_named_adjustments_change_as_one_and_are_taken_back_as_one() {
        var opened = calls.open(Role.RADIOGRAPHER);
        var edited = calls.by(Role.RADIOGRAPHER, opened)
                .body(
                        """
                        {"adjustments": [{"name": "plaster", "label": "Plaster cast", "addKv": 8},
                                         {"name": "lytic", "label": "Lytic bone", "timesMas": "0.80", "notes": ""}]}""")
                .put(ChangeCalls.address(opened) + "/adjustments");
        edited.then()
                .statusCode(200)
                .body("adjustments.wanted.addKV", contains(equalTo(8), nullValue()))
                .body("adjustments.wanted.timesMAs", contains(nullValue(), equalTo(0.8f)))
                .body("edits", empty());
        SERVICE.person(Role.LEAD)
                .get(ChangeCalls.address(edited) + "/impact")
                .then()
                .statusCode(200)
                .body("adjustments.name", hasItems("plaster", "lytic"))
                .body("adjustments.find { it.name == 'plaster' }.before.addKV", equalTo(6));
        calls.by(Role.RADIOGRAPHER, edited)
                .delete(ChangeCalls.address(edited) + "/adjustments")
                .then()
                .statusCode(200)
                .body("adjustments", nullValue());
    }
}
