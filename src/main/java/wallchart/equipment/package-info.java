/**
 * The X-ray room as the chart sees it: generator and its stations, tube and its measured output, grids, receptors, supports.
 *
 * <p>A {@link wallchart.equipment.Room} is a value that has already passed every check: nothing else in the program asks
 * whether a room is possible. What people write is an {@link wallchart.equipment.EquipmentDocument}; what it takes to become a
 * room stands in {@link wallchart.equipment.EquipmentReader}, which names the field of everything it refuses. Documents are
 * stored whole, as immutable revisions, because equipment is replaced and audited as one act.
 *
 * <p>May use {@code physics} for two purposes: {@link wallchart.equipment.Calibrations} fits the beam model to each measured tube, and
 * a {@link wallchart.equipment.Tube} says where that model does not reach it.
 */
package wallchart.equipment;
