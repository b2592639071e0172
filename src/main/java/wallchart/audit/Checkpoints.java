package wallchart.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The file of checkpoints with its key, in a folder outside the database: one line for each, oldest first, each safe on disk
 * before the next is thought of. For one thread at a time.
 */
public final class Checkpoints {

    private static final String FILE = "checkpoints.ndjson";

    private final Path folder;

    public Checkpoints(Path folder) {
        this.folder = folder;
    }

    /** Every checkpoint, oldest first, or which of them is in doubt. */
    sealed interface Reading {

        record Signed(List<Checkpoint> checkpoints) implements Reading {
            Optional<Checkpoint> newest() {
                return checkpoints.isEmpty() ? Optional.empty() : Optional.of(checkpoints.get(checkpoints.size() - 1));
            }
        }

        record Doubted(String what) implements Reading {}
    }

    Reading read() {
        try {
            var file = folder.resolve(FILE);
            if (!Files.exists(file)) {
                return new Reading.Signed(List.of());
            }
            return read(wholeLines(Files.readString(file)));
        } catch (IOException unreadable) {
            return new Reading.Doubted("the checkpoints in " + folder + " cannot be read: " + unreadable.getMessage());
        }
    }

    /** A last line that a crash cut short was never relied on. */
    private static List<String> wholeLines(String text) {
        return text.substring(0, text.lastIndexOf('\n') + 1).lines().toList();
    }

    private Reading read(List<String> lines) throws IOException {
        var key = LedgerKey.find(folder);
        var checkpoints = new ArrayList<Checkpoint>();
        long before = -1;
        for (int i = 0; i < lines.size(); i++) {
            var line = lines.get(i);
            var checkpoint = parsed(line)
                    .filter(one -> key.filter(ours -> ours.signed(one)).isPresent());
            if (checkpoint.isEmpty() || checkpoint.get().seq() <= before) {
                return new Reading.Doubted("checkpoint " + (i + 1) + " in " + folder + " is not what was signed there");
            }
            before = checkpoint.get().seq();
            checkpoints.add(checkpoint.get());
        }
        return new Reading.Signed(checkpoints);
    }

    private static Optional<Checkpoint> parsed(String line) {
        try {
            return Optional.of(Checkpoint.ofLine(line));
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }

    /** Signs and keeps a statement of that head; the key is made where there is none. */
    Checkpoint add(long seq, String hash, Instant at) {
        try {
            Files.createDirectories(folder);
            var key = LedgerKey.findOrMake(folder);
            var checkpoint = key.sign(new Checkpoint(seq, hash, at, key.id(), ""));
            append(checkpoint.line() + "\n");
            return checkpoint;
        } catch (IOException failed) {
            throw new UncheckedIOException("no checkpoint can be written to " + folder, failed);
        }
    }

    private void append(String line) throws IOException {
        try (var file = FileChannel.open(
                folder.resolve(FILE), StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            file.truncate(endOfLastLine(file));
            file.position(file.size());
            var bytes = ByteBuffer.wrap(line.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                file.write(bytes);
            }
            file.force(true);
        }
    }

    private static long endOfLastLine(FileChannel file) throws IOException {
        var one = ByteBuffer.allocate(1);
        long end = file.size();
        while (end > 0) {
            one.clear();
            file.read(one, end - 1);
            if (one.get(0) == '\n') {
                return end;
            }
            end--;
        }
        return 0;
    }
}
