package wallchart.equipment;

import java.time.Instant;

/**
 * One state of a room's equipment, from the instant it was installed until the next.
 *
 * @param number 1, 2, 3 … within the room
 * @param digest {@code sha256:} and the hex digest of the canonical document
 * @param inForceFrom the instant it was installed
 * @param installedBy who installed it, as recorded
 * @param room the room as it then was
 */
public record RoomRevision(int number, String digest, Instant inForceFrom, String installedBy, Room room) {}
