package wallchart;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import wallchart.chart.ChartVersion;
import wallchart.chart.Signature;
import wallchart.chart.VersionHead;
import wallchart.equipment.EquipmentFile;
import wallchart.equipment.EquipmentReading;
import wallchart.equipment.Room;
import wallchart.intake.ChartCsv;

/**
 * A room of the demo department with both its chart versions, read from the files but not stored.
 *
 * @param versions oldest first
 */
public record DemoRoom(Room room, List<ChartVersion> versions) {

    /** All rooms of the demo department. */
    public static List<DemoRoom> all() {
        return List.of(read("r1"), read("r2"), read("r3"));
    }

    private static DemoRoom read(String id) {
        var equipment = EquipmentFile.read(bytes(id + "/equipment.yaml"));
        if (equipment instanceof EquipmentReading.Refused refused) {
            throw new AssertionError(refused.problems().toString());
        }
        var room = ((EquipmentReading.Accepted) equipment).room();
        return new DemoRoom(
                room,
                IntStream.rangeClosed(1, 2)
                        .mapToObj(number -> version(id, number))
                        .toList());
    }

    private static ChartVersion version(String id, int number) {
        var reading =
                ChartCsv.read(bytes(id + "/chart-" + number + ".csv"), bytes(id + "/adjustments-" + number + ".csv"));
        assertThat(reading.findings()).isEmpty();
        var at = Instant.parse("2026-01-05T07:00:00Z");
        var signature = new Signature(1, "A. Lead", "lead", at, "approved for use");
        var head = new VersionHead(
                id, number, "sha256:0", "Demo", "made for a test", at, LocalDate.parse("2027-01-05"), signature);
        return new ChartVersion(head, reading.content());
    }

    private static byte[] bytes(String file) {
        try (var stream = DemoRoom.class.getResourceAsStream("/demo-data/" + file)) {
            assertThat(stream).as(file).isNotNull();
            return stream.readAllBytes();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
