package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;

class ValidityEditTest {

    private static ValidityEdit<String> edit(List<Placed<String>> stored, String... wanted) {
        return ValidityEdit.between(stored, List.of(wanted), text -> text.substring(0, 1));
    }

    @Test
    void only_what_changed_is_written_and_it_keeps_its_place() {
        var stored = List.of(new Placed<>(1, 10, "a"), new Placed<>(2, 20, "b"), new Placed<>(3, 30, "c"));
        var edit = edit(stored, "a", "b2", "d");
        assertThat(edit.retired()).containsExactly(2L, 3L);
        assertThat(edit.introduced())
                .containsExactly(
                        new ValidityEdit.Introduced<>(20, "b2"), new ValidityEdit.Introduced<>(20 + Ordinals.GAP, "d"));
        assertThat(edit(stored, "a", "b", "c")).isEqualTo(new ValidityEdit<>(List.of(), List.of()));
    }

    @Test
    void the_order_holds_however_often_people_insert_at_the_same_place() {
        var stored = new ArrayList<Placed<String>>();
        var wanted = new ArrayList<>(List.of("first", "last"));
        int rewritten = 0;
        for (int round = 0; round < 60; round++) {
            var edit = ValidityEdit.between(stored, wanted, text -> text);
            stored.removeIf(entry -> edit.retired().contains(entry.id()));
            edit.introduced()
                    .forEach(entry -> stored.add(
                            new Placed<>(stored.size() + 1000L * stored.hashCode(), entry.ordinal(), entry.value())));
            stored.sort(Comparator.comparing(Placed::ordinal));
            assertThat(stored).extracting(Placed::value).isEqualTo(wanted);
            rewritten += edit.introduced().size() > 2 ? 1 : 0;
            wanted.add(1, "entry " + round);
        }
        assertThat(rewritten).as("times that everything was numbered anew").isBetween(1, 5);
    }
}
