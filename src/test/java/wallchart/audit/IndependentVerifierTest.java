package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

/** The developers' page says how to check an export without this program, in Python; its lines are run as they stand there. */
class IndependentVerifierTest extends OnEveryDatabase {

    private static final Pattern PROGRAM = Pattern.compile("```python\\n(.*?)```", Pattern.DOTALL);
    private static final int MOST_LINES = 15;

    @TempDir
    private Path folder;

    private final Ledger ledger = new Ledger();
    private final List<String> lines = new ArrayList<>();

    @BeforeEach
    void an_export_of_texts_that_programs_like_to_write_differently() {
        for (var reason :
                List.of("", "plain", "\"quoted\" \\ / \t \u0001 \u007f", "Röntgen µGy €", "line\u2028separator 𝒳")) {
            var details = Map.of("number", 3, "negative", -7, "mAs", "12.50", "list", List.of(1, true, "ü"));
            database()
                    .run(
                            Actor.person(7, "lead", "lead"),
                            tx -> ledger.append(
                                    tx, Act.inRoom("r1", "version-signed", "r1/version/1", reason, details)));
        }
        new AuditTrail(database(), new Checkpoints(folder.resolve("ledger")), List.of()).export(lines::add);
    }

    @Test
    void it_is_at_most_fifteen_lines() throws IOException {
        assertThat(program().lines().count()).isLessThanOrEqualTo(MOST_LINES);
    }

    @Test
    void it_finds_a_sound_export_sound() throws Exception {
        var head = ((Verification.Sound)
                        new AuditTrail(database(), new Checkpoints(folder.resolve("ledger")), List.of()).verify())
                .head();
        assertThat(run()).isEqualTo("0: 5 events, head " + head);
    }

    @Test
    void it_names_an_event_that_was_changed() throws Exception {
        lines.set(2, lines.get(2).replace("12.50", "13.50"));
        assertThat(run()).isEqualTo("1: event 3 does not say what was entered");
    }

    @Test
    void it_names_an_event_that_is_missing() throws Exception {
        lines.remove(1);
        assertThat(run()).isEqualTo("1: event 2 does not follow the one before");
    }

    private String run() throws IOException, InterruptedException {
        var script = Files.writeString(folder.resolve("verify.py"), program());
        var export = Files.write(folder.resolve("ledger.ndjson"), lines);
        var process = new ProcessBuilder("python3", script.toString(), export.toString())
                .redirectErrorStream(true)
                .start();
        var said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        return process.exitValue() + ": " + said.strip();
    }

    private static String program() throws IOException {
        var found = PROGRAM.matcher(Files.readString(Path.of("DEVELOPERS.md")));
        assertThat(found.find()).isTrue();
        return found.group(1);
    }
}
