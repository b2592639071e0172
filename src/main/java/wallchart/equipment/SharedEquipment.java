package wallchart.equipment;

import com.github.benmanes.caffeine.cache.Interner;
import java.util.List;

/**
 * Parts of rooms that are equal, held once: a network buys the same generator, tube and grids many times. The processor's caches
 * then hold what every answer needs.
 *
 * <p>Thread-safe. What no room holds any more is forgotten.
 */
final class SharedEquipment {

    private final Interner<Generator> generators = Interner.newWeakInterner();
    private final Interner<Tube> tubes = Interner.newWeakInterner();
    private final Interner<List<Grid>> grids = Interner.newWeakInterner();
    private final Interner<List<Receptor>> receptors = Interner.newWeakInterner();
    private final Interner<List<Support>> supports = Interner.newWeakInterner();

    /** A room equal to that one. */
    Room of(Room room) {
        return new Room(
                room.id(),
                room.name(),
                generators.intern(room.generator()),
                tubes.intern(room.tube()),
                grids.intern(room.grids()),
                receptors.intern(room.receptors()),
                supports.intern(room.supports()));
    }
}
