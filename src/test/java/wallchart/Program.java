package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;

/** A program in a process of its own, above all the built jar, started in a folder as the one who runs a site starts it. */
final class Program implements AutoCloseable {

    private static final Path JAR = Path.of("target/wallchart.jar").toAbsolutePath();
    private static final Path TEST_CLASSES = Path.of("target/test-classes").toAbsolutePath();
    private static final String START_SOONER = "-XX:TieredStopAtLevel=1";
    private static final Duration PATIENCE = Duration.ofSeconds(120);
    private static final int POLL_MS = 20;

    private final Process process;
    private final Path out;
    private final Path err;

    private Program(Process process, Path out, Path err) {
        this.process = process;
        this.out = out;
        this.err = err;
    }

    /** What a program said and how it ended. */
    record Ended(int exitCode, String out, String err) {}

    /** The command line that runs the built jar. */
    static List<String> jar(String... args) {
        assertThat(JAR).as("the jar that mvn package builds").exists();
        var command = new ArrayList<>(List.of(java(), START_SOONER, "-jar", JAR.toString()));
        command.addAll(List.of(args));
        return command;
    }

    /** The command line that runs a main class of the tests, with the built jar beside it. */
    static List<String> besideJar(Class<?> main, String... args) {
        assertThat(JAR).as("the jar that mvn package builds").exists();
        var classPath = JAR + File.pathSeparator + TEST_CLASSES;
        var command = new ArrayList<>(List.of(java(), START_SOONER, "-cp", classPath, main.getName()));
        command.addAll(List.of(args));
        return command;
    }

    private static String java() {
        return Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** Starts a program in that folder, with that text on its standard input. */
    static Program start(Path folder, String input, List<String> command) throws IOException {
        var files = Files.createTempDirectory("program");
        var in = Files.writeString(files.resolve("in"), input);
        var out = files.resolve("out");
        var err = files.resolve("err");
        var process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectInput(in.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile())
                .start();
        return new Program(process, out, err);
    }

    /** Runs a program to its end. */
    static Ended run(Path folder, String input, List<String> command) throws IOException {
        try (var program = start(folder, input, command)) {
            return program.ended(PATIENCE);
        }
    }

    /** Waits until it has printed what matches, and returns that. */
    String await(String pattern) throws IOException {
        return await(pattern, PATIENCE);
    }

    String await(String pattern, Duration patience) throws IOException {
        long end = System.nanoTime() + patience.toNanos();
        while (System.nanoTime() < end) {
            boolean over = !process.isAlive();
            var found = Pattern.compile(pattern).matcher(out());
            if (found.find()) {
                return found.group();
            }
            if (over) {
                break;
            }
            pause();
        }
        throw new AssertionError("never printed " + pattern + "\nout: " + out() + "\nerr: " + err());
    }

    private static void pause() {
        try {
            Thread.sleep(POLL_MS);
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted while waiting");
        }
    }

    /** Asks it to end, as a service supervisor or Ctrl+C does, and waits. */
    Ended terminate() throws IOException {
        process.toHandle().destroy();
        return ended(PATIENCE);
    }

    /** Ends it without warning, as a power cut does. */
    Ended kill() throws IOException {
        process.toHandle().destroyForcibly();
        return ended(PATIENCE);
    }

    private Ended ended(Duration patience) throws IOException {
        try {
            assertThat(process.waitFor(patience.toMillis(), TimeUnit.MILLISECONDS))
                    .as("it ends within %s; out: %s err: %s", patience, out(), err())
                    .isTrue();
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
            throw new AssertionError("interrupted while waiting");
        }
        return new Ended(process.exitValue(), out(), err());
    }

    private String out() throws IOException {
        return Files.readString(out);
    }

    private String err() throws IOException {
        return Files.readString(err);
    }

    @Override
    public void close() throws IOException {
        process.descendants().forEach(ProcessHandle::destroyForcibly);
        process.destroyForcibly();
        process.onExit().join();
        for (var name : List.of("in", "out", "err", ".")) {
            Files.deleteIfExists(out.resolveSibling(name).normalize());
        }
    }
}
