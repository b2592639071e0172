package wallchart.audit;

import java.util.List;
import java.util.Optional;

/** What comes of checking the ledger against itself, its checkpoints and the records it speaks of. */
public sealed interface Verification {

    /**
     * Everything fits.
     *
     * @param events how many
     * @param head hash of the newest; {@link Event#NONE_BEFORE} of an empty ledger
     * @param since the oldest signed statement that was compared: what was rewritten before its day does not show in any of them
     * @param checkpoint the newest signed statement that was compared
     * @param notes what fits and still deserves a look, such as an event dated before the one it follows
     */
    record Sound(
            long events, String head, Optional<Checkpoint> since, Optional<Checkpoint> checkpoint, List<String> notes)
            implements Verification {
        public Sound {
            notes = List.copyOf(notes);
        }
    }

    /**
     * Something does not fit.
     *
     * @param seq the first event in doubt; 0 where it is a record without an event
     * @param what in words
     */
    record Doubtful(long seq, String what) implements Verification {}
}
