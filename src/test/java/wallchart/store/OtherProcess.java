package wallchart.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.lang.ProcessBuilder.Redirect;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** A second Java process with this one's class path, which a test may kill at any moment. */
public final class OtherProcess implements AutoCloseable {

    private final Process process;
    private final BufferedReader output;

    private OtherProcess(Process process) {
        this.process = process;
        this.output = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    public static OtherProcess start(Class<?> main, String... arguments) throws IOException {
        var java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        var classPath = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        var command = new ArrayList<>(List.of(java, "-cp", classPath, main.getName()));
        command.addAll(List.of(arguments));
        return new OtherProcess(
                new ProcessBuilder(command).redirectError(Redirect.INHERIT).start());
    }

    /** The next line it printed; waits for one. */
    public String readLine() throws IOException {
        return Objects.requireNonNull(output.readLine(), "the other process ended without a word");
    }

    /** Kills it without warning and returns the complete lines it had still printed. */
    List<String> kill() throws IOException {
        process.toHandle().destroyForcibly(); // unlike the process's own method this leaves its output readable
        var text = new StringBuilder();
        for (int character = output.read(); character >= 0; character = output.read()) {
            text.append((char) character);
        }
        var complete = text.substring(0, text.lastIndexOf("\n") + 1);
        return complete.lines().toList();
    }

    /** Waits until it ends by itself, and returns its exit code. */
    public int ended() throws InterruptedException {
        return process.waitFor();
    }

    @Override
    public void close() {
        process.destroyForcibly();
        process.onExit().join();
    }
}
