package wallchart.equipment;

import java.util.List;
import wallchart.equipment.EquipmentDocument.GeneratorPart;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.ReceptorPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.equipment.EquipmentDocument.TubePart;

/** Builds the invented room of {@link EquipmentFixtures}, one part changed at a time. */
public final class RoomBuilder {

    private String id = "r1";
    private String name = "Room 1";
    private GeneratorPart generator = EquipmentFixtures.aGenerator();
    private TubePart tube = EquipmentFixtures.aTube();
    private List<GridPart> grids = List.of(
            EquipmentFixtures.aGrid("g10", "110", "95", "130"), EquipmentFixtures.aGrid("g8", "150", "110", "180"));
    private final List<ReceptorPart> receptors = EquipmentFixtures.someReceptors();
    private List<SupportPart> supports = EquipmentFixtures.someSupports();

    public RoomBuilder withId(String other) {
        id = other;
        return this;
    }

    public RoomBuilder withName(String other) {
        name = other;
        return this;
    }

    public RoomBuilder withGenerator(GeneratorPart other) {
        generator = other;
        return this;
    }

    public RoomBuilder withTube(TubePart other) {
        tube = other;
        return this;
    }

    /** The same tube without a physicist's measurement. */
    public RoomBuilder uncalibrated() {
        return withOutput(null);
    }

    /** The same tube with another measurement. */
    public RoomBuilder withOutput(OutputPart other) {
        return withTube(new TubePart(
                tube.anodeAngleDeg(),
                tube.totalFiltrationMmAl(),
                tube.totalFiltrationMmCu(),
                tube.focalSpots(),
                other));
    }

    /** No automatic exposure control, neither at the generator nor at any support. */
    public RoomBuilder withoutAec() {
        generator = new GeneratorPart(
                generator.waveform(),
                generator.kV(),
                generator.mAs(),
                generator.mA(),
                generator.shortestTimeMs(),
                null);
        supports = supports.stream()
                .map(support -> new SupportPart(
                        support.kind(),
                        support.receptorGapCm(),
                        support.sidCm(),
                        support.grids(),
                        support.receptors(),
                        null))
                .toList();
        return this;
    }

    public RoomBuilder withGrids(List<GridPart> others) {
        grids = others;
        return this;
    }

    public RoomBuilder withSupports(List<SupportPart> others) {
        supports = others;
        return this;
    }

    /** As people would have written it. */
    public EquipmentDocument document() {
        return new EquipmentDocument(id, name, generator, tube, grids, receptors, supports);
    }

    /** The room itself; fails with every problem where it is impossible. */
    public Room room() {
        if (EquipmentReader.read(document()) instanceof EquipmentReading.Refused refused) {
            throw new IllegalStateException("impossible room: " + refused.problems());
        }
        return ((EquipmentReading.Accepted) EquipmentReader.read(document())).room();
    }
}
