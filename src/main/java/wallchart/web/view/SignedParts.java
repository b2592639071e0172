package wallchart.web.view;

import com.fasterxml.jackson.databind.util.RawValue;
import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.LoadingCache;
import wallchart.chart.Row;
import wallchart.chart.VersionHead;

/**
 * The parts of an answer that were signed, as JSON: the row and the head of its version. They make half of an answer and never
 * change, so each is written once and forgotten together with the version it belongs to.
 *
 * <p>Thread-safe. A row is known by its identity: a new version read from the database has rows of its own.
 */
public final class SignedParts {

    private static final int MOST_ROOMS = 10_000;

    private final LoadingCache<Row, RawValue> rows =
            Caffeine.newBuilder().weakKeys().build(row -> Json.writtenOnce(RowView.of(row)));
    private final LoadingCache<VersionHead, RawValue> heads =
            Caffeine.newBuilder().weakKeys().build(head -> Json.writtenOnce(ChartHeadView.of(head)));
    private final Cache<String, Written> standing =
            Caffeine.newBuilder().maximumSize(MOST_ROOMS).build();

    private record Written(String text, RawValue json) {}

    RawValue row(Row row) {
        return rows.get(row);
    }

    RawValue head(VersionHead head) {
        return heads.get(head);
    }

    /** The caution that stands under every answer of a room; it is long, and the same each time. */
    RawValue standing(String room, String caution) {
        var known = standing.getIfPresent(room);
        if (known == null || !known.text().equals(caution)) {
            known = new Written(caution, Json.writtenOnce(caution));
            standing.put(room, known);
        }
        return known.json();
    }
}
