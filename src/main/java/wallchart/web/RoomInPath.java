package wallchart.web;

import io.javalin.http.Context;
import wallchart.equipment.Room;
import wallchart.equipment.Rooms;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** The room that an address names. */
final class RoomInPath {

    private RoomInPath() {}

    /** The room as it is equipped now, or the end of the request. */
    static Room find(Context ctx, Rooms rooms) {
        var id = ctx.pathParam("room");
        return rooms.find(id)
                .orElseThrow(() -> new RequestRefused(
                        ProblemCode.UNKNOWN_ROOM,
                        "room \"" + id + "\" is not known: ask for a room that GET /api/v1/rooms lists"));
    }
}
