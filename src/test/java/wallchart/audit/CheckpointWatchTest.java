package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.store.Sha256;

/** What somebody does to the file of checkpoints while the service runs is noticed, and looking costs the same however long it is. */
class CheckpointWatchTest {

    private static final Instant AT = Instant.parse("2026-03-02T08:00:00Z");
    private static final String HASH = Sha256.hex("an event");

    @TempDir
    private Path folder;

    private Path file;
    private CheckpointWatch watch;

    @BeforeEach
    void three_checkpoints_that_were_looked_at() {
        file = folder.resolve("checkpoints.ndjson");
        var checkpoints = new Checkpoints(folder);
        for (int seq = 1; seq <= 3; seq++) {
            checkpoints.add(seq, HASH, AT);
        }
        watch = new CheckpointWatch(checkpoints);
        assertThat(watch.findDoubt()).isEmpty();
        assertThat(watch.newest().orElseThrow().seq()).isEqualTo(3);
    }

    @Test
    void a_changed_file_is_noticed_at_the_next_look() throws IOException {
        Files.writeString(file, Files.readString(file).replace("2026", "2025"));
        noticed("3 of them were changed, removed or replaced");
    }

    @Test
    void a_shortened_file_is_noticed_although_what_is_left_is_signed() throws IOException {
        var text = Files.readString(file);
        Files.writeString(file, text.substring(0, text.indexOf('\n') + 1));
        assertThat(new Checkpoints(folder).read()).isInstanceOf(Checkpoints.Reading.Signed.class);
        noticed("3 of them were changed, removed or replaced");
    }

    @Test
    void a_removed_file_is_noticed() throws IOException {
        Files.delete(file);
        noticed("3 of them were changed, removed or replaced");
    }

    @Test
    void a_file_replaced_by_another_that_is_signed_is_noticed() throws IOException {
        Files.delete(file);
        new Checkpoints(folder).add(3, Sha256.hex("another event"), AT);
        noticed("3 of them were changed, removed or replaced");
    }

    @Test
    void a_line_that_nobody_signed_is_noticed() throws IOException {
        Files.writeString(file, Files.readString(file) + "{}\n");
        noticed("checkpoint 4 in " + folder + " is not what was signed there");
    }

    @Test
    void another_key_beside_the_same_file_is_noticed() throws IOException {
        new Checkpoints(folder.resolve("other")).add(1, HASH, AT);
        Files.copy(
                folder.resolve("other/ledger.pub"),
                folder.resolve("ledger.pub"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        noticed("is not the one that signed the checkpoints there");
    }

    @Test
    void a_change_with_its_instant_set_back_is_noticed_within_a_minute_of_looks() throws IOException {
        var changed = Files.getLastModifiedTime(file);
        var bytes = Files.readAllBytes(file);
        bytes[20] ^= 1;
        Files.write(file, bytes);
        Files.setLastModifiedTime(file, changed);
        int looks = 1;
        while (looks <= CheckpointWatch.WHOLE_EVERY && watch.findDoubt().isEmpty()) {
            looks++;
        }
        assertThat(looks).isLessThanOrEqualTo(CheckpointWatch.WHOLE_EVERY);
    }

    @Test
    void a_file_that_was_only_touched_is_read_once_more_and_trusted() throws IOException {
        Files.setLastModifiedTime(file, FileTime.from(AT));
        assertThat(watch.findDoubt()).isEmpty();
        assertThat(watch.findDoubt()).isEmpty();
        assertThat(watch.readings()).isEqualTo(2);
    }

    @Test
    void its_own_checkpoints_are_not_read_again_and_somebody_elses_line_beside_them_is() throws IOException {
        watch.add(4, HASH, AT);
        assertThat(watch.findDoubt()).isEmpty();
        assertThat(watch.readings()).isEqualTo(1);
        Files.writeString(file, Files.readString(file) + "{}\n");
        watch.add(5, HASH, AT);
        noticed("5 of them were changed, removed or replaced");
    }

    @Test
    void a_line_that_a_crash_cut_short_is_no_doubt() throws IOException {
        Files.writeString(file, Files.readString(file) + "{\"at\":");
        assertThat(watch.findDoubt()).isEmpty();
        watch.add(4, HASH, AT);
        assertThat(((Checkpoints.Reading.Signed) new Checkpoints(folder).read()).checkpoints())
                .hasSize(4);
        assertThat(watch.findDoubt()).isEmpty();
    }

    @Test
    void a_thousand_checkpoints_make_no_look_dearer() throws IOException {
        write(1_000);
        var longFile = new CheckpointWatch(new Checkpoints(folder));
        assertThat(longFile.findDoubt()).isEmpty();
        assertThat(longFile.newest().orElseThrow().seq()).isEqualTo(1_000);
        for (int seq = 1_001; seq <= 1_061; seq++) {
            longFile.add(seq, HASH, AT);
            assertThat(longFile.findDoubt()).isEmpty();
        }
        assertThat(longFile.readings())
                .as("at the first look, and once a minute")
                .isEqualTo(2);
    }

    private void write(int count) throws IOException {
        var key = LedgerKey.findOrMake(folder);
        var lines = new StringBuilder();
        for (int seq = 1; seq <= count; seq++) {
            lines.append(key.sign(new Checkpoint(seq, HASH, AT, key.id(), "")).line())
                    .append('\n');
        }
        Files.write(file, lines.toString().getBytes(StandardCharsets.UTF_8));
    }

    private void noticed(String what) {
        assertThat(watch.findDoubt().orElseThrow()).contains(what);
    }
}
