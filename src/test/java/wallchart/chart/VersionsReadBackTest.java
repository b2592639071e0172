package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.SettableClock;
import wallchart.store.TestDatabases;

/** Whatever people do to a chart over twenty versions, every version is read back as it was published. */
class VersionsReadBackTest {

    private static final int VERSIONS = 20;

    private enum Act {
        ADD,
        WITHDRAW,
        AMEND,
        MOVE,
        ADJUST
    }

    private record Edit(Act act, int where, int what) {}

    @Provide
    Arbitrary<List<List<Edit>>> histories() {
        var edit = Combinators.combine(
                        Arbitraries.of(Act.class),
                        Arbitraries.integers().between(0, 1000),
                        Arbitraries.integers().between(0, 1000))
                .as(Edit::new);
        return edit.list().ofMinSize(1).ofMaxSize(6).list().ofSize(VERSIONS);
    }

    @Property(tries = 20, shrinking = ShrinkingMode.OFF)
    void on_h2(@ForAll("histories") List<List<Edit>> history) {
        publishAndReadBack(TestDatabases.Kind.H2, history);
    }

    @Property(tries = 8, shrinking = ShrinkingMode.OFF)
    void on_postgresql(@ForAll("histories") List<List<Edit>> history) {
        publishAndReadBack(TestDatabases.Kind.POSTGRESQL, history);
    }

    private static void publishAndReadBack(TestDatabases.Kind kind, List<List<Edit>> history) {
        try (var database = Database.open(kind.settings(), Mode.SITE, SettableClock.at("2026-03-02T08:00:00Z"))) {
            var department = PublishingFixtures.aDepartmentIn(database);
            var published = new ArrayList<ChartContent>();
            var chart = new Chart(
                    ChartFixtures.aChart().withBand(10, 11).withBand(20, 21).content());
            for (var edits : history) {
                edits.forEach(chart::apply);
                chart.amend(0, published.size()); // no version may equal its base
                published.add(chart.content());
                department.publish(published.size() - 1, chart.content());
            }
            var charts = department.charts();
            for (int number = 1; number <= VERSIONS; number++) {
                assertThat(charts.version("r1", number).orElseThrow().content()).isEqualTo(published.get(number - 1));
            }
        }
    }

    /** A chart that is edited by hand. */
    private static final class Chart {

        private final List<Row> rows;
        private final List<Adjustment> adjustments;

        Chart(ChartContent content) {
            rows = new ArrayList<>(content.rows());
            adjustments = new ArrayList<>(content.adjustments());
        }

        ChartContent content() {
            return new ChartContent(rows, adjustments);
        }

        void apply(Edit edit) {
            int where = edit.where() % rows.size();
            switch (edit.act()) {
                case ADD -> add(where, edit.what() % 30);
                case WITHDRAW -> withdraw(where);
                case AMEND -> amend(where, 1000 + edit.what());
                case MOVE -> rows.add(edit.what() % rows.size(), rows.remove(where));
                case ADJUST -> adjust(edit.where() % 4, edit.what());
            }
        }

        private void add(int where, int from) {
            var row = ChartFixtures.aRow().withBand(from, from + 1).row();
            if (rows.stream().noneMatch(other -> other.key().equals(row.key()))) {
                rows.add(where, row);
            }
        }

        private void withdraw(int where) {
            if (rows.size() > 1) {
                rows.remove(where);
            }
        }

        void amend(int where, int what) {
            var band = rows.get(where).key().band();
            rows.set(
                    where,
                    ChartFixtures.aRow()
                            .withBand(
                                    band.from().centimetres().toPlainString(),
                                    band.to().centimetres().toPlainString())
                            .withMAs(what % 2 == 0 ? "25" : "32")
                            .withNotes("edit " + what)
                            .row());
        }

        private void adjust(int which, int what) {
            var name = "adjustment-" + which;
            boolean there = adjustments.removeIf(adjustment -> adjustment.name().equals(name));
            if (!there || what % 3 > 0) {
                var effect = new Adjustment.AddKilovolts(BigDecimal.valueOf(1 + what % 20));
                adjustments.add(what % (adjustments.size() + 1), new Adjustment(name, "Label", effect, ""));
            }
        }
    }
}
