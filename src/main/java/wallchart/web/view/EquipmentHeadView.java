package wallchart.web.view;

import wallchart.equipment.RoomRevision;

/** Which state of the room's equipment an answer was worked out for. */
public record EquipmentHeadView(int revision, String digest) {

    static EquipmentHeadView of(RoomRevision revision) {
        return new EquipmentHeadView(revision.number(), revision.digest());
    }
}
