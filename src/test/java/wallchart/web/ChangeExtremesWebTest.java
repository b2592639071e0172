package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.chart.RowFields;
import wallchart.people.Role;

/** Whatever stands in a draft, its author is told what is wrong with it, and can take it back. */
class ChangeExtremesWebTest {

    private static final List<Object> VALUES =
            List.of(0, 9999, 999999999999L, -1, "none", "1e5", "attenuation", "z".repeat(1000), "Ä\u0301 \u2028");

    @RegisterExtension
    static final RunningService SERVICE = new RunningService();

    private final ChangeCalls calls = new ChangeCalls(SERVICE);

    static Stream<String> fields() {
        return RowFields.NAMES.stream();
    }

    @ParameterizedTest
    @MethodSource("fields")
    void any_value_in_any_field_is_read_or_refused_by_name(String field) {
        Response change = calls.open(Role.RADIOGRAPHER);
        for (var value : VALUES) {
            var fields = calls.fields(ChangeCalls.KNEE);
            fields.put(field, value);
            change = tried(change, fields, field + " = " + value);
            boolean moved = change.<List<?>>path("edits").size() > 1;
            change = moved ? takenBack(change, field) : change;
        }
        takenBack(change, field);
    }

    @ParameterizedTest
    @ValueSource(strings = {"0", "0.1", "500", "99999"})
    void the_same_extreme_in_every_number_is_read_or_refused_by_name(String number) {
        var fields = calls.fields(ChangeCalls.KNEE);
        List.of("kV", "mAs", "sidCm", "thicknessRate", "kVFrom", "kVTo", "longestTimeMs", "targetExposureIndex")
                .forEach(name -> fields.put(name, number));
        for (var method : List.of("kv-per-cm", "mas-per-cm", "attenuation")) {
            fields.put("thicknessMethod", method);
            var what = number + " in every number, " + method;
            takenBack(tried(calls.open(Role.RADIOGRAPHER), fields, what), what);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"left", "centre", "left+right", "left+left", "middle"})
    void automatic_exposure_control_with_extremes_is_read_or_refused_by_name(String chambers) {
        var fields = new LinkedHashMap<>(calls.fields(ChangeCalls.KNEE));
        fields.remove("mAs");
        fields.put("aecChambers", chambers);
        for (var density : List.of(0, -99, 99999, 0.5)) {
            for (var backup : List.of(0, 0.01, 99999)) {
                fields.put("aecDensity", density);
                fields.put("backupMAs", backup);
                tried(calls.open(Role.RADIOGRAPHER), fields, chambers + ", " + density + ", " + backup);
            }
        }
    }

    /** Answers the change as it is after the edit was tried. */
    private Response tried(Response change, Map<String, Object> fields, String what) {
        var put = calls.by(Role.RADIOGRAPHER, change).body(fields).put(ChangeCalls.row(change, ChangeCalls.KNEE));
        assertThat(put.statusCode()).as(what).isIn(200, 400);
        if (put.statusCode() == 400) {
            assertThat(put.<List<String>>path("errors.pointer")).as(what).isNotEmpty();
            return change;
        }
        var impact = SERVICE.person(Role.LEAD).get(ChangeCalls.address(change) + "/impact");
        assertThat(impact.statusCode()).as(what).isEqualTo(200);
        return put;
    }

    private Response takenBack(Response edited, String what) {
        var now = edited;
        for (String key : edited.<List<String>>path("edits.key")) {
            now = calls.by(Role.RADIOGRAPHER, now).delete(ChangeCalls.address(now) + "/edits/" + key);
            assertThat(now.statusCode()).as(what + ", taken back: " + key).isEqualTo(200);
        }
        assertThat(now.<List<?>>path("edits")).as(what).isEmpty();
        return now;
    }
}
