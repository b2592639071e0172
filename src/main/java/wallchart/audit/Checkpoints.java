package wallchart.audit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.store.Sha256;

/**
 * The file of checkpoints with its key, in a folder outside the database: one line for each, oldest first, each safe on disk
 * before the next is thought of. One thread writes, others may read meanwhile.
 */
public final class Checkpoints {

    private static final String FILE = "checkpoints.ndjson";

    /** Much more than a checkpoint takes. */
    private static final int LONGEST_LINE = 4096;

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

    /** Reads and verifies all of them. */
    Reading read() {
        var checkpoints = new ArrayList<Checkpoint>();
        return new CheckpointReading(this)
                .goOn(checkpoints::add)
                .<Reading>map(Reading.Doubted::new)
                .orElseGet(() -> new Reading.Signed(checkpoints));
    }

    /** The newest of them, if its key signed it; the others are not looked at. */
    Optional<Checkpoint> findNewest() {
        try {
            var last = lastLine();
            var key = LedgerKey.find(folder);
            return last.isEmpty() || key.isEmpty()
                    ? Optional.empty()
                    : Optional.of(Checkpoint.ofLine(last)).filter(key.get()::signed);
        } catch (IOException | IllegalArgumentException unreadable) {
            return Optional.empty(); // the ledger's keeper finds out what is wrong
        }
    }

    /** The last whole line; empty where there is none. */
    private String lastLine() throws IOException {
        if (!Files.exists(folder.resolve(FILE))) {
            return "";
        }
        try (var file = FileChannel.open(folder.resolve(FILE), StandardOpenOption.READ)) {
            long end = endOfLastLine(file);
            long begin = Math.max(0, end - LONGEST_LINE);
            var bytes = ByteBuffer.allocate((int) (end - begin));
            while (bytes.hasRemaining() && file.read(bytes, begin + bytes.position()) >= 0) {
                // goes on where it stopped
            }
            var lines = new String(bytes.array(), StandardCharsets.UTF_8).strip();
            return lines.substring(lines.lastIndexOf('\n') + 1);
        }
    }

    Path folder() {
        return folder;
    }

    /** The file as bytes; none where nothing was signed yet. */
    InputStream open() throws IOException {
        var file = folder.resolve(FILE);
        return Files.exists(file) ? Files.newInputStream(file) : InputStream.nullInputStream();
    }

    /**
     * What a look at the folder shows without reading the file.
     *
     * @param length in bytes; -1 where there is no file
     * @param changed when it was last written to, as the file system says
     * @param identity of the file itself, where the file system has such a thing: another after a replacement
     * @param key the public key beside it, as it is written there
     */
    record State(long length, Instant changed, String identity, String key) {}

    State state() {
        try {
            var key = LedgerKey.text(folder);
            if (!Files.exists(folder.resolve(FILE))) {
                return new State(-1, Instant.EPOCH, "", key);
            }
            var file = Files.readAttributes(folder.resolve(FILE), BasicFileAttributes.class);
            return new State(file.size(), file.lastModifiedTime().toInstant(), String.valueOf(file.fileKey()), key);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the checkpoints in " + folder + " cannot be looked at", unreadable);
        }
    }

    /** Signs and keeps a statement of that head; the key is made where there is none. */
    Checkpoint add(long seq, String hash, Instant at) {
        try {
            Files.createDirectories(folder);
            var key = LedgerKey.findOrMake(folder);
            var checkpoint = key.sign(new Checkpoint(seq, hash, at, key.id(), ""));
            append(folder.resolve(FILE), checkpoint.line() + "\n");
            return checkpoint;
        } catch (IOException failed) {
            throw new UncheckedIOException("no checkpoint can be written to " + folder, failed);
        }
    }

    /**
     * A file of checkpoints that no longer fits, kept beside its key for whoever looks into the doubt.
     *
     * @param digest SHA-256 of the file in hexadecimal
     */
    record PutAside(String name, String digest) {}

    /** The file as it would be put aside now; empty where there is none. */
    Optional<PutAside> findToPutAside() {
        try {
            if (!Files.exists(folder.resolve(FILE))) {
                return Optional.empty();
            }
            var digest = Sha256.hex(Files.readAllBytes(folder.resolve(FILE)));
            return Optional.of(new PutAside("checkpoints-" + digest + ".ndjson", digest));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("the checkpoints in " + folder + " cannot be read", unreadable);
        }
    }

    /** Signs a statement of that head with the key that is there, and keeps it nowhere. */
    Checkpoint sign(long seq, String hash, Instant at) {
        try {
            var key = LedgerKey.find(folder)
                    .orElseThrow(() -> new IOException("there is no key: restore the folder from a backup"));
            var checkpoint = key.sign(new Checkpoint(seq, hash, at, key.id(), ""));
            if (!key.signed(checkpoint)) {
                throw new IOException("private and public key are no pair: restore them from a backup");
            }
            return checkpoint;
        } catch (IOException failed) {
            throw new UncheckedIOException("no checkpoint can be signed in " + folder, failed);
        }
    }

    /** Puts the file aside and begins another; whatever happens meanwhile, one of the two stands there. */
    void beginAnew(Checkpoint first, Optional<PutAside> old) {
        try {
            var next = folder.resolve(FILE + ".next");
            Files.deleteIfExists(next);
            append(next, first.line() + "\n");
            if (old.isPresent()) {
                Files.copy(folder.resolve(FILE), folder.resolve(old.get().name()), StandardCopyOption.REPLACE_EXISTING);
            }
            Files.move(next, folder.resolve(FILE), StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException failed) {
            throw new UncheckedIOException("the checkpoints in " + folder + " cannot be begun anew", failed);
        }
    }

    private static void append(Path to, String line) throws IOException {
        try (var file =
                FileChannel.open(to, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
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
