package wallchart.intake;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import wallchart.chart.Finding;

/**
 * A comma-separated file (RFC 4180, UTF-8, a byte order mark is tolerated) with exactly the given header, as lines of named texts.
 *
 * @param lines the lines that have as many cells as the header
 * @param findings why the file, or a line of it, cannot be used
 */
record CsvTable(List<Line> lines, List<Finding> findings) {

    private static final int MOST_BYTES = 5_000_000;
    private static final int MOST_LINES = 20_000;
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();

    /** One line below the header, by the number an editor shows. */
    record Line(long number, Map<String, String> cells) {

        String place() {
            return "line " + number;
        }
    }

    static CsvTable read(String file, byte[] bytes, List<String> header) {
        var reading = new Reading(new ArrayList<>(), new ArrayList<>());
        if (bytes.length > MOST_BYTES) {
            reading.refuse("", file + " has " + bytes.length + " bytes, at most " + MOST_BYTES + " are read: split it");
        } else {
            reading.decode(file, bytes, header);
        }
        return new CsvTable(List.copyOf(reading.lines), List.copyOf(reading.findings));
    }

    private record Reading(List<Line> lines, List<Finding> findings) {

        void refuse(String place, String reason) {
            findings.add(Finding.blocking(place, "", reason));
        }

        void decode(String file, byte[] bytes, List<String> header) {
            try {
                var text = StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes))
                        .toString();
                parse(file, text.startsWith("\ufeff") ? text.substring(1) : text, header);
            } catch (CharacterCodingException notUtf8) {
                refuse("", file + " is not UTF-8: save it as \"CSV UTF-8\" and read it again");
            } catch (IOException | UncheckedIOException | IllegalStateException malformed) {
                refuse(
                        "",
                        file + " breaks off after line "
                                + (lines.isEmpty()
                                        ? 1
                                        : lines.get(lines.size() - 1).number())
                                + ": a quotation mark is not closed, or text follows a closing one");
            }
        }

        private void parse(String file, String text, List<String> header) throws IOException {
            try (var parser = CSVParser.parse(text, FORMAT)) {
                var records = parser.iterator();
                if (!records.hasNext() || !records.next().toList().equals(header)) {
                    refuse("line 1", file + " must begin with the line " + String.join(",", header));
                    return;
                }
                var position = new Position(text);
                for (int taken = 0; records.hasNext(); taken++) {
                    if (taken == MOST_LINES) {
                        refuse("", file + " has more than " + MOST_LINES + " lines: split it");
                        return;
                    }
                    take(records.next(), header, position);
                }
            }
        }

        private void take(CSVRecord cells, List<String> header, Position position) {
            long number = position.lineAt(cells.getCharacterPosition());
            if (cells.size() != header.size()) {
                refuse(
                        "line " + number,
                        "has " + cells.size() + " cells, the header has " + header.size()
                                + ": a comma inside a text needs quotation marks around the text");
                return;
            }
            var named = new LinkedHashMap<String, String>();
            for (int i = 0; i < header.size(); i++) {
                named.put(header.get(i), cells.get(i));
            }
            lines.add(new Line(number, named));
        }
    }

    /** Counts lines as an editor does while the parser moves on; a line inside quotation marks counts too. */
    private static final class Position {

        private final String text;
        private int at;
        private long line = 1;

        Position(String text) {
            this.text = text;
        }

        long lineAt(long start) {
            while (at < text.length() && (at < start || isEnd(text.charAt(at)))) {
                char current = text.charAt(at++);
                boolean pair = current == '\r' && at < text.length() && text.charAt(at) == '\n';
                line += isEnd(current) && !pair ? 1 : 0;
            }
            return line;
        }

        private static boolean isEnd(char character) {
            return character == '\n' || character == '\r';
        }
    }
}
