package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.technique.TechniqueFixtures.aConsole;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.answer;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.equipment.FocalSpot;
import wallchart.equipment.FocalSpotName;
import wallchart.equipment.Room;
import wallchart.quantity.CurrentTimeProduct;
import wallchart.quantity.TubeCurrent;
import wallchart.quantity.TubeVoltage;

/** What is set is compared with a search of every station, worked out in decimals and without the rules' own code. */
class ConsolePropertiesTest {

    @Property(tries = 400)
    void what_is_set_is_the_best_of_all_stations_and_bears_the_rating(
            @ForAll @Size(min = 1, max = 8) Set<@IntRange(min = 1, max = 400) Integer> mAs,
            @ForAll @Size(min = 1, max = 6) Set<@IntRange(min = 10, max = 800) Integer> mA,
            @ForAll @IntRange(min = 400, max = 1500) int tenthsOfKV,
            @ForAll @IntRange(min = 500, max = 450_000) int microampereSeconds,
            @ForAll FocalSpotName spot) {
        var room = aHandbookRoom()
                .withGenerator(aConsole(stations(mAs), stations(mA)))
                .room();
        var row = aHandbookRow()
                .withKV(BigDecimal.valueOf(tenthsOfKV, 1).toPlainString())
                .withMAs(BigDecimal.valueOf(microampereSeconds, 3).toPlainString())
                .with(spot);
        var answer = answer(room, ChartFixtures.aChart().with(row), aQuery().of(row.row()));
        if (answer instanceof Answer.Found found) {
            requireBest(room, found.technique());
        } else {
            requireImpossible(room, row);
        }
    }

    private static void requireBest(Room room, Technique technique) {
        var set = TechniqueFixtures.manual(technique);
        double wanted = technique.exact().mAs()
                * Math.pow(technique.exact().kV() / set.kV().inKilovolts(), Math.log(2) / Math.log(1.15));
        assertThat(set.mAs()).isEqualTo(nearest(room, wanted));
        assertThat(room.generator().kV().stations()).contains(set.kV());
        assertThat(Math.abs(set.kV().inKilovolts() - technique.exact().kV())).isLessThanOrEqualTo(0.5 + 1e-9);
        assertThat(set.mA()).isEqualTo(largest(room, set.focalSpot(), set.kV(), set.mAs()));
        assertThat(set.time().milliseconds().doubleValue())
                .isBetween(room.generator().shortestTime().inMilliseconds(), 2000.0);
    }

    /** Refused only where the mAs lies beyond the stations by half a step, or where no current bears the load. */
    private static void requireImpossible(Room room, RowBuilder row) {
        var setting = row.row().setting();
        var kV = TubeVoltage.kilovolts(Math.round(setting.kV().inKilovolts()));
        double wanted = setting.control().mAs().inMilliampereSeconds()
                * Math.pow(setting.kV().inKilovolts() / kV.inKilovolts(), Math.log(2) / Math.log(1.15));
        var station = nearest(room, wanted);
        boolean beyond = wanted > room.generator().mAs().largest().inMilliampereSeconds()
                || wanted < room.generator().mAs().smallest().inMilliampereSeconds();
        assertThat(beyond || largest(room, setting.focalSpot(), kV, station) == null)
                .isTrue();
    }

    private static CurrentTimeProduct nearest(Room room, double wanted) {
        return room.generator().mAs().stations().stream()
                .min(Comparator.comparingDouble(station ->
                        Math.round(1e10 * Math.abs(Math.log10(station.inMilliampereSeconds()) - Math.log10(wanted)))))
                .orElseThrow();
    }

    /** Null where no current bears it. */
    private static TubeCurrent largest(Room room, FocalSpotName name, TubeVoltage kV, CurrentTimeProduct mAs) {
        var spot = room.tube().find(name).orElseThrow();
        return room.generator().mA().stations().stream()
                .filter(mA -> bears(room, spot, kV, mA, mAs))
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    /** In decimals: mAs x 1000 >= ms x mA and kV x mA <= kW x 1000. */
    private static boolean bears(Room room, FocalSpot spot, TubeVoltage kV, TubeCurrent mA, CurrentTimeProduct mAs) {
        var charge = mAs.milliampereSeconds().movePointRight(3);
        var least = room.generator().shortestTime().milliseconds().multiply(mA.milliamperes());
        var power = kV.kilovolts().multiply(mA.milliamperes());
        return charge.compareTo(least) >= 0
                && spot.ratings().stream()
                        .filter(rating ->
                                charge.compareTo(rating.upTo().milliseconds().multiply(mA.milliamperes())) <= 0)
                        .findFirst()
                        .map(rating ->
                                power.compareTo(rating.power().kilowatts().movePointRight(3)) <= 0)
                        .orElse(false);
    }

    private static String stations(Set<Integer> values) {
        return List.copyOf(new TreeSet<>(values)).stream().map(String::valueOf).collect(Collectors.joining(" "));
    }
}
