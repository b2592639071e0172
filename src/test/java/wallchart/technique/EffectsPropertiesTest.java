package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.addingKV;
import static wallchart.chart.ChartFixtures.timesMAs;
import static wallchart.technique.TechniqueFixtures.PHYSICS;
import static wallchart.technique.TechniqueFixtures.aHandbookRoom;
import static wallchart.technique.TechniqueFixtures.aHandbookRow;
import static wallchart.technique.TechniqueFixtures.aParallelGrid;
import static wallchart.technique.TechniqueFixtures.aQuery;
import static wallchart.technique.TechniqueFixtures.found;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Room;

/** Rules 2 to 5 may be applied in any order, because the kV at which the grid factor is read is settled before. */
class EffectsPropertiesTest {

    private static final String[] METHODS = {"kv-per-cm", "mas-per-cm", "fixed", "attenuation"};
    private static final String[] GRIDS = {"none", "g8", "g12"};

    private static final Room ROOM = aHandbookRoom()
            .withGrids(List.of(
                    aParallelGrid("5", "70 2", "120 3"),
                    aParallelGrid("6", "70 2.2", "120 3.2"),
                    aParallelGrid("8", "70 3", "90 3.5", "120 4"),
                    aParallelGrid("10", "70 3.2", "120 4.4"),
                    aParallelGrid("12", "70 3.5", "90 4", "120 5"),
                    aParallelGrid("16", "70 4", "120 6")))
            .room();

    @Property(tries = 300)
    void the_order_of_the_effects_does_not_matter(
            @ForAll @IntRange(min = 0, max = 3) int method,
            @ForAll @IntRange(min = 0, max = 2) int rowGrid,
            @ForAll @IntRange(min = 0, max = 2) int askedGrid,
            @ForAll @IntRange(min = 50, max = 350) int millimetres,
            @ForAll @IntRange(min = 60, max = 300) int sid,
            @ForAll Random order) {
        var row = aHandbookRow()
                .withKV("70")
                .withMethod(METHODS[method])
                .withGrid(GRIDS[rowGrid])
                .withReferenceThickness("20");
        var query = aQuery().of(row.row())
                .ofThickness(String.valueOf(millimetres / 10.0))
                .atSid(String.valueOf(sid))
                .withGrid(GRIDS[askedGrid])
                .with("cast", "wet", "thin");
        var inOrder = effects(row, query);
        var shuffled = new ArrayList<>(inOrder);
        Collections.shuffle(shuffled, order);
        var first = applied(row, inOrder);
        var second = applied(row, shuffled);
        assertThat(second.kV()).isCloseTo(first.kV(), within(1e-9));
        assertThat(second.mAs() / first.mAs()).isCloseTo(1, within(1e-12));
    }

    @Example
    void reading_the_grid_factor_at_the_running_kv_would_not_commute() {
        // grid first reads g12 at the row's 70 kV, thickness first at 90 kV: 3.5 against 4
        var grid = ROOM.findGrid("g12").orElseThrow();
        var start = new Working(70, 10);
        var thickness = Effect.addKilovolts("thickness", "2 kV per cm x 10 cm", 20);
        var gridFirst = start.after(Effect.multiply("grid", "", grid.factorAt(start.kV())))
                .after(thickness);
        var thicker = start.after(thickness);
        var thicknessFirst = thicker.after(Effect.multiply("grid", "", grid.factorAt(thicker.kV())));
        assertThat(gridFirst.mAs()).isEqualTo(35);
        assertThat(thicknessFirst.mAs()).isEqualTo(40);
        // the rules take the second, whatever the order of application
        var row = aHandbookRow().withKV("70").withMethod("kv-per-cm", "2");
        var asked = aQuery().of(row.row()).ofThickness("20").withGrid("g12");
        assertThat(found(ROOM, row, asked).exact()).isEqualTo(thicknessFirst);
    }

    private static List<Effect> effects(RowBuilder row, QueryBuilder query) {
        var chart = aChart().with(row)
                .with(addingKV("cast", "6"))
                .with(addingKV("thin", "-3.5"))
                .with(timesMAs("wet", "1.5"))
                .version();
        var found = (RowSearch.Outcome.Found) RowSearch.search(ROOM, chart, query.query());
        return new Effects(new PhantomSignal(new ExposureModel(PHYSICS))).of(found.situation());
    }

    private static Working applied(RowBuilder row, List<Effect> effects) {
        var setting = row.row().setting();
        var working =
                new Working(setting.kV().inKilovolts(), setting.control().mAs().inMilliampereSeconds());
        for (var effect : effects) {
            working = working.after(effect);
        }
        return working;
    }
}
