package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.number;

import java.util.List;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartFixtures;
import wallchart.chart.RowBuilder;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.GridFactorPart;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.Room;
import wallchart.equipment.RoomBuilder;
import wallchart.equipment.SupportKind;
import wallchart.grading.ChartPhysics;
import wallchart.grading.PhysicsLimits;
import wallchart.physics.BeamPhysics;

/** Rows, rooms and the impact of a change for the checks of this package. */
final class SignoffFixtures {

    private static final BeamPhysics PHYSICS = BeamPhysics.load();

    static final ImpactCalculation CALCULATION = new ImpactCalculation(PHYSICS, ReviewLimits.DEFAULTS);

    static final ChartPhysics GRADING = new ChartPhysics(PHYSICS, List.of(), PhysicsLimits.DEFAULTS);

    /** The fixtures' room with a grid {@code g10} of factor 5 at every kV and one whose factor rises, usable at the tabletop as well. */
    static final Room ROOM = refitted(aRoom());

    /** The same with a tube that nobody measured: the beam model stands alone. */
    static final Room UNCALIBRATED = refitted(aRoom().uncalibrated());

    private SignoffFixtures() {}

    private static Room refitted(RoomBuilder room) {
        return room.withGrids(List.of(
                        aGrid("g10", new GridFactorPart(number("70"), number("5"))),
                        aGrid(
                                "g8-rising",
                                new GridFactorPart(number("70"), number("3")),
                                new GridFactorPart(number("90"), number("4")))))
                .withSupports(List.of(
                        new SupportPart(
                                "tabletop",
                                number("0"),
                                new DistancesPart(number("50"), number("300"), null),
                                List.of("none", "g10", "g8-rising"),
                                List.of("dr1"),
                                null),
                        new SupportPart(
                                "table-bucky",
                                number("6"),
                                new DistancesPart(number("50"), number("300"), null),
                                List.of("g10", "none"),
                                List.of("dr1"),
                                List.of("left", "centre", "right"))))
                .room();
    }

    private static GridPart aGrid(String id, GridFactorPart... factors) {
        return new GridPart(id, number("10"), number("40"), null, null, List.of(factors));
    }

    /** 60 kV, 10 mAs at the tabletop, 0 to 20 cm, fixed, no grid, SID 100 cm. */
    static RowBuilder aTabletopRow() {
        return ChartFixtures.aRow()
                .at(SupportKind.TABLETOP)
                .withBand(0, 20)
                .withKV("60")
                .withMAs("10")
                .withGrid("none")
                .withSid("100")
                .withMethod("fixed");
    }

    static ChartContent chart(RowBuilder... rows) {
        return new ChartContent(List.of(rows).stream().map(RowBuilder::row).toList(), List.of());
    }

    static Impact impact(ChartContent before, ChartContent after) {
        return CALCULATION.of(ROOM, before, after);
    }

    /** What amending the only row of a chart does. */
    static RowImpact onlyRow(RowBuilder before, RowBuilder after) {
        var rows = impact(chart(before), chart(after)).rows();
        assertThat(rows).hasSize(1);
        return rows.get(0);
    }
}
