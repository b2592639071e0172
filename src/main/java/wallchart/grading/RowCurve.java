package wallchart.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import wallchart.chart.Band;
import wallchart.quantity.PartThickness;
import wallchart.technique.ExposureArithmetic;

/**
 * The receptor exposure along one band: every 0.5 cm, at the row's reference thickness, and 0.1 cm inside either end, which is the nearest reading of a caliper to the
 * edge on this band's side.
 */
final class RowCurve {

    private static final int STEP = 50;
    private static final int CALIPER = 10;

    /** No query asks beyond 60 cm, and no model reaches there: a band that does was miswritten. */
    private static final long THICKEST = 6000;

    private static final double PER_CENTIMETRE = 100;

    private final List<CurvePoint> points = new ArrayList<>();
    private final List<Unpredicted> gaps = new ArrayList<>();

    private RowCurve() {}

    /** @param reference receptor exposure that is 0 dB */
    static RowCurve of(PlacedRow row, double reference) {
        var curve = new RowCurve();
        for (long hundredths : thicknesses(row.row().key().band(), row.row().referenceThickness())) {
            curve.add(row, hundredths / PER_CENTIMETRE, reference);
        }
        return curve;
    }

    private void add(PlacedRow row, double thickness, double reference) {
        var setting = row.findSetting(thickness);
        if (setting.isEmpty()) {
            missing(thickness, row.findObjection(thickness).orElseThrow());
            return;
        }
        var set = setting.get();
        double decibels = ExposureArithmetic.decibels(row.exposure(set, thickness) / reference);
        points.add(new CurvePoint(thickness, set.kV(), set.mAs(), decibels));
    }

    /** A stretch goes on while nothing was predicted in between. */
    private void missing(double thickness, String objection) {
        boolean first = gaps.isEmpty()
                || !points.isEmpty()
                        && points.get(points.size() - 1).thicknessCm()
                                > gaps.get(gaps.size() - 1).toCm();
        if (first) {
            gaps.add(new Unpredicted(thickness, thickness, objection));
        } else {
            var last = gaps.remove(gaps.size() - 1);
            gaps.add(new Unpredicted(last.fromCm(), thickness, last.reason()));
        }
    }

    List<CurvePoint> points() {
        return points;
    }

    List<Unpredicted> gaps() {
        return gaps;
    }

    /** The whole band, where nothing of it is predicted. */
    static List<Unpredicted> nothing(Band band, String reason) {
        return List.of(new Unpredicted(band.from().inCentimetres(), band.to().inCentimetres(), reason));
    }

    /** In hundredths of a centimetre, which is how thickness is kept; ascending. Beyond the thickest part its ends only. */
    static List<Long> thicknesses(Band band, PartThickness reference) {
        long from = hundredths(band.from());
        long to = hundredths(band.to());
        var found = new TreeSet<Long>();
        Stream.of(from, from + CALIPER, hundredths(reference), to - CALIPER)
                .filter(at -> at >= from && at < to)
                .forEach(found::add);
        for (long at = (from / STEP + 1) * STEP; at < Math.min(to, THICKEST); at += STEP) {
            found.add(at);
        }
        return List.copyOf(found);
    }

    private static long hundredths(PartThickness thickness) {
        return thickness.centimetres().movePointRight(2).longValueExact();
    }
}
