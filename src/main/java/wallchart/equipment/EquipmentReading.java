package wallchart.equipment;

import java.util.List;

/** What comes of reading an equipment document: a possible room, or every reason why it is none. */
public sealed interface EquipmentReading {

    /** The document describes a possible room. */
    record Accepted(Room room) implements EquipmentReading {}

    /** The document describes no possible room. */
    record Refused(List<Problem> problems) implements EquipmentReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /**
     * One thing that is wrong.
     *
     * @param field JSON Pointer (RFC 6901) into the document
     * @param message what, the value, the limit
     */
    record Problem(String field, String message) {
        @Override
        public String toString() {
            return field + ": " + message;
        }
    }
}
