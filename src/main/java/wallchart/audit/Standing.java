package wallchart.audit;

import java.io.UncheckedIOException;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.store.ReadTx;
import wallchart.store.Sha256;

/** The events from the first on as they stand, sound or not, and a running SHA-256 of the lines that an export has of them. */
final class Standing {

    private final MessageDigest digest = Sha256.begin();
    private final List<String> notes = new ArrayList<>();
    private long events;
    private Optional<Event> last = Optional.empty();

    /** All there are. */
    static Standing of(ReadTx tx) {
        var standing = new Standing();
        new EventStore().walk(tx, Long.MIN_VALUE, event -> {
            standing.take(event);
            return true;
        });
        return standing;
    }

    /** @throws UncheckedIOException if a column holds half a character, which has no bytes of its own */
    void take(Event event) {
        try {
            var line = CharBuffer.wrap(ChainText.line(event) + "\n");
            digest.update(StandardCharsets.UTF_8.newEncoder().encode(line));
        } catch (CharacterCodingException halfACharacter) {
            throw new UncheckedIOException("event " + event.seq() + " holds half a character", halfACharacter);
        }
        events++;
        last = Optional.of(event);
        Resumption.find(event).map(Resumption::note).ifPresent(notes::add);
    }

    long events() {
        return events;
    }

    Optional<Event> last() {
        return last;
    }

    /** What of them whoever checks the ledger is to be told. */
    List<String> notes() {
        return notes;
    }

    /** In hexadecimal; to be asked for once, after the last of them. */
    String digest() {
        return Sha256.hex(digest);
    }
}
