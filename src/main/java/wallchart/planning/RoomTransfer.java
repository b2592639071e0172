package wallchart.planning;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.equipment.SupportKind;

/**
 * Which rows of which room are to be brought to another, and what stands for what there.
 *
 * @param fromRoom id of the room they come from
 * @param fromVersion number of its version
 * @param bodyPart only rows of it; absent for all
 * @param examinations only rows of these, each written {@code KNEE/ap/adult/table-bucky}; empty for all
 * @param scope what becomes of rows that this room has already
 * @param supports for a support of that room one of this; one that is not named keeps its kind
 * @param grids for a grid of that room one of this, or {@code none}; one that is not named is met by the nearest ratio
 * @param receptors for a receptor of that room one of this; one that is not named is met by one that takes the field
 */
public record RoomTransfer(
        String fromRoom,
        int fromVersion,
        Optional<String> bodyPart,
        List<String> examinations,
        Scope scope,
        Map<SupportKind, SupportKind> supports,
        Map<String, String> grids,
        Map<String, String> receptors) {

    /** What becomes of rows that the room has already where others would come. */
    public enum Scope {
        /** They stay: only what the room's chart lacks is brought. */
        MISSING("missing"),
        /** Others take their place. */
        ALL("all");

        private final String slug;

        Scope(String slug) {
            this.slug = slug;
        }

        /** The scope of that slug. */
        public static Optional<Scope> find(String slug) {
            return List.of(values()).stream()
                    .filter(scope -> scope.slug.equals(slug))
                    .findFirst();
        }
    }

    public RoomTransfer {
        examinations = List.copyOf(examinations);
        supports = Map.copyOf(supports);
        grids = Map.copyOf(grids);
        receptors = Map.copyOf(receptors);
    }
}
