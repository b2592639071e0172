package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallchart.Kept.Version;

/** The watch over killed services notices each way in which a signature may be lost or only half done. */
class KeptTest {

    private static final Version LOADED = new Version("Knees", "sha256:1");
    private static final Version SIGNED = new Version("Knee a", "sha256:2");
    private static final Kept SOUND = kept(Map.of(1, LOADED, 2, SIGNED), Map.of(2, "Knee a"));

    private static Kept kept(Map<Integer, Version> versions, Map<Integer, String> changes) {
        return new Kept(Map.of("s1", versions), Map.of("s1", changes), Optional.empty());
    }

    @Test
    void what_is_there_as_it_was_acknowledged_is_not_lost() {
        var known = new Acknowledged("s1", 2, "Knee a", "sha256:2");
        var neverAskedFor = new Acknowledged("s1", 2, "Knee a", "");
        assertThat(SOUND.lost(List.of(known, neverAskedFor))).isEmpty();
        assertThat(SOUND.doubts()).isEmpty();
        assertThat(SOUND.newest("s1")).isEqualTo(2);
    }

    @Test
    void a_version_that_is_gone_or_says_something_else_is_lost() {
        var gone = new Acknowledged("s1", 3, "Knee b", "");
        var other = new Acknowledged("s1", 2, "Knee a", "sha256:3");
        var numberUsedAgain = new Acknowledged("s1", 2, "Knee c", "");
        assertThat(SOUND.lost(List.of(gone, other, numberUsedAgain))).containsExactly(gone, other, numberUsedAgain);
    }

    @Test
    void a_change_without_its_version_and_a_version_without_its_change_are_noticed() {
        assertThat(kept(Map.of(1, LOADED), Map.of(2, "Knee a")).doubts()).hasSize(1);
        assertThat(kept(Map.of(1, LOADED, 2, SIGNED), Map.of()).doubts()).hasSize(1);
        assertThat(kept(Map.of(1, LOADED, 2, SIGNED), Map.of(2, "Knee b")).doubts())
                .hasSize(1);
    }

    @Test
    void a_ledger_in_doubt_is_noticed() {
        var kept = new Kept(SOUND.versions(), SOUND.signedChanges(), Optional.of("event 7 is missing"));
        assertThat(kept.doubts()).containsExactly("the ledger is in doubt: event 7 is missing");
    }
}
