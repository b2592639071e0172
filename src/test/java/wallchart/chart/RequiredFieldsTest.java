package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wallchart.equipment.Room;

class RequiredFieldsTest {

    private static final Room ROOM = aRoom().room();
    private static final ChartRules RULES = new ChartRules(
            List.of(
                    new PatientGroup("adult", "Adult", PatientGroup.Basis.AGE),
                    new PatientGroup("under-10-kg", "Child under 10 kg", PatientGroup.Basis.WEIGHT)),
            Set.of());

    /** Type and placement of shielding: K.A.R. 28-35-242a(a)(3) and 12VAC5-481-1591(A)(3) list it, OAR 333-106-0015 does not. */
    @ParameterizedTest
    @EnumSource(RequiredFields.class)
    void shielding_is_asked_for_where_the_published_rule_lists_it(RequiredFields set) {
        var rules = new ChartRules(RULES.patientGroups(), Set.of(set));
        var findings = ChartCheck.check(aRow().withShielding("").row(), ROOM, rules);
        if (set == RequiredFields.OREGON) {
            assertThat(findings).isEmpty();
        } else {
            assertThat(findings).singleElement().satisfies(finding -> {
                assertThat(finding.isBlocking()).isTrue();
                assertThat(finding.field()).isEqualTo("shielding");
                assertThat(finding.reason()).contains(set.citation());
            });
        }
        assertThat(ChartCheck.check(aRow().row(), ROOM, rules)).isEmpty();
    }

    /** "Part and size, thickness and age": K.A.R. 28-35-242a(a)(3). */
    @Test
    void kansas_asks_for_age_beside_thickness() {
        var child = aRow().forGroup("under-10-kg").row();
        var kansas = new ChartRules(RULES.patientGroups(), Set.of(RequiredFields.KANSAS));
        assertThat(ChartCheck.check(child, ROOM, kansas))
                .singleElement()
                .satisfies(finding -> assertThat(finding.reason()).contains("sorts patients by weight"));
        var virginia = new ChartRules(RULES.patientGroups(), Set.of(RequiredFields.VIRGINIA));
        assertThat(ChartCheck.check(child, ROOM, virginia)).isEmpty();
    }

    @Test
    void every_required_field_is_a_field_of_a_row() {
        for (var set : RequiredFields.values()) {
            assertThat(RowFields.NAMES).containsAll(set.fields());
            assertThat(RequiredFields.find(set.slug())).contains(set);
        }
    }
}
