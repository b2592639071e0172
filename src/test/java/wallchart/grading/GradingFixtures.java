package wallchart.grading;

import static wallchart.equipment.EquipmentFixtures.aRoom;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Stream;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.equipment.Room;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.Decimals;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;
import wallchart.technique.LevelUnit;
import wallchart.technique.ReferenceLevel;

/** Rooms, rows and the check itself for the tests of this package. */
final class GradingFixtures {

    static final BeamPhysics PHYSICS = BeamPhysics.load();

    static final ExposureModel MODEL = new ExposureModel(PHYSICS);

    /** The invented room, its tube as nobody measured it: 12 degrees, 3.0 mm Al. */
    static final Room UNCALIBRATED = aRoom().uncalibrated().room();

    /** The same with measured output. */
    static final Room ROOM = aRoom().room();

    /** A site without reference levels that keeps the usual limits. */
    static final ChartPhysics CHECK = new ChartPhysics(PHYSICS, List.of(), PhysicsLimits.DEFAULTS);

    private GradingFixtures() {}

    /** Lumbar spine AP at the table bucky behind grid g10 (10:1), 75 kV, mAs following the attenuation. */
    static RowBuilder aRow(int from, int to) {
        return ChartFixtures.aRow().withBand(from, to).withMethod("attenuation");
    }

    /** The same row with the mAs that brings the receptor as much at its reference thickness as 20 mAs do behind 21 cm. */
    static RowBuilder anHonestRow(int from, int to) {
        var row = aRow(from, to);
        var how = Arrangement.find(ROOM, row.row()).orElseThrow();
        double thickness = row.row().referenceThickness().inCentimetres();
        double mAs = 20 * MODEL.signalPerMAs(how, 75, 21) / MODEL.signalPerMAs(how, 75, thickness);
        return row.withMAs(Decimals.significant(mAs, 4));
    }

    /** Three honest rows from 12 to 30 cm, the middle one from 18 to 24. */
    static List<RowBuilder> honestRows() {
        return List.of(anHonestRow(12, 18), anHonestRow(18, 24), anHonestRow(24, 30));
    }

    static ChartContent chart(RowBuilder... rows) {
        return new ChartContent(Stream.of(rows).map(RowBuilder::row).toList(), List.of());
    }

    static ChartContent chart(List<RowBuilder> rows) {
        return chart(rows.toArray(RowBuilder[]::new));
    }

    /** The only examination of a chart in the invented room, whole. */
    static ExaminationPhysics checked(RowBuilder... rows) {
        return CHECK.check(ROOM, chart(rows)).examinations().get(0);
    }

    /** A level of the lumbar spine AP of adults. */
    static ReferenceLevel aLevel(String value, LevelUnit unit, ReferenceLevel.Quantity quantity) {
        return new ReferenceLevel(
                "LSPINE", "ap", "adult", quantity, new BigDecimal(value), unit, 2020, "invented for a test");
    }

    /** The only examination of a chart, checked beside that level. */
    static ExaminationPhysics beside(ReferenceLevel level, RowBuilder... rows) {
        return new ChartPhysics(PHYSICS, List.of(level), PhysicsLimits.DEFAULTS)
                .check(ROOM, chart(rows))
                .examinations()
                .get(0);
    }
}
