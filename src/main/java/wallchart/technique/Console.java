package wallchart.technique;

import java.util.List;
import wallchart.chart.ExposureControl;
import wallchart.chart.Row;
import wallchart.equipment.FocalSpot;
import wallchart.equipment.Generator;
import wallchart.equipment.Room;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.Decimals;
import wallchart.quantity.ExposureTime;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;
import wallchart.technique.ConsoleAttempt.Achieved;
import wallchart.technique.ConsoleAttempt.Impossible;
import wallchart.technique.ConsoleAttempt.Wish;

/** Rules 6 to 8: the limits and stations of one room's console for one row. Immutable. */
final class Console {

    private final Room room;
    private final Row row;
    private final Generator generator;

    Console(Room room, Row row) {
        this.room = room;
        this.row = row;
        this.generator = room.generator();
    }

    double lowestKilovolts() {
        return row.setting().lowestKilovolts(generator.kV());
    }

    double highestKilovolts() {
        return row.setting().highestKilovolts(generator.kV());
    }

    /** Rule 6: kV within the row's window and the generator's range, the mAs making up for it. */
    Working limit(Working exact) {
        double kV = Math.max(lowestKilovolts(), Math.min(highestKilovolts(), exact.kV()));
        return kV == exact.kV()
                ? exact
                : new Working(kV, exact.mAs() * ExposureArithmetic.voltageFactor(exact.kV(), kV));
    }

    /** Rules 6, 7 and 8. */
    ConsoleAttempt attempt(Wish wish) {
        var limited = limit(wish.exact());
        var station = generator.kV().nearest(limited.kV(), lowestKilovolts(), highestKilovolts());
        if (station.isEmpty()) {
            return new Impossible(List.of("no kV station of room " + room.id() + " lies between "
                    + Words.number(lowestKilovolts()) + " and " + Words.number(highestKilovolts()) + " kV"));
        }
        double mAs = limited.mAs()
                * ExposureArithmetic.voltageFactor(limited.kV(), station.get().inKilovolts());
        if (generator.mAs().isAbove(mAs)) {
            return new Impossible(List.of(Words.number(mAs) + " mAs is over the generator's largest, "
                    + generator.mAs().largest()));
        }
        if (generator.mAs().isBelow(mAs)) {
            return new Impossible(List.of(Words.number(mAs) + " mAs is under the generator's smallest, "
                    + generator.mAs().smallest()));
        }
        var spot = room.tube().find(wish.focalSpot());
        if (spot.isEmpty()) {
            return new Impossible(List.of("the tube of room " + room.id() + " has no "
                    + wish.focalSpot().slug() + " focal spot"));
        }
        return row.setting().control() instanceof ExposureControl.Automatic automatic
                ? automatic(automatic, station.get(), mAs, limited, wish)
                : manual(spot.get(), station.get(), mAs, limited, wish);
    }

    private ConsoleAttempt automatic(
            ExposureControl.Automatic control, TubeVoltage kV, double backup, Working limited, Wish wish) {
        var station = generator.mAs().nearest(backup);
        var limit = generator.automaticExposureControl().map(aec -> aec.largestBackup());
        if (limit.isPresent() && station.compareTo(limit.get()) > 0) {
            return new Impossible(
                    List.of("back-up " + Words.number(backup) + " mAs is over the AEC's largest, " + limit.get()));
        }
        var set = new ConsoleSetting.Automatic(
                kV, new ExposureControl.Automatic(control.chambers(), control.density(), station), wish.focalSpot());
        return new Achieved(set, limited, backup, deviation(station, backup));
    }

    private ConsoleAttempt manual(FocalSpot spot, TubeVoltage kV, double mAs, Working limited, Wish wish) {
        var station = generator.mAs().nearest(mAs);
        var current = generator.largestCurrent(spot, kV, station);
        if (current.isEmpty()) {
            return new Impossible(List.of(noCurrentFits(spot, kV, station)));
        }
        var time = station.timeAt(current.get());
        var longest = row.setting().longestTime();
        if (longest.isPresent() && time.compareTo(longest.get()) > 0) {
            return new Impossible(List.of(tooLong(wish, kV, station, current.get(), time, longest.get())));
        }
        var set = new ConsoleSetting.Manual(kV, station, current.get(), time, wish.focalSpot());
        return new Achieved(set, limited, mAs, deviation(station, mAs));
    }

    private static double deviation(CurrentTimeProduct station, double mAs) {
        return ExposureArithmetic.decibels(station.inMilliampereSeconds() / mAs);
    }

    private String noCurrentFits(FocalSpot spot, TubeVoltage kV, CurrentTimeProduct mAs) {
        return "no mA station makes " + mAs + " at " + kV + " on the "
                + spot.name().slug() + " focal spot within its rating (" + spot.longestTime() + " at the longest) in "
                + generator.shortestTime() + " or more";
    }

    private static String tooLong(
            Wish wish,
            TubeVoltage kV,
            CurrentTimeProduct mAs,
            TubeCurrent current,
            ExposureTime time,
            ExposureTime longest) {
        return mAs + " at " + kV + " on the " + wish.focalSpot().slug() + " focal spot takes "
                + Decimals.plain(time.milliseconds()) + " ms at " + current + ", the row allows " + longest;
    }
}
