package wallchart.audit;

import java.time.Instant;
import java.util.Optional;

/**
 * What the keeper remembers of the file of checkpoints, so that the ten thousandth costs it no more than the first. For one
 * thread.
 *
 * <p>Each look compares length, instant of the last change and identity of the file, and the public key, with those remembered.
 * Where one of them is another, and at every {@value #WHOLE_EVERY}th look in any case, the file is read again: what was read
 * before must stand there byte for byte, and signatures are verified only of what came after it. So a file that was changed,
 * shortened or replaced is noticed at the next look; by {@value #WHOLE_EVERY} looks later, a minute, even if its length and the
 * instant of its change were set back.
 */
final class CheckpointWatch {

    static final int WHOLE_EVERY = 60;

    private final Checkpoints file;
    private final CheckpointReading reading;
    private Optional<Checkpoints.State> seen = Optional.empty();
    private int looks;
    private int readings;

    CheckpointWatch(Checkpoints file) {
        this.file = file;
        this.reading = new CheckpointReading(file);
    }

    /** Looks at the file; says what is in doubt. */
    Optional<String> findDoubt() {
        var now = Optional.of(file.state());
        if (now.equals(seen) && ++looks < WHOLE_EVERY) {
            return Optional.empty();
        }
        looks = 0;
        readings++;
        var doubt = reading.goOn(each -> {});
        seen = doubt.isEmpty() ? now : Optional.empty();
        return doubt;
    }

    /** The newest checkpoint at the last look, or added since. */
    Optional<Checkpoint> newest() {
        return reading.newest();
    }

    /** Signs and keeps one more; if the file is not as long then as it must be, the next look reads it. */
    void add(long seq, String hash, Instant at) {
        reading.remember(file.add(seq, hash, at));
        seen = Optional.of(file.state()).filter(now -> now.length() == reading.bytes());
    }

    /** How often the file was read, for whoever counts. */
    int readings() {
        return readings;
    }
}
