package wallchart.web;

import io.javalin.http.Context;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.equipment.Rooms;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** The room that an address names. */
final class RoomInPath {

    private RoomInPath() {}

    /** The room as it is equipped now, or the end of the request. */
    static Room find(Context ctx, Rooms rooms) {
        var id = ctx.pathParam("room");
        return rooms.find(id).orElseThrow(() -> unknown(id));
    }

    /** As {@link #find}, with the number and digest of that state. */
    static RoomRevision revision(Context ctx, Rooms rooms) {
        var id = ctx.pathParam("room");
        return rooms.findRevision(id).orElseThrow(() -> unknown(id));
    }

    /** The room's id, or the end of the request. */
    static String id(Context ctx, Rooms rooms) {
        var id = ctx.pathParam("room");
        if (rooms.revisions(id).isEmpty()) {
            throw unknown(id);
        }
        return id;
    }

    private static RequestRefused unknown(String id) {
        return new RequestRefused(
                ProblemCode.UNKNOWN_ROOM,
                "room \"" + id + "\" is not known: ask for a room that GET /api/v1/rooms lists");
    }
}
