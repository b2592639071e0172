package wallchart;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.Refusals.Refused;
import wallchart.document.DocumentReading;
import wallchart.document.Documents;
import wallchart.equipment.EquipmentDocument;
import wallchart.intake.ChartCsv;
import wallchart.intake.ChartReading;

/**
 * A folder that describes a department: one folder for each room with {@code equipment.yaml}, {@code chart.yaml} and the CSV files
 * that it names. Only reads; loading is {@link DepartmentLoader}'s.
 */
final class DepartmentFolder {

    private final Path folder;

    DepartmentFolder(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new Refused(folder + " is not a folder: name one that holds a folder for each room");
        }
        this.folder = folder;
    }

    /** One room's files. */
    record RoomFiles(String room, EquipmentDocument equipment, List<VersionFiles> versions) {}

    /** One version's files, read. */
    record VersionFiles(String name, DepartmentDocument.VersionPart version, ChartReading reading) {}

    /** The rooms in alphabetical order of their folders. */
    List<RoomFiles> rooms() {
        try (Stream<Path> entries = Files.list(folder)) {
            var rooms = new ArrayList<RoomFiles>();
            for (var entry : entries.filter(Files::isDirectory).sorted().toList()) {
                rooms.add(room(entry));
            }
            if (rooms.isEmpty()) {
                throw new Refused(folder + " holds no room: make a folder with equipment.yaml for each");
            }
            return rooms;
        } catch (IOException failed) {
            throw new Refused(folder + " cannot be read: " + failed.getMessage());
        }
    }

    /** The demo's people; empty where the folder names none. */
    List<DepartmentDocument.PersonPart> people() {
        var file = folder.resolve("people.yaml");
        return Files.exists(file) ? read(file, DepartmentDocument.People.class).people() : List.of();
    }

    /** The demo's later measurements; empty where the folder names none. */
    List<DepartmentDocument.MeasurementPart> measurements() {
        var file = folder.resolve("measurements.yaml");
        return Files.exists(file)
                ? read(file, DepartmentDocument.Measurements.class).measurements()
                : List.of();
    }

    /** The demo's later changes; empty where the folder names none. */
    List<DepartmentDocument.ChangePart> changes() {
        var file = folder.resolve("changes.yaml");
        return Files.exists(file) ? read(file, DepartmentDocument.Changes.class).changes() : List.of();
    }

    private static RoomFiles room(Path entry) throws IOException {
        var equipment = read(entry.resolve("equipment.yaml"), EquipmentDocument.class);
        var chart = entry.resolve("chart.yaml");
        var versions = new ArrayList<VersionFiles>();
        if (Files.exists(chart)) {
            var parts = Optional.ofNullable(
                    read(chart, DepartmentDocument.Chart.class).versions());
            for (var part : parts.orElse(List.of())) {
                versions.add(version(entry, chart, part));
            }
        }
        return new RoomFiles(String.valueOf(equipment.room()), equipment, List.copyOf(versions));
    }

    private static VersionFiles version(Path entry, Path chart, DepartmentDocument.VersionPart part)
            throws IOException {
        if (part.rows() == null || part.title() == null || part.reason() == null) {
            throw new Refused(chart + ": each version needs rows, title and reason");
        }
        var rows = bytes(entry.resolve(part.rows()));
        var reading = part.adjustments() == null
                ? ChartCsv.readRows(rows)
                : ChartCsv.read(rows, bytes(entry.resolve(part.adjustments())));
        return new VersionFiles(entry.getFileName() + "/" + part.rows(), part, reading);
    }

    private static byte[] bytes(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            throw new Refused(file + " does not exist: check the name in chart.yaml");
        }
        return Files.readAllBytes(file);
    }

    private static <T> T read(Path file, Class<T> shape) {
        var reading = Documents.yaml(file, shape);
        if (reading instanceof DocumentReading.Unreadable<T> unreadable) {
            throw new Refused(file + " " + unreadable.field() + " " + unreadable.message());
        }
        return ((DocumentReading.Written<T>) reading).content();
    }
}
