package wallchart.chart;

import com.github.benmanes.caffeine.cache.Interner;

/**
 * Rows and parts of rows that read alike, held once: rooms of a network share most of their charts, versions of a room nearly all.
 * A thousand charts then take little more memory than one, and the processor's caches hold what is asked often.
 *
 * <p>Thread-safe. What no chart holds any more is forgotten.
 */
final class SharedRows {

    private final Interner<Row> rows = Interner.newWeakInterner();
    private final Interner<RowKey> keys = Interner.newWeakInterner();
    private final Interner<RowSetting> settings = Interner.newWeakInterner();
    private final Interner<Positioning> words = Interner.newWeakInterner();

    private final Interner<RowIndex> charts = Interner.newWeakInterner();

    /** A row equal to that one. */
    Row of(Row row) {
        return rows.intern(new Row(
                keys.intern(row.key()),
                row.referenceThickness(),
                settings.intern(row.setting()),
                words.intern(row.positioning())));
    }

    /** That content, ready to be looked up; the same for all rooms whose charts say the same. */
    RowIndex of(ChartContent content) {
        return charts.intern(new RowIndex(content));
    }
}
