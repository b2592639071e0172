package wallchart;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.print.ReadRow.dense;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.print.ParsedSheet;
import wallchart.print.ReadRow;

/** What stands on the demo's sheets is what the interface says of the version in force, row for row and field for field. */
class DemoSheetsTest {

    private static DemoService demo;
    private static String cookie;

    @BeforeAll
    static void start() {
        demo = DemoService.start(Path.of("target", "demo-sheets"));
        cookie = given().baseUri(demo.address())
                .contentType("application/json")
                .body(Map.of("name", "lead", "password", "demo-lead"))
                .post("/api/v1/session")
                .header("Set-Cookie")
                .split(";")[0];
    }

    @AfterAll
    static void stop() {
        demo.close();
    }

    private static RequestSpecification lead() {
        return given().baseUri(demo.address()).header("Cookie", cookie);
    }

    @ParameterizedTest
    @CsvSource({"r1,a4", "r1,letter", "r2,a4", "r2,letter", "r3,a4", "r3,letter"})
    void every_row_of_the_interface_stands_on_the_sheet(String room, String paper) {
        Response now = lead().get("/api/v1/rooms/" + room);
        int version = now.path("chart.version");
        var sheet = ParsedSheet.of(lead().get("/api/v1/rooms/" + room + "/sheet.pdf?paper=" + paper)
                .asByteArray());
        List<Map<String, Object>> rows = lead().get("/api/v1/charts/" + room + "/versions/" + version + "/rows")
                .path("rows");
        var read = ReadRow.of(sheet);
        assertThat(read).hasSameSizeAs(rows).hasSizeGreaterThan(100);
        var words = Words.of(lead().get("/api/v1/site"), now);
        for (var row : rows) {
            assertThat(read.stream().filter(printed -> isOf(row, printed, words)))
                    .as(room + " " + row.get("key") + " on " + paper)
                    .hasSize(1);
        }
        assertThat(sheet.words(1))
                .contains(
                        "Version " + version + ", in force since",
                        now.<String>path("chart.digest").substring(0, 23),
                        "Review due " + now.path("chart.reviewDue"),
                        "INVENTED. NOT FOR PATIENTS.");
        assertThat(sheet.words()).contains(now.<String>path("chart.digest"), now.<String>path("chart.meaning"));
    }

    /** What the interface calls things, by their ids. */
    private record Words(
            Map<String, String> parts,
            Map<String, String> projections,
            Map<String, String> groups,
            Map<String, String> receptors,
            Map<String, String> targets) {
        static Words of(Response site, Response room) {
            return new Words(
                    map(site, "bodyParts", "bodyPart", "label"),
                    map(site, "projections", "projection", "label"),
                    map(site, "patientGroups", "id", "label"),
                    map(room, "receptors", "id", "name"),
                    map(room, "receptors", "id", "targetExposureIndex"));
        }

        private static Map<String, String> map(Response from, String list, String key, String value) {
            List<Map<String, Object>> entries = from.path(list);
            return entries.stream()
                    .collect(Collectors.toMap(entry -> number(entry.get(key)), entry -> number(entry.get(value))));
        }
    }

    private static boolean isOf(Map<String, Object> row, ReadRow read, Words words) {
        return read.thickness().equals(band(row))
                && dense(read.examination())
                        .equals(dense(words.parts().get(row.get("bodyPart")) + ", "
                                + words.projections().get(row.get("projection"))
                                + String.valueOf(row.get("support")).replace("-", "")))
                && read.section().contains(" – " + words.groups().get(row.get("patientGroup")))
                && read.kV().equals(number(row.get("kV")))
                && exposure(row, read)
                && read.reference().equals(number(row.get("referenceThicknessCm")))
                && read.focalSpot().equals(row.get("focalSpot"))
                && read.sid().equals(number(row.get("sidCm")))
                && grid(row, read)
                && dense(read.receptor())
                        .contains(dense("field " + row.get("fieldCm") + " cm " + row.get("orientation")))
                && dense(read.receptor()).contains(dense(words.receptors().get(row.get("receptor"))))
                && within(row, read, words)
                && words(row, read);
    }

    private static String band(Map<String, Object> row) {
        var ends = (List<?>) row.get("bandCm");
        return number(ends.get(0)) + "–" + number(ends.get(1));
    }

    /** As people write it: 62 and not 62.0. */
    private static String number(Object value) {
        return value instanceof Number
                ? new java.math.BigDecimal(value.toString())
                        .stripTrailingZeros()
                        .toPlainString()
                : String.valueOf(value);
    }

    private static boolean exposure(Map<String, Object> row, ReadRow read) {
        if (!(row.get("aec") instanceof Map<?, ?> aec)) {
            return read.exposure().equals(number(row.get("mAs")) + " mAs")
                    && read.more().isEmpty();
        }
        var chambers = String.join(
                "+",
                ((List<?>) aec.get("chambers")).stream().map(String::valueOf).toList());
        return dense(read.exposure()).equals("AEC" + chambers)
                && read.more()
                        .equals("density " + aec.get("density") + ", back-up " + number(aec.get("backupMAs")) + " mAs");
    }

    private static boolean grid(Map<String, Object> row, ReadRow read) {
        return row.get("grid").equals("none")
                ? read.grid().equals("no grid")
                : dense(read.grid()).endsWith("(" + row.get("grid") + ")");
    }

    private static boolean within(Map<String, Object> row, ReadRow read, Words words) {
        var window = (List<?>) row.get("kVWindow");
        var rate = number(row.get("thicknessRate"));
        var rule =
                switch (String.valueOf(row.get("thicknessMethod"))) {
                    case "kv-per-cm" -> rate + "kVmorepercm";
                    case "mas-per-cm" -> "mAsdoublesper" + rate + "cm";
                    case "fixed" -> "sameoverthewholeband";
                    default -> "mAsfollowsmodelledattenuation";
                };
        var target = row.get("targetExposureIndex");
        var said = dense(read.within());
        return said.startsWith(rule)
                && said.contains("targetEI" + (target == null ? words.targets().get(row.get("receptor")) : target))
                && (window == null || said.contains(number(window.get(0)) + "to" + number(window.get(1)) + "kV"))
                && (row.get("longestTimeMs") == null
                        || said.contains("atmost" + number(row.get("longestTimeMs")) + "ms"))
                && (row.get("addedFiltration").equals("none")
                        || said.contains(dense("filter " + row.get("addedFiltration"))));
    }

    private static boolean words(Map<String, Object> row, ReadRow read) {
        return Map.of(
                        "measureAt",
                        "Measure: ",
                        "centring",
                        "Centre: ",
                        "breathing",
                        "Breathing: ",
                        "shielding",
                        "Shielding: ",
                        "notes",
                        "Notes: ")
                .entrySet()
                .stream()
                .allMatch(field -> String.valueOf(row.get(field.getKey())).isEmpty()
                        || dense(read.words()).contains(dense(field.getValue() + row.get(field.getKey()))));
    }
}
