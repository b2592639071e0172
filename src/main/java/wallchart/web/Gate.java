package wallchart.web;

import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.request.Bodies;

/** The outermost handler: puts the standing headers on and turns away what no route should ever see. */
final class Gate extends Handler.Wrapper {

    private static final int TOO_LARGE = 413;

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        Standing.apply(request, response);
        var objection = objection(request);
        if (objection == null) {
            return super.handle(request, response, callback);
        }
        ServerErrors.write(objection, request, response, callback);
        return true;
    }

    private static Problem objection(Request request) {
        if (!isPlain(request.getHttpURI().getPath())) {
            return Problem.of(
                    ProblemCode.INVALID_PATH,
                    "the path has a character or a segment that no address here has: plain letters, digits, . - _ only, "
                            + "no empty or dotted segments");
        }
        return request.getHeaders().getLongField(HttpHeader.CONTENT_LENGTH) > Bodies.LARGEST
                ? Failures.ofStatus(TOO_LARGE)
                : null;
    }

    /** Only unreserved characters (RFC 3986), nothing escaped, no segment that is empty or begins with a dot. */
    static boolean isPlain(String path) {
        if (path == null || path.isEmpty() || path.charAt(0) != '/') {
            return false;
        }
        for (int i = 1; i < path.length(); i++) {
            char c = path.charAt(i);
            boolean begins = path.charAt(i - 1) == '/';
            if (!isPlain(c) || begins && (c == '/' || c == '.')) {
                return false;
            }
        }
        return true;
    }

    private static boolean isPlain(char c) {
        return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || "/.-_".indexOf(c) >= 0;
    }
}
