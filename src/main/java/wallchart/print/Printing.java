package wallchart.print;

import java.time.Instant;
import java.util.Optional;
import wallchart.audit.Checkpoint;

/**
 * One act of printing, as the sheet tells it.
 *
 * @param sheet the sheet's number
 * @param address of the page that says whether the sheet is still current; empty where nobody knows what phones reach
 * @param at when
 * @param by who, by the name that is printed
 * @param checkpoint newest signed statement of the ledger's head, where there is one
 * @param invented whether the department is a demonstration
 */
record Printing(
        SheetNumber sheet,
        Optional<String> address,
        Instant at,
        String by,
        Optional<Checkpoint> checkpoint,
        boolean invented) {}
