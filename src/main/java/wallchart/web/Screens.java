package wallchart.web;

import io.javalin.http.Handler;
import wallchart.web.request.Parameters;

/**
 * The pages that people and rooms look at. What is served here are empty forms, the same for everybody; a script fills them over the
 * interface, as whoever signs in or with the room's token, so a page can never show more than the interface allows.
 */
final class Screens {

    private final PageFiles files = new PageFiles();
    private final Document roomWorker = RoomWorker.script(files);

    PageFiles files() {
        return files;
    }

    /** Where one finds the way. */
    Handler home() {
        return screen("home.html");
    }

    /** What keeps the room page at its workstation. */
    Handler roomWorker() {
        return ctx -> {
            Parameters.none(ctx.queryString());
            roomWorker.answer(ctx);
        };
    }

    /** One page of that name. */
    Handler screen(String name) {
        return ctx -> {
            Parameters.none(ctx.queryString());
            files.screen(ctx, name);
        };
    }
}
