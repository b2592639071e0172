package wallchart.print;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wallchart.print.ParsedSheet.Piece;

/**
 * One row of a chart as somebody reads it from a printed sheet: by the heads of the columns, and by what stands under them.
 *
 * @param section region and group above it
 * @param cells what stands in each column, blanks left out where a line was broken
 * @param words what stands beside it: where to measure, centring, breathing, shielding, notes
 */
public record ReadRow(int page, String section, Map<Column, String> cells, String more, String words) {

    public String examination() {
        return cells.get(Column.EXAMINATION);
    }

    public String thickness() {
        return cells.get(Column.THICKNESS);
    }

    public String kV() {
        return cells.get(Column.KV);
    }

    public String exposure() {
        return cells.get(Column.EXPOSURE);
    }

    public String reference() {
        return cells.get(Column.REFERENCE);
    }

    public String focalSpot() {
        return cells.get(Column.FOCAL_SPOT);
    }

    public String grid() {
        return cells.get(Column.GRID);
    }

    public String sid() {
        return cells.get(Column.SID);
    }

    public String receptor() {
        return cells.get(Column.RECEPTOR);
    }

    public String within() {
        return cells.get(Column.WITHIN);
    }

    /** A text without blanks, as lines may be broken anywhere. */
    public static String dense(String text) {
        return text.replaceAll("\\s", "");
    }

    /** Every row of a sheet. */
    public static List<ReadRow> of(ParsedSheet sheet) {
        var reader = new Reader();
        sheet.pieces().forEach(reader::read);
        reader.endBlock();
        return reader.rows;
    }

    /** Reads pieces in the order in which they were placed. */
    private static final class Reader {

        private static final String CLOSING = "Named adjustments of this version";
        private static final double NEAR = 0.6;

        private final List<ReadRow> rows = new ArrayList<>();
        private final Map<Column, Double> places = new EnumMap<>(Column.class);
        private final List<Map<Column, String>> bands = new ArrayList<>();
        private final List<String> mores = new ArrayList<>();
        private final Map<Column, String> beside = new EnumMap<>(Column.class);
        private final StringBuilder words = new StringBuilder();
        private String section = "";
        private String heading = "";
        private Column last;
        private boolean inWords;
        private boolean closed;
        private int page;

        void read(Piece piece) {
            if (closed || piece.words().isBlank()) {
                return;
            }
            if (piece.words().equals(CLOSING)) {
                endBlock();
                closed = true;
                return;
            }
            if (piece.page() != page) {
                endBlock();
                page = piece.page();
                places.clear();
            }
            if (isHead(piece)) {
                endBlock();
                if (piece.words().equals("Examination")) {
                    places.clear();
                    section = heading;
                }
                places.putIfAbsent(column(piece), piece.x());
                return;
            }
            heading = piece.words();
            if (places.size() == Column.values().length) {
                cell(piece);
            }
        }

        private static boolean isHead(Piece piece) {
            return piece.bold() && piece.size() == Style.HEAD.size() && column(piece) != null;
        }

        private static Column column(Piece piece) {
            for (var column : Column.values()) {
                var begin = column.head("cm").split("[ ,]")[0];
                if (piece.words().startsWith(begin)) {
                    return column;
                }
            }
            return null;
        }

        private void cell(Piece piece) {
            var column = places.entrySet().stream()
                    .filter(place -> Math.abs(place.getValue() - piece.x()) < NEAR)
                    .map(Map.Entry::getKey)
                    .findFirst()
                    .orElse(null);
            boolean title = piece.bold() && piece.size() == Style.TITLE.size();
            boolean set = piece.size() == Style.SET.size();
            if (column == Column.EXAMINATION) {
                if (title && last != Column.EXAMINATION) {
                    endBlock();
                }
                add(beside, column, piece);
            } else if (column == Column.THICKNESS && set) {
                bands.add(new EnumMap<>(Column.class));
                mores.add("");
                add(bands.get(bands.size() - 1), column, piece);
            } else if (column == Column.EXPOSURE && !set && !inWords && !bands.isEmpty()) {
                mores.set(mores.size() - 1, mores.get(mores.size() - 1) + " " + piece.words());
            } else if (column != null && column.compareTo(Column.FOCAL_SPOT) < 0 && !bands.isEmpty()) {
                add(bands.get(bands.size() - 1), column, piece);
            } else if (column != null && !inWords && (column != Column.FOCAL_SPOT || title)) {
                add(beside, column, piece);
            } else {
                inWords = true;
                words.append(' ').append(piece.words());
            }
            last = inWords ? null : column;
        }

        private static void add(Map<Column, String> cells, Column column, Piece piece) {
            cells.merge(column, piece.words(), (before, next) -> before + " " + next);
        }

        void endBlock() {
            for (int i = 0; i < bands.size(); i++) {
                var cells = new EnumMap<>(beside);
                cells.putAll(bands.get(i));
                rows.add(new ReadRow(page, section, cells, mores.get(i).strip(), words.toString()));
            }
            bands.clear();
            mores.clear();
            beside.clear();
            words.setLength(0);
            inWords = false;
            last = null;
        }
    }
}
