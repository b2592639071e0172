package wallchart.equipment;

import java.util.List;
import wallchart.quantity.FieldSize;

/**
 * An image receptor of the room, or a set of cassettes of one kind.
 *
 * @param id short name on this site
 * @param name name for people
 * @param kind what it is made of
 * @param sizes the sizes it comes in, at least one
 * @param targetExposureIndex target exposure index EI_T (IEC 62494-1), 10 to 10000, where a row names no other
 */
public record Receptor(String id, String name, ReceptorKind kind, List<FieldSize> sizes, int targetExposureIndex) {

    public Receptor {
        Slugs.require("receptor id", id);
        if (sizes.isEmpty()) {
            throw new IllegalArgumentException("receptor " + id + " has no size: give at least one");
        }
        if (targetExposureIndex < 10 || targetExposureIndex > 10_000) {
            throw new IllegalArgumentException(
                    "target exposure index is " + targetExposureIndex + ": it lies within 10 and 10000");
        }
        sizes = List.copyOf(sizes);
    }

    /** Whether a collimated field, or a cassette, of that size fits one of the receptor's sizes. */
    public boolean takes(FieldSize field) {
        return sizes.stream().anyMatch(field::fitsIn);
    }
}
