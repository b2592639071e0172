package wallchart.web;

import io.javalin.http.Context;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import wallchart.web.Document.WebJar;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;

/**
 * Style sheets, scripts and pictures of the screens: our own from {@code web/pages}, libraries from their WebJars. Each is read once,
 * when somebody first asks for it, kept in memory and sent packed to whoever takes that.
 */
final class PageFiles {

    private static final String FOLDER = "pages/";
    private static final Pattern OWN = Pattern.compile("([a-z0-9-]+/)?[a-z0-9-]+\\.(js|css|svg|png)");

    private static final Map<String, String> TYPES =
            Map.of("js", Document.JAVASCRIPT, "css", Document.CSS, "svg", "image/svg+xml", "png", "image/png");

    /** A library's file by the name that our scripts import it under. */
    private static final Map<String, Borrowed> LIBRARIES = Map.of(
            "lit-html.js", new Borrowed(WebJar.LIT_HTML, "lit-html.js"),
            "directive.js", new Borrowed(WebJar.LIT_HTML, "directive.js"),
            "directive-helpers.js", new Borrowed(WebJar.LIT_HTML, "directive-helpers.js"),
            "directives/live.js", new Borrowed(WebJar.LIT_HTML, "directives/live.js"),
            "directives/repeat.js", new Borrowed(WebJar.LIT_HTML, "directives/repeat.js"),
            "uplot.js", new Borrowed(WebJar.UPLOT, "dist/uPlot.iife.min.js"),
            "uplot.css", new Borrowed(WebJar.UPLOT, "dist/uPlot.min.css"));

    private record Borrowed(WebJar jar, String name) {}

    private record Both(Document plain, Document packed) {
        static Both of(Document plain) {
            return new Both(plain, plain.packed());
        }
    }

    private final Map<String, Both> read = new ConcurrentHashMap<>();

    /** A file below {@code /pages}. */
    void file(Context ctx) {
        Parameters.none(ctx.queryString());
        var folder = ctx.pathParamMap().get("folder");
        var name = (folder == null ? "" : folder + "/") + ctx.pathParam("file");
        answer(
                ctx,
                find(name)
                        .orElseThrow(() -> new RequestRefused(
                                ProblemCode.NOT_FOUND, "no page has a file of that name: open / and start there")));
    }

    /** A whole screen; its HTML holds no data. */
    void screen(Context ctx, String name) {
        answer(ctx, screen(name));
    }

    private Both screen(String name) {
        return read.computeIfAbsent(name, file -> Both.of(Document.ours(FOLDER + file, Document.HTML)));
    }

    /** A screen as it is served. */
    Document plainScreen(String name) {
        return screen(name).plain();
    }

    /** The bytes of a file, where there is one of that name. */
    Optional<Document> findPlain(String name) {
        return find(name).map(Both::plain);
    }

    private Optional<Both> find(String name) {
        var known = read.get(name);
        if (known != null) {
            return Optional.of(known);
        }
        var found = load(name).map(Both::of);
        found.ifPresent(both -> read.put(name, both)); // only names that exist, so this cannot grow
        return found;
    }

    private static Optional<Document> load(String name) {
        var type = TYPES.get(name.substring(name.lastIndexOf('.') + 1));
        var borrowed = LIBRARIES.get(name);
        if (borrowed != null) {
            return Optional.of(Document.library(borrowed.jar(), borrowed.name(), type));
        }
        return OWN.matcher(name).matches() ? Document.findOurs(FOLDER + name, type) : Optional.empty();
    }

    private static void answer(Context ctx, Both both) {
        Document.answer(ctx, both::packed, both::plain);
    }
}
