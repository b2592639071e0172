package wallchart.web;

import io.javalin.http.Context;
import java.util.Map;
import wallchart.web.Document.WebJar;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;

/** The pages about the service itself, all of them kept in memory and served by ourselves. */
final class DocumentPages {

    private final Document docs;
    private final Document openApi;
    private final Document problem;
    private final Map<String, Document> files;

    private DocumentPages(Document docs, Document openApi, Document problem, Map<String, Document> files) {
        this.docs = docs;
        this.openApi = openApi;
        this.problem = problem;
        this.files = files;
    }

    /** Reads everything once; fails where a file is missing. */
    static DocumentPages load() {
        return new DocumentPages(
                Document.ours("docs.html", Document.HTML),
                Document.openApi(),
                Document.ours("problem.html", Document.HTML),
                Map.of(
                        "page.css", Document.ours("page.css", Document.CSS),
                        "docs.js", Document.ours("docs.js", Document.JAVASCRIPT),
                        "swagger-ui.css", Document.library(WebJar.SWAGGER, "swagger-ui.css", Document.CSS),
                        "swagger-ui-bundle.js",
                                Document.library(WebJar.SWAGGER, "swagger-ui-bundle.js", Document.JAVASCRIPT)));
    }

    void docs(Context ctx) {
        answer(ctx, docs);
    }

    void openApi(Context ctx) {
        answer(ctx, openApi);
    }

    void file(Context ctx) {
        var file = files.get(ctx.pathParam("file"));
        if (file == null) {
            throw new RequestRefused(ProblemCode.NOT_FOUND, "the documentation has no such file: open /docs");
        }
        answer(ctx, file);
    }

    void problem(Context ctx) {
        var code = ProblemCode.find(ctx.pathParam("code"))
                .orElseThrow(() -> new RequestRefused(
                        ProblemCode.NOT_FOUND, "there is no problem of that code: see /docs for those there are"));
        answer(
                ctx,
                problem.with(Map.of(
                        "{code}", code.slug(),
                        "{status}", String.valueOf(code.status()),
                        "{title}", code.title(),
                        "{nextStep}", code.nextStep())));
    }

    private static void answer(Context ctx, Document document) {
        Parameters.none(ctx.queryString());
        document.answer(ctx);
    }
}
