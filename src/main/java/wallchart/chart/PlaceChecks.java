package wallchart.chart;

import wallchart.equipment.Grid;
import wallchart.equipment.Room;
import wallchart.equipment.Support;
import wallchart.quantity.Decimals;

/** Whether support, grid, receptor and distance of a row go together in the room. */
final class PlaceChecks {

    private PlaceChecks() {}

    static void check(RowFindings findings, Room room) {
        var kind = findings.row().key().examination().support();
        var support = room.findSupport(kind);
        if (support.isEmpty()) {
            findings.blocking(
                    "support",
                    "room " + room.id() + " has no " + kind.slug() + ": choose a support of the room"
                            + " or have the physicist add it");
        }
        checkGrid(findings, room);
        checkReceptor(findings, room);
        support.ifPresent(place -> checkAt(findings, place));
    }

    private static void checkGrid(RowFindings findings, Room room) {
        var id = findings.setting().grid();
        var grid = room.findGrid(id);
        if (grid.isEmpty() && !id.equals(Grid.NONE)) {
            findings.blocking(
                    "grid", "room " + room.id() + " has no grid \"" + id + "\": choose one of its own, or none");
        }
        var sid = findings.setting().sid();
        grid.flatMap(Grid::focalRange)
                .filter(range -> !range.contains(sid))
                .ifPresent(range -> findings.caution(
                        "sidCm",
                        "SID " + sid + " lies outside the focal range of grid " + id + ", " + range
                                + ": expect cut-off, or choose another SID or grid"));
    }

    private static void checkReceptor(RowFindings findings, Room room) {
        var id = findings.setting().receptor();
        var receptor = room.findReceptor(id);
        if (receptor.isEmpty()) {
            findings.blocking(
                    "receptor", "room " + room.id() + " has no receptor \"" + id + "\": choose one of its own");
        }
        receptor.filter(of -> !of.takes(findings.setting().field()))
                .ifPresent(of -> findings.blocking(
                        "fieldCm",
                        "field " + findings.setting().field() + " cm is larger than receptor " + id + " ("
                                + String.join(
                                        ", ",
                                        of.sizes().stream()
                                                .map(Object::toString)
                                                .toList())
                                + " cm): choose a smaller field"));
    }

    private static void checkAt(RowFindings findings, Support support) {
        var setting = findings.setting();
        var place = support.kind().slug();
        if (!support.grids().contains(setting.grid())) {
            findings.blocking(
                    "grid",
                    "grid " + setting.grid() + " cannot be used at the " + place + ": choose "
                            + String.join(" or ", support.grids()));
        }
        if (!support.receptors().contains(setting.receptor())) {
            findings.blocking(
                    "receptor",
                    "receptor " + setting.receptor() + " cannot be used at the " + place + ": choose "
                            + String.join(" or ", support.receptors()));
        }
        if (!support.sids().allows(setting.sid())) {
            findings.blocking(
                    "sidCm",
                    "SID " + setting.sid() + " is not possible at the " + place + " (" + support.sids()
                            + "): the nearest is " + support.sids().nearest(setting.sid()));
        }
        checkFocusSkinDistance(findings, support);
    }

    private static void checkFocusSkinDistance(RowFindings findings, Support support) {
        var sid = findings.setting().sid();
        var thickest = findings.row().key().band().to();
        var left = support.focusSkinCentimetres(sid, thickest);
        if (left.signum() <= 0) {
            findings.blocking(
                    "sidCm",
                    "SID " + sid + " less a part of " + thickest + " and a receptor gap of " + support.receptorGap()
                            + " leaves " + Decimals.plain(left)
                            + " cm from focus to skin: it must be over 0, so lengthen the SID or shorten the band");
        }
    }
}
