package wallchart.equipment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.EquipmentDocument.GridFactorPart;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.RangePart;
import wallchart.equipment.EquipmentDocument.TubePart;

/** What a physicist enters about a room: all of its equipment, or a part that was measured. */
public sealed interface EquipmentEdit {

    /** The document with the edit; empty where the room does not have the part. */
    Optional<EquipmentDocument> applied(EquipmentDocument inForce);

    /** What is entered, in words. */
    String name();

    /** JSON Pointer to the part within the document; what is wrong below it is told relative to it. */
    String place(EquipmentDocument inForce);

    /** Everything, as it is from now on. */
    record Whole(EquipmentDocument document) implements EquipmentEdit {
        @Override
        public Optional<EquipmentDocument> applied(EquipmentDocument inForce) {
            return Optional.of(document);
        }

        @Override
        public String name() {
            return "equipment";
        }

        @Override
        public String place(EquipmentDocument inForce) {
            return "";
        }
    }

    /** A measurement of the tube's output. */
    record Output(OutputPart output) implements EquipmentEdit {
        @Override
        public Optional<EquipmentDocument> applied(EquipmentDocument inForce) {
            var tube = inForce.tube();
            return Optional.of(new EquipmentDocument(
                    inForce.room(),
                    inForce.name(),
                    inForce.generator(),
                    new TubePart(
                            tube.anodeAngleDeg(),
                            tube.totalFiltrationMmAl(),
                            tube.totalFiltrationMmCu(),
                            tube.focalSpots(),
                            output),
                    inForce.grids(),
                    inForce.receptors(),
                    inForce.supports()));
        }

        @Override
        public String name() {
            return "tube output";
        }

        @Override
        public String place(EquipmentDocument inForce) {
            return "/tube/output";
        }
    }

    /**
     * Conversion factors and focal range of one grid; what stands on its label stays.
     *
     * @param grid its id
     * @param focalRangeCm may be missing for a parallel grid
     */
    record MeasuredGrid(String grid, RangePart focalRangeCm, List<GridFactorPart> factors) implements EquipmentEdit {
        @Override
        public Optional<EquipmentDocument> applied(EquipmentDocument inForce) {
            int at = index(inForce);
            if (at < 0) {
                return Optional.empty();
            }
            var grids = new ArrayList<>(inForce.grids());
            var old = grids.get(at);
            grids.set(
                    at,
                    new GridPart(
                            old.id(), old.ratio(), old.linesPerCm(), old.focalDistanceCm(), focalRangeCm, factors));
            return Optional.of(new EquipmentDocument(
                    inForce.room(),
                    inForce.name(),
                    inForce.generator(),
                    inForce.tube(),
                    grids,
                    inForce.receptors(),
                    inForce.supports()));
        }

        @Override
        public String name() {
            return "grid " + grid;
        }

        @Override
        public String place(EquipmentDocument inForce) {
            return "/grids/" + index(inForce);
        }

        private int index(EquipmentDocument inForce) {
            return inForce.grids().stream().map(GridPart::id).toList().indexOf(grid);
        }
    }
}
