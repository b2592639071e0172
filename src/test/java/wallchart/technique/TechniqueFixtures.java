package wallchart.technique;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.number;
import static wallchart.equipment.EquipmentFixtures.numbers;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import wallchart.chart.ChartBuilder;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.ExposureControlPart;
import wallchart.equipment.EquipmentDocument.GeneratorPart;
import wallchart.equipment.EquipmentDocument.GridFactorPart;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentDocument.StationsPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Room;
import wallchart.equipment.RoomBuilder;
import wallchart.equipment.SupportKind;
import wallchart.physics.BeamPhysics;

/** Rooms, rows and consoles that the checks of this package ask. */
public final class TechniqueFixtures {

    /** The beam model; immutable. */
    static final BeamPhysics PHYSICS = BeamPhysics.load();

    /** The rules of a site without reference levels; immutable. */
    static final TechniqueRules RULES = new TechniqueRules(PHYSICS, List.of());

    /** A day before the review date of the fixtures' version. */
    static final LocalDate TODAY = LocalDate.parse("2026-11-02");

    private TechniqueFixtures() {}

    public static QueryBuilder aQuery() {
        return new QueryBuilder();
    }

    /** What the rules answer. */
    static Answer answer(Room room, ChartBuilder chart, QueryBuilder query) {
        return RULES.answer(room, chart.version(), query.query(), TODAY);
    }

    static Technique found(Room room, ChartBuilder chart, QueryBuilder query) {
        return answer(room, chart, query).either(technique -> technique, refusal -> {
            throw new AssertionError("refused: " + refusal.detail());
        });
    }

    /** With that row as the only one. */
    static Technique found(Room room, RowBuilder row, QueryBuilder query) {
        return found(room, ChartFixtures.aChart().with(row), query);
    }

    static Refusal refused(Room room, ChartBuilder chart, QueryBuilder query) {
        return answer(room, chart, query)
                .either(
                        technique -> {
                            throw new AssertionError("found: " + technique.set());
                        },
                        refusal -> refusal);
    }

    /** With that row as the only one. */
    static Refusal refused(Room room, RowBuilder row, QueryBuilder query) {
        return refused(room, ChartFixtures.aChart().with(row), query);
    }

    static ConsoleSetting.Manual manual(Technique technique) {
        assertThat(technique.set()).isInstanceOf(ConsoleSetting.Manual.class);
        return (ConsoleSetting.Manual) technique.set();
    }

    /** The step of that rule, which must be there once. */
    static Step step(Technique technique, String rule) {
        assertThat(technique.steps())
                .filteredOn(step -> step.rule().equals(rule))
                .hasSize(1);
        return technique.steps().stream()
                .filter(step -> step.rule().equals(rule))
                .findFirst()
                .orElseThrow();
    }

    /**
     * A room in which the worked examples of handbooks can be asked: any SID from 10 to 400 cm, receptor right under the patient,
     * parallel grids {@code g5 g6 g8 g10 g12 g16} with one conversion factor each.
     */
    static RoomBuilder aHandbookRoom() {
        var factors = Map.of("5", "2", "6", "3", "8", "4", "10", "5", "12", "5", "16", "6");
        return EquipmentFixtures.aRoom()
                .withGrids(factors.entrySet().stream()
                        .map(entry -> aParallelGrid(entry.getKey(), "70 " + entry.getValue()))
                        .toList())
                .withSupports(List.of(new SupportPart(
                        "tabletop",
                        number("0"),
                        new DistancesPart(number("10"), number("400"), null),
                        List.of("none", "g5", "g6", "g8", "g10", "g12", "g16"),
                        List.of("dr1"),
                        null)));
    }

    /** Grid {@code g<ratio>}; each factor is written as kV, blank, factor. */
    static GridPart aParallelGrid(String ratio, String... factors) {
        var points = List.of(factors).stream()
                .map(factor -> factor.split(" "))
                .map(factor -> new GridFactorPart(number(factor[0]), number(factor[1])))
                .toList();
        return new GridPart("g" + ratio, number(ratio), number("40"), null, null, points);
    }

    /**
     * Knee AP at the tabletop of {@link #aHandbookRoom()}: 60 kV, 10 mAs at 10 cm, the same from 0 to 60 cm, no grid, SID 100 cm,
     * large focal spot.
     */
    static RowBuilder aHandbookRow() {
        return ChartFixtures.aRow()
                .of("KNEE", "ap")
                .at(SupportKind.TABLETOP)
                .withBand(0, 60)
                .withReferenceThickness("10")
                .withKV("60")
                .withMAs("10")
                .withGrid("none")
                .withSid("100")
                .withMethod("fixed");
    }

    /** The fixtures' generator with other mAs and mA stations, blanks between them. */
    static GeneratorPart aConsole(String mAs, String mA) {
        return aConsole("high-frequency", mAs, mA);
    }

    static GeneratorPart aConsole(String waveform, String mAs, String mA) {
        return new GeneratorPart(
                waveform,
                new StationsPart(null, number("40"), number("150"), number("1"), null),
                new StationsPart(numbers(mAs), null, null, null, null),
                new StationsPart(numbers(mA), null, null, null, null),
                number("1"),
                new ExposureControlPart(List.of(-2, -1, 0, 1, 2), number("400")));
    }
}
