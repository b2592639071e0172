package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import wallchart.Program.Ended;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.intake.ChartCsv;

/** A site of three small rooms whose charts are changed all the time: two radiographers propose, two leads sign, a physicist looks. */
record SigningSite(SiteFolder folder) {

    static final List<String> ROOMS = List.of("s1", "s2", "s3");
    static final List<String> AUTHORS = List.of("robin", "jamie");
    static final List<String> LEADS = List.of(SiteFolder.LEAD, "charlie");
    static final String PHYSICIST = "morgan";

    private static final Path EXAMPLE = Path.of("demo-data/r1");
    private static final String KNEE = "KNEE,ap,adult,";

    /** Sets the site up in an empty folder, each step in its own process, as its administrator does. */
    static SigningSite found(Path folder) throws IOException {
        var site = SiteFolder.withSettings(folder);
        for (var room : ROOMS) {
            writeRoom(folder.resolve("department").resolve(room), room);
        }
        done(site.addLead());
        done(site.add(LEADS.get(1), "Charlie Example", "lead"));
        done(site.add(AUTHORS.get(0), "Robin Example", "radiographer"));
        done(site.add(AUTHORS.get(1), "Jamie Example", "radiographer"));
        done(site.add(PHYSICIST, "Morgan Example", "physicist"));
        done(site.load(SiteFolder.PASSWORD));
        return new SigningSite(site);
    }

    private static void writeRoom(Path folder, String room) throws IOException {
        Files.createDirectories(folder);
        var equipment = Files.readString(EXAMPLE.resolve("equipment.yaml"));
        Files.writeString(folder.resolve("equipment.yaml"), equipment.replaceFirst("(?m)^room: .*$", "room: " + room));
        Files.writeString(folder.resolve("chart.csv"), chart());
        Files.writeString(
                folder.resolve("chart.yaml"),
                "versions:\n  - {rows: chart.csv, title: Knees, reason: Techniques agreed for this room}\n");
    }

    /** The knees of an example room. */
    private static String chart() throws IOException {
        var lines = new ArrayList<String>();
        for (var line : Files.readAllLines(EXAMPLE.resolve("chart-1.csv"))) {
            if (lines.isEmpty() || line.startsWith(KNEE)) {
                lines.add(line);
            }
        }
        return String.join("\n", lines) + "\n";
    }

    /** The rows of every room, each by its key with its fields. */
    static List<Map.Entry<String, Map<String, String>>> rows() throws IOException {
        var reading = ChartCsv.readRows(chart().getBytes(StandardCharsets.UTF_8));
        assertThat(reading.findings()).isEmpty();
        return reading.content().rows().stream().map(SigningSite::fields).toList();
    }

    private static Map.Entry<String, Map<String, String>> fields(Row row) {
        return Map.entry(row.key().toString(), RowFields.of(row));
    }

    private static void done(Ended ended) {
        assertThat(ended.exitCode()).as(ended.toString()).isZero();
    }

    SigningSite copyTo(Path other) throws IOException {
        return new SigningSite(folder.copyTo(other));
    }
}
