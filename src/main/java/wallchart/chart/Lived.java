package wallchart.chart;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.Optional;

/**
 * A row or an adjustment with the versions that had it.
 *
 * @param introducedIn the first
 * @param retiredIn the first that did not have it any more; empty while the newest has it
 */
record Lived<T>(int introducedIn, Optional<Integer> retiredIn, T value) {

    static <T> Lived<T> of(ResultSet rows, T value) throws SQLException {
        return new Lived<>(
                rows.getInt("introduced_in"), Optional.ofNullable(rows.getObject("retired_in", Integer.class)), value);
    }

    boolean isIn(int version) {
        return introducedIn <= version
                && retiredIn.filter(retired -> retired <= version).isEmpty();
    }

    /** The same life of something else, such as its written form. */
    <R> Lived<R> as(R other) {
        return new Lived<>(introducedIn, retiredIn, other);
    }
}
