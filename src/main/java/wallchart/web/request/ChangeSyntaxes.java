package wallchart.web.request;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Pattern;
import wallchart.chart.Band;
import wallchart.quantity.PartThickness;
import wallchart.signoff.ChangeKind;
import wallchart.signoff.ChangeState;
import wallchart.web.request.Parameters.Syntax;

/** How what belongs to a change is written in an address or a body. */
public final class ChangeSyntaxes {

    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]{0,17}");
    private static final Pattern DAY_DIGITS = Pattern.compile("2[0-9]{3}-[0-9]{2}-[0-9]{2}");
    private static final Pattern TERM_LETTERS = Pattern.compile("[A-Za-z0-9_-]{1,32}");
    private static final Pattern BAND_ENDS =
            Pattern.compile("([0-9]{1,12}(?:\\.[0-9]{1,2})?)-([0-9]{1,12}(?:\\.[0-9]{1,2})?)");
    private static final Pattern DIGEST_HEX = Pattern.compile("sha256:[0-9a-f]{64}");
    private static final int MOST_PAGE_DIGITS = 3;
    private static final int MOST_CHANGES = 500;

    /** Where a change stands. */
    public static final Syntax<ChangeState> STATE = new Syntax<>(
            "one of drafting, submitted, returned, signed, declined, withdrawn", text -> ChangeState.find(text));

    /** The way somebody chooses for a change; a revert is prepared, never chosen. */
    public static final Syntax<ChangeKind> KIND =
            new Syntax<>("ordinary, or fast-track for safety", text -> ChangeKind.find(text)
                    .filter(kind -> kind != ChangeKind.REVERT));

    /** Number of a change. */
    public static final Syntax<Long> CHANGE =
            new Syntax<>("the number of a change: from 1, at most 18 digits", text -> Optional.of(text)
                    .filter(digits -> NUMBER.matcher(digits).matches())
                    .map(Long::valueOf));

    /** How many changes a page holds. */
    public static final Syntax<Integer> PAGE =
            new Syntax<>("1 to " + MOST_CHANGES + " changes", text -> Syntaxes.number(text, MOST_PAGE_DIGITS)
                    .filter(limit -> limit >= 1 && limit <= MOST_CHANGES));

    /** Yes or no. */
    public static final Syntax<Boolean> TRUTH = new Syntax<>(
            "true or false",
            text -> text.equals("true") || text.equals("false")
                    ? Optional.of(Boolean.valueOf(text))
                    : Optional.empty());

    /** Body part, projection or patient group of a row, however wrong: what can be written can be taken back. */
    public static final Syntax<String> TERM =
            new Syntax<>("1 to 32 letters, digits, - and _, as it stands in the row's key", text -> Optional.of(text)
                    .filter(term -> TERM_LETTERS.matcher(term).matches()));

    /** A band as it stands in a row's key. */
    public static final Syntax<Band> BAND = new Syntax<>(
            "from and to in cm, such as 10-13 or 4.5-8, the upper end over the lower", ChangeSyntaxes::band);

    /** An instant with its offset, RFC 3339, that a calendar of this department may hold. */
    public static final Syntax<Instant> INSTANT = new Syntax<>(
            "RFC 3339 with seconds and offset, such as 2026-09-14T08:00:00Z, years 2000 to 2999",
            text -> text.startsWith("2") ? Syntaxes.INSTANT.read(text) : Optional.empty());

    /** A calendar day. */
    public static final Syntax<LocalDate> DAY =
            new Syntax<>("a day such as 2027-01-31, years 2000 to 2999", text -> day(text));

    /** Digest of an impact. */
    public static final Syntax<String> DIGEST =
            new Syntax<>("sha256: and 64 hex digits, as the impact has it", text -> Optional.of(text)
                    .filter(digest -> DIGEST_HEX.matcher(digest).matches()));

    private ChangeSyntaxes() {}

    private static Optional<Band> band(String text) {
        var ends = BAND_ENDS.matcher(text);
        if (!ends.matches()) {
            return Optional.empty();
        }
        var from = PartThickness.centimetres(ends.group(1));
        var to = PartThickness.centimetres(ends.group(2));
        return from.compareTo(to) < 0 ? Optional.of(new Band(from, to)) : Optional.empty();
    }

    private static Optional<LocalDate> day(String text) {
        try {
            return DAY_DIGITS.matcher(text).matches() ? Optional.of(LocalDate.parse(text)) : Optional.empty();
        } catch (DateTimeException noSuchDay) {
            return Optional.empty();
        }
    }
}
