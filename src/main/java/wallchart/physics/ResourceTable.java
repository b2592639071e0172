package wallchart.physics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** A table file shipped with the program: comment lines give source and unit, the first other line names the columns. */
final class ResourceTable {

    private final String name;
    private final List<String> columns;
    private final List<String[]> rows;

    private ResourceTable(String name, List<String[]> lines) {
        this.name = name;
        this.columns = Arrays.asList(lines.get(0));
        this.rows = lines.subList(1, lines.size());
    }

    /** @param name file name below {@code physics/} on the class path */
    static ResourceTable read(String name) {
        var stream = ResourceTable.class.getResourceAsStream("/physics/" + name);
        if (stream == null) {
            throw new IllegalStateException("physics table " + name + " is missing from the program: rebuild it");
        }
        try (var reader = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            return new ResourceTable(
                    name,
                    reader.lines()
                            .filter(line -> !line.startsWith("#"))
                            .map(line -> line.split(",", -1))
                            .toList());
        } catch (IOException unreadable) {
            throw new UncheckedIOException("physics table " + name + " cannot be read", unreadable);
        }
    }

    int size() {
        return rows.size();
    }

    List<String> texts(String column) {
        int index = columns.indexOf(column);
        if (index < 0) {
            throw new IllegalStateException("physics table " + name + " has no column " + column + ", only " + columns);
        }
        return rows.stream().map(row -> row[index]).toList();
    }

    double[] numbers(String column) {
        return texts(column).stream().mapToDouble(Double::parseDouble).toArray();
    }

    /** A column of a table that has exactly one row for each energy bin, in order. */
    PerEnergy perEnergy(String column) {
        var energies = numbers("energy_keV");
        var values = numbers(column);
        for (int bin = 0; bin < Math.max(energies.length, EnergyBins.COUNT); bin++) {
            if (bin >= energies.length || energies[bin] != EnergyBins.energyOf(bin)) {
                throw new IllegalStateException("physics table " + name + " lacks the row for "
                        + EnergyBins.energyOf(bin) + " keV at its place");
            }
        }
        return PerEnergy.of(bin -> values[bin]);
    }
}
