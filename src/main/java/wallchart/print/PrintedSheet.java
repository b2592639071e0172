package wallchart.print;

import java.time.Instant;
import java.util.Optional;

/**
 * One line of the register: a sheet that was printed, and whether it was taken down.
 *
 * @param version of the room's chart that stands on it
 * @param digest of that version's content
 * @param equipment revision of the room's equipment that stands on it
 * @param printedAt the instant that stands on it
 * @param printedBy who, as the ledger names them
 * @param printedName who, as the sheet names them
 * @param role what they were then
 */
public record PrintedSheet(
        SheetNumber number,
        String room,
        int version,
        String digest,
        int equipment,
        PaperSize paper,
        Selection selection,
        Instant printedAt,
        String printedBy,
        String printedName,
        String role,
        Optional<TakenDown> takenDown) {

    /** When somebody took it from the wall, and who. */
    public record TakenDown(Instant at, String by) {}
}
