package wallchart.audit;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import wallchart.store.OwnersTables.Column;

/** Values that somebody could put into a column in the place of the one that stands there; not always other ones. */
final class OtherValues {

    private final Random random;

    OtherValues(Random random) {
        this.random = random;
    }

    /** @param neighbours what stands in other rows of that column */
    Object insteadOf(Object value, Column column, List<Object> neighbours) {
        int choice = random.nextInt(6);
        if (choice == 0) {
            return null;
        }
        return choice <= 2 ? neighbours.get(random.nextInt(neighbours.size())) : invented(value, column);
    }

    private Object invented(Object value, Column column) {
        return switch (column.type()) {
            case "TIMESTAMP WITH TIME ZONE" -> instant(value);
            case "DATE" ->
                (value == null ? LocalDate.of(2026, 3, 2) : (LocalDate) value).plusDays(1 + random.nextInt(400));
            case "INTEGER" -> (value == null ? 1 : (Integer) value) + step();
            case "BIGINT" -> (value == null ? 1L : (Long) value) + step();
            case "NUMERIC" ->
                (value == null ? BigDecimal.ONE : (BigDecimal) value).add(BigDecimal.valueOf(step(), column.scale()));
            default -> text(value);
        };
    }

    private int step() {
        int size = random.nextBoolean() ? 1 : 1 + random.nextInt(1_000);
        return random.nextBoolean() ? size : -size;
    }

    private OffsetDateTime instant(Object value) {
        var from = value == null ? OffsetDateTime.of(2026, 3, 2, 8, 0, 0, 0, ZoneOffset.UTC) : (OffsetDateTime) value;
        return random.nextBoolean() ? from.plusNanos(1_000L * step()) : from.plusSeconds(step() * 60L);
    }

    private String text(Object value) {
        var from = value == null ? "x" : value.toString();
        return switch (random.nextInt(4)) {
            case 0 -> from + (char) ('a' + random.nextInt(26));
            case 1 -> from.isEmpty() ? " " : from.substring(1);
            case 2 ->
                from.equals(from.toUpperCase(Locale.ROOT))
                        ? from.toLowerCase(Locale.ROOT)
                        : from.toUpperCase(Locale.ROOT);
            default -> random.nextBoolean() ? "lead" : "other";
        };
    }

    /** The value with one bit changed; the smallest step where the column has no bits of its own. */
    Object flipped(Object value) {
        if (value instanceof Integer number) {
            return number ^ 1 << random.nextInt(8);
        }
        if (value instanceof Long number) {
            return number ^ 1L << random.nextInt(8);
        }
        if (value instanceof BigDecimal number) {
            return new BigDecimal(number.unscaledValue().flipBit(random.nextInt(6)), number.scale());
        }
        if (value instanceof OffsetDateTime at) {
            return at.plusNanos(1_000L << random.nextInt(12));
        }
        if (value instanceof LocalDate day) {
            return day.plusDays(1L << random.nextInt(4));
        }
        return value == null || value.toString().isEmpty() ? value : flipped(value.toString());
    }

    private String flipped(String text) {
        var characters = text.toCharArray();
        int at = random.nextInt(characters.length);
        do {
            characters[at] = (char) (text.charAt(at) ^ 1 << random.nextInt(7));
        } while (characters[at] < ' '); // a control character may be refused by the database
        return new String(characters);
    }
}
