package wallchart.technique;

import java.util.Optional;
import wallchart.chart.Row;
import wallchart.equipment.Grid;
import wallchart.equipment.Receptor;
import wallchart.equipment.Room;
import wallchart.equipment.Support;
import wallchart.physics.GridModel;
import wallchart.physics.ReceptorResponse;
import wallchart.quantity.Distance;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;

/**
 * How an exposure is arranged in a room: all but tube voltage, current-time product and patient.
 *
 * @param grid absent for none
 * @param added filtration on top of the tube's
 * @param field in the receptor plane, what the beam is collimated to
 * @param sid source to receptor
 */
public record Arrangement(
        Room room,
        Support support,
        Receptor receptor,
        Optional<Grid> grid,
        Filtration added,
        FieldSize field,
        Distance sid) {

    /** As a query asks for it, with the grid and the distance it names. */
    static Arrangement of(Situation situation) {
        var setting = situation.row().setting();
        return new Arrangement(
                situation.room(),
                situation.support(),
                situation.receptor(),
                situation.grid(),
                setting.addedFiltration(),
                setting.field(),
                situation.sid());
    }

    /** As the row writes it; empty where the room does not have, at the row's support, all that the row names. */
    public static Optional<Arrangement> find(Room room, Row row) {
        if (Refit.objection(room, row).isPresent()) {
            return Optional.empty();
        }
        var setting = row.setting();
        return Optional.of(new Arrangement(
                room,
                room.findSupport(row.key().examination().support()).orElseThrow(),
                room.findReceptor(setting.receptor()).orElseThrow(),
                room.findGrid(setting.grid()),
                setting.addedFiltration(),
                setting.field(),
                setting.sid()));
    }

    /** The same with another grid, or with none. */
    public Arrangement with(Optional<Grid> other) {
        return new Arrangement(room, support, receptor, other, added, field, sid);
    }

    /** Everything in the beam before the patient. */
    public Filtration totalFiltration() {
        return room.tube().totalFiltration().and(added);
    }

    /** From focal spot to skin, in cm, with a patient of so many cm; 0 or less where the distance leaves no room for them. */
    public double focusSkinCentimetres(double thicknessCentimetres) {
        return sid.inCentimetres()
                - thicknessCentimetres
                - support.receptorGap().inCentimetres();
    }

    /** What the receptor's signal is modelled as: a caesium iodide panel as such, every other by the air kerma that reaches it. */
    public ReceptorResponse response() {
        return switch (receptor.kind()) {
            case CESIUM_IODIDE -> ReceptorResponse.CESIUM_IODIDE;
            case GADOLINIUM_OXYSULPHIDE, STORAGE_PHOSPHOR, FILM_SCREEN -> ReceptorResponse.AIR_KERMA;
        };
    }

    /** The modelled grid that stands in for the one used. */
    GridModel gridModel() {
        return grid.map(Grid::ratio)
                .map(ratio -> GridModel.nearest(ratio.intValue()))
                .orElse(GridModel.NONE);
    }

    /** Diameter of the circle with the area that the field of the receptor plane has at the skin, in cm. */
    double fieldDiameterAtSkin(double focusSkinCentimetres) {
        return 2 * Math.sqrt(areaAtSkin(focusSkinCentimetres) / Math.PI);
    }

    /** Area that the field of the receptor plane has at the skin, in cm2. */
    double areaAtSkin(double focusSkinCentimetres) {
        double scale = focusSkinCentimetres / sid.inCentimetres();
        return field.areaSquareCentimetres() * scale * scale;
    }
}
