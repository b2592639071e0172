package wallchart.print;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import wallchart.chart.Adjustment;
import wallchart.chart.Band;
import wallchart.chart.ThicknessMethod;
import wallchart.quantity.Decimals;
import wallchart.quantity.FieldSize;
import wallchart.quantity.LengthUnit;

/**
 * Numbers and rules as a sheet writes them, lengths in the site's unit. Inches have two decimals, sizes of receptors one: the ends of
 * a band then never move by more than an eighth of a millimetre.
 */
record SheetWords(LengthUnit unit) {

    private static final BigDecimal CENTIMETRES_PER_INCH = new BigDecimal("2.54");
    private static final int DECIMALS = 2;
    private static final int SIZE_DECIMALS = 1;
    private static final DateTimeFormatter MOMENT =
            DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm 'UTC'", Locale.ROOT).withZone(ZoneOffset.UTC);

    static String moment(Instant at) {
        return MOMENT.format(at);
    }

    static String spoken(String slug) {
        return slug.replace('-', ' ');
    }

    /** A length without its unit. */
    String length(BigDecimal centimetres) {
        return length(centimetres, DECIMALS);
    }

    private String length(BigDecimal centimetres, int decimals) {
        return Decimals.plain(
                unit == LengthUnit.INCH
                        ? centimetres.divide(CENTIMETRES_PER_INCH, decimals, RoundingMode.HALF_UP)
                        : centimetres);
    }

    String withUnit(BigDecimal centimetres) {
        return length(centimetres) + " " + unit.symbol();
    }

    String band(Band band) {
        return length(band.from().centimetres()) + "–" + length(band.to().centimetres());
    }

    String field(FieldSize field) {
        return length(field.widthCentimetres(), SIZE_DECIMALS) + "x" + length(field.lengthCentimetres(), SIZE_DECIMALS)
                + " " + unit.symbol();
    }

    String rule(ThicknessMethod method) {
        if (method instanceof ThicknessMethod.KilovoltsPerCentimetre kV) {
            return Decimals.plain(perUnit(kV.kVPerCm())) + " kV more per " + unit.symbol() + " more";
        }
        if (method instanceof ThicknessMethod.CentimetresPerDoubling doubling) {
            return "mAs doubles per " + withUnit(doubling.cmPerDoubling());
        }
        return method instanceof ThicknessMethod.Fixed
                ? "same over the whole band"
                : "mAs follows modelled attenuation";
    }

    private BigDecimal perUnit(BigDecimal perCentimetre) {
        return unit == LengthUnit.INCH
                ? perCentimetre.multiply(CENTIMETRES_PER_INCH).setScale(DECIMALS, RoundingMode.HALF_UP)
                : perCentimetre;
    }

    static String effect(Adjustment.Effect effect) {
        if (effect instanceof Adjustment.AddKilovolts added) {
            return (added.kV().signum() > 0 ? "+" : "") + Decimals.plain(added.kV()) + " kV";
        }
        return "mAs x " + Decimals.plain(((Adjustment.MultiplyCurrentTime) effect).factor());
    }
}
