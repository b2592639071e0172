package wallchart.web;

import java.nio.ByteBuffer;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.view.Json;

/** What the HTTP layer answers by itself, such as to a request it cannot parse, as problems like all others. */
final class ServerErrors implements Request.Handler {

    private static final int LONGEST_INSTANCE = 200;

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        write(Failures.ofStatus(response.getStatus()), request, response, callback);
        return true;
    }

    static void write(Problem problem, Request request, Response response, Callback callback) {
        var id = Standing.apply(request, response);
        var body = Json.bytes(problem.body(instance(request.getHttpURI().getPath()), id));
        response.setStatus(problem.code().status());
        var headers = response.getHeaders();
        problem.headers().forEach(headers::put);
        headers.put(HttpHeader.CONTENT_TYPE, Problem.MEDIA_TYPE);
        headers.put(HttpHeader.CONTENT_LENGTH, body.length);
        response.write(true, ByteBuffer.wrap(body), callback);
    }

    /** The path as a reference that can stand in a document; the root for one that is not plain. */
    static String instance(String path) {
        return Gate.isPlain(path) && path.length() <= LONGEST_INSTANCE ? path : "/";
    }
}
