package wallchart.web.request;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.regex.Pattern;
import wallchart.audit.AuditTrail;
import wallchart.audit.EventOrder;
import wallchart.equipment.Slugs;
import wallchart.equipment.SupportKind;
import wallchart.quantity.Distance;
import wallchart.quantity.PartThickness;
import wallchart.web.request.Parameters.Syntax;

/** How each kind of parameter is written, with its limits. */
public final class Syntaxes {

    private static final int MOST_WHOLE_DIGITS = 4;
    private static final int MOST_DECIMALS = 2;
    private static final BigDecimal THICKEST = new BigDecimal("60");
    private static final BigDecimal SHORTEST_SID = new BigDecimal("40");
    private static final BigDecimal LONGEST_SID = new BigDecimal("400");
    private static final BigDecimal CENTIMETRES_PER_INCH = new BigDecimal("2.54");
    private static final int LONGEST_BODY_PART = 16;
    private static final int LONGEST_INSTANT = 35;
    private static final int MOST_VERSION_DIGITS = 6;
    private static final int MOST_EVENT_DIGITS = 9;
    private static final int MOST_PAGE_DIGITS = 3;
    private static final Pattern ACTOR_NAME = Pattern.compile("[A-Za-z0-9._ -]{1,40}");

    /** Part thickness in centimetres. */
    public static final Syntax<PartThickness> THICKNESS = new Syntax<>(
            "over 0 and at most 60 cm, plain decimal digits such as 12.4, at most 2 decimals", text -> decimal(text)
                    .filter(cm -> cm.signum() > 0 && cm.compareTo(THICKEST) <= 0)
                    .map(PartThickness::new));

    /** Source-to-receptor distance in centimetres. */
    public static final Syntax<Distance> SID_CENTIMETRES = new Syntax<>(
            "40 to 400 cm, plain decimal digits such as 112, at most 2 decimals",
            text -> decimal(text).filter(Syntaxes::isSid).map(Distance::new));

    /** Source-to-receptor distance in inches; 1 in is 2.54 cm exactly (international inch, 1959). */
    public static final Syntax<Distance> SID_INCHES = new Syntax<>(
            "15.75 to 157.48 in (40 to 400 cm), plain decimal digits such as 72, at most 2 decimals",
            text -> decimal(text)
                    .filter(inches -> isSid(inches.multiply(CENTIMETRES_PER_INCH)))
                    .map(Distance::inches));

    /** DICOM Body Part Examined term. */
    public static final Syntax<String> BODY_PART = new Syntax<>(
            "1 to 16 upper-case letters, digits, _ and spaces, a DICOM Body Part Examined term such as KNEE",
            text -> Optional.of(text).filter(Syntaxes::isBodyPart));

    /** Projection, patient group, grid, adjustment, room. */
    public static final Syntax<String> SLUG = new Syntax<>(
            "1 to 32 lower-case letters, digits and hyphens, no hyphen at the ends",
            text -> Optional.of(text).filter(Slugs::isSlug));

    /** Where receptor and patient are. */
    public static final Syntax<SupportKind> SUPPORT =
            new Syntax<>("one of tabletop, table-bucky, wall-bucky, mobile", SupportKind::find);

    /** An instant with its offset, RFC 3339. */
    public static final Syntax<Instant> INSTANT = new Syntax<>(
            "RFC 3339 with seconds and offset, such as 2026-09-14T08:00:00Z or 2026-09-14T10:00:00%2B02:00",
            Syntaxes::instant);

    /** Number of a version. */
    public static final Syntax<Integer> VERSION = new Syntax<>("a version number: 1 to 999999", Syntaxes::version);

    /** Number of an event, or 0 for before the first. */
    public static final Syntax<Long> EVENT =
            new Syntax<>("the number of an event, 0 to 999999999", text -> number(text, MOST_EVENT_DIGITS)
                    .map(Integer::longValue));

    /** How many events a page holds. */
    public static final Syntax<Integer> PAGE =
            new Syntax<>("1 to " + AuditTrail.LONGEST_PAGE + " events", text -> number(text, MOST_PAGE_DIGITS)
                    .filter(limit -> limit >= 1 && limit <= AuditTrail.LONGEST_PAGE));

    /** Which events come first. */
    public static final Syntax<EventOrder> EVENT_ORDER = new Syntax<>("oldest or newest", EventOrder::find);

    /** The name somebody signs in with, or the program's own. */
    public static final Syntax<String> ACTOR =
            new Syntax<>("a name of 1 to 40 letters, digits, spaces, dots, - and _", text -> Optional.of(text)
                    .filter(name -> ACTOR_NAME.matcher(name).matches()));

    private Syntaxes() {}

    private static boolean isSid(BigDecimal cm) {
        return cm.compareTo(SHORTEST_SID) >= 0 && cm.compareTo(LONGEST_SID) <= 0;
    }

    /** One to four digits, then perhaps a point and one or two more; nothing else, not even a sign. */
    private static Optional<BigDecimal> decimal(String text) {
        int point = text.indexOf('.');
        int whole = point < 0 ? text.length() : point;
        int decimals = point < 0 ? 0 : text.length() - point - 1;
        boolean shaped = whole >= 1
                && whole <= MOST_WHOLE_DIGITS
                && decimals <= MOST_DECIMALS
                && (point < 0 || decimals > 0)
                && areDigits(text, 0, whole)
                && areDigits(text, whole + 1, text.length());
        return shaped ? Optional.of(new BigDecimal(text)) : Optional.empty();
    }

    private static boolean areDigits(String text, int from, int to) {
        for (int i = from; i < to; i++) {
            if (text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return true;
    }

    private static boolean isBodyPart(String text) {
        return !text.isEmpty()
                && text.length() <= LONGEST_BODY_PART
                && text.charAt(0) >= 'A'
                && text.charAt(0) <= 'Z'
                && text.chars().allMatch(c -> c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_' || c == ' ');
    }

    private static Optional<Instant> instant(String text) {
        boolean hasSeconds = text.length() > 18
                && text.length() <= LONGEST_INSTANT
                && text.charAt(4) == '-' // a year of four digits, so no sign before it
                && text.charAt(16) == ':';
        try {
            return hasSeconds ? Optional.of(OffsetDateTime.parse(text).toInstant()) : Optional.empty();
        } catch (DateTimeException notAnInstant) {
            return Optional.empty();
        }
    }

    private static Optional<Integer> version(String text) {
        return number(text, MOST_VERSION_DIGITS).filter(number -> number > 0);
    }

    /** Digits without a leading zero, or 0 itself. */
    static Optional<Integer> number(String text, int mostDigits) {
        boolean shaped = !text.isEmpty()
                && text.length() <= mostDigits
                && (text.charAt(0) != '0' || text.length() == 1)
                && areDigits(text, 0, text.length());
        return shaped ? Optional.of(Integer.valueOf(text)) : Optional.empty();
    }
}
