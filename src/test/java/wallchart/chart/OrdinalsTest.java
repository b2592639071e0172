package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class OrdinalsTest {

    @Test
    void what_stays_keeps_its_ordinal_and_what_is_new_goes_between() {
        assertThat(Ordinals.assign(List.of(10L, 0L, 20L, 40L))).containsExactly(10L, 15L, 20L, 40L);
        assertThat(Ordinals.assign(List.of(10L, 0L, 0L)))
                .containsExactly(10L, 10 + Ordinals.GAP, 10 + 2 * Ordinals.GAP);
        assertThat(Ordinals.assign(List.of())).isEmpty();
    }

    @Test
    void moving_the_last_to_the_front_rewrites_one() {
        assertThat(Ordinals.assign(List.of(400L, 100L, 200L, 300L))).containsExactly(50L, 100L, 200L, 300L);
    }

    @Test
    void where_neighbours_are_too_close_all_are_numbered_anew() {
        assertThat(Ordinals.assign(List.of(1L, 0L, 2L)))
                .containsExactly(Ordinals.GAP, 2 * Ordinals.GAP, 3 * Ordinals.GAP);
    }

    @Property
    void ordinals_always_ascend(
            @ForAll @Size(max = 40) List<@net.jqwik.api.constraints.LongRange(min = 0, max = 60) Long> given) {
        var seen = new ArrayList<Long>();
        var previous = given.stream()
                .map(ordinal -> {
                    var once = seen.contains(ordinal) ? Long.valueOf(0) : ordinal;
                    seen.add(ordinal);
                    return once;
                })
                .toList();
        var ordinals = Ordinals.assign(previous);
        assertThat(ordinals).hasSameSizeAs(previous).doesNotHaveDuplicates().allMatch(ordinal -> ordinal > 0);
        var sorted = new ArrayList<>(ordinals);
        Collections.sort(sorted);
        assertThat(ordinals).isEqualTo(sorted);
    }
}
