package wallchart;

import java.nio.file.Path;
import picocli.CommandLine.Option;

/** The one option that every command on a site's data has. */
final class ConfigOption {

    @Option(
            names = "--config",
            paramLabel = "FILE",
            required = true,
            description = "The site's settings, such as config/site.yaml; config/site.example.yaml explains every key.")
    private Path file;

    Settings settings() {
        return SettingsFile.read(file);
    }
}
