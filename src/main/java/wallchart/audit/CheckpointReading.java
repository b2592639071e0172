package wallchart.audit;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import wallchart.store.Sha256;

/**
 * A reading of the file of checkpoints that can be gone on with: what was read before must still stand there byte for byte, and
 * signatures are verified only of what came after it. For one thread.
 */
final class CheckpointReading {

    private static final int BUFFER = 64 * 1024;

    private final Checkpoints file;
    private final MessageDigest digest = Sha256.begin();
    private long bytes;
    private long count;
    private Optional<Checkpoint> newest = Optional.empty();
    private Optional<String> keyId = Optional.empty();

    CheckpointReading(Checkpoints file) {
        this.file = file;
    }

    /** How many bytes of the file were read and found to be signed. */
    long bytes() {
        return bytes;
    }

    /** How many signatures were verified, or made by this process. */
    long count() {
        return count;
    }

    Optional<Checkpoint> newest() {
        return newest;
    }

    /**
     * Reads the file from its beginning.
     *
     * @param each is handed the checkpoints that were not there before, oldest first
     * @return what is in doubt
     */
    Optional<String> goOn(Consumer<Checkpoint> each) {
        try (var in = file.open()) {
            if (!startsAsBefore(in)) {
                return Optional.of("the checkpoints in " + file.folder() + " are not those that stood there before: "
                        + count + " of them were changed, removed or replaced");
            }
            var key = LedgerKey.find(file.folder());
            if (count > 0 && !key.map(LedgerKey::id).equals(keyId)) {
                return Optional.of("the key in " + file.folder() + " is not the one that signed the checkpoints there");
            }
            return take(wholeLines(in.readAllBytes()), key, each);
        } catch (IOException unreadable) {
            return Optional.of("the checkpoints in " + file.folder() + " cannot be read: " + unreadable.getMessage());
        }
    }

    private boolean startsAsBefore(InputStream in) throws IOException {
        var now = Sha256.begin();
        var buffer = new byte[BUFFER];
        long left = bytes;
        while (left > 0) {
            int read = in.read(buffer, 0, (int) Math.min(left, BUFFER));
            if (read < 0) {
                return false;
            }
            now.update(buffer, 0, read);
            left -= read;
        }
        return Arrays.equals(now.digest(), Sha256.soFar(digest));
    }

    /** A last line that a crash cut short was never relied on. */
    private static String wholeLines(byte[] rest) {
        var text = new String(rest, StandardCharsets.UTF_8);
        return text.substring(0, text.lastIndexOf('\n') + 1);
    }

    private Optional<String> take(String lines, Optional<LedgerKey> key, Consumer<Checkpoint> each) {
        for (var line : lines.isEmpty() ? new String[0] : lines.split("\n")) {
            var checkpoint = parsed(line)
                    .filter(one -> key.filter(ours -> ours.signed(one)).isPresent())
                    .filter(one -> one.seq() > newest.map(Checkpoint::seq).orElse(-1L));
            if (checkpoint.isEmpty()) {
                return Optional.of(
                        "checkpoint " + (count + 1) + " in " + file.folder() + " is not what was signed there");
            }
            remember(checkpoint.get());
            each.accept(checkpoint.get());
        }
        return Optional.empty();
    }

    private static Optional<Checkpoint> parsed(String line) {
        try {
            return Optional.of(Checkpoint.ofLine(line));
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    /** Takes note of the next checkpoint in the file. */
    void remember(Checkpoint next) {
        var line = (next.line() + "\n").getBytes(StandardCharsets.UTF_8);
        digest.update(line);
        bytes += line.length;
        count++;
        newest = Optional.of(next);
        keyId = Optional.of(next.keyId());
    }
}
