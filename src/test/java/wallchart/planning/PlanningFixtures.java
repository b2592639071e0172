package wallchart.planning;

import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.equipment.EquipmentFixtures.number;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.Row;
import wallchart.chart.RowBuilder;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentFixtures;
import wallchart.equipment.Room;
import wallchart.equipment.RoomBuilder;
import wallchart.physics.BeamPhysics;
import wallchart.quantity.PartThickness;
import wallchart.technique.ExposureModel;

/** Plans and transfers in the invented room of the equipment fixtures. */
final class PlanningFixtures {

    static final BeamPhysics PHYSICS = BeamPhysics.load();
    static final Models MODELS = Models.of(PHYSICS);
    static final ExposureModel MODEL = MODELS.exposure();
    static final ChartRules RULES = ChartRules.adultsOnly();
    static final Room ROOM = aRoom().room();

    private PlanningFixtures() {}

    static BandPlan bands(BandPlan.Kind kind, String from, String to, String width) {
        return new BandPlan(
                kind,
                Optional.empty(),
                PartThickness.centimetres(from),
                PartThickness.centimetres(to),
                PartThickness.centimetres(width));
    }

    static ChartContent chart(RowBuilder... rows) {
        return new ChartContent(List.of(rows).stream().map(RowBuilder::row).toList(), List.of());
    }

    static Planned plan(RowBuilder proven, BandPlan plan) {
        return plan(ROOM, ChartContent.EMPTY, proven, plan);
    }

    static Planned plan(Room room, ChartContent before, RowBuilder proven, BandPlan plan) {
        var technique =
                new BandPlanner.Proven(proven.row(), Optional.of(proven.row().key()));
        return new BandPlanner(MODELS, RULES).plan(room, 1, before, technique, plan);
    }

    static ChartProposal drawn(Planned planned) {
        if (planned instanceof Planned.Drawn drawn) {
            return drawn.proposal();
        }
        throw new AssertionError("refused: " + planned);
    }

    static RoomTransfer everything(Room from) {
        return new RoomTransfer(
                from.id(), 1, Optional.empty(), List.of(), RoomTransfer.Scope.ALL, Map.of(), Map.of(), Map.of());
    }

    static ChartProposal transferred(Room from, Room to, Row... rows) {
        return transferred(from, to, everything(from), ChartContent.EMPTY, rows);
    }

    static ChartProposal transferred(Room from, Room to, RoomTransfer asked, ChartContent before, Row... rows) {
        return new TransferCalculation(MODELS, RULES, from, to, asked, before).proposal(List.of(rows), List.of(), 1);
    }

    static ProposedRow only(ChartProposal proposal) {
        if (proposal.rows().size() != 1) {
            throw new AssertionError("left out: " + proposal.leftOut());
        }
        return proposal.rows().get(0);
    }

    /** The fixtures' room with one support: a tabletop without grid at just that SID. */
    static RoomBuilder aTabletopRoom(String id, String sid) {
        return aRoom().withId(id)
                .withSupports(List.of(new SupportPart(
                        "tabletop",
                        number("1"),
                        new DistancesPart(null, null, EquipmentFixtures.numbers(sid)),
                        List.of("none"),
                        List.of("dr1", "cr1"),
                        null)));
    }
}
