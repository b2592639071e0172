package wallchart.web;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.util.concurrent.TimeUnit;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.io.content.ByteBufferContentSource;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.request.Bodies;

/**
 * Lets a request with a body on once all of the body is here, and holds no thread until then: whoever sends a body byte by byte,
 * by intent or over a bad line, keeps no thread from the rooms. Too large a body and one that takes too long end the request.
 */
final class WholeBody extends Handler.Wrapper {

    private static final long LONGEST_NANOS = TimeUnit.SECONDS.toNanos(30);
    private static final int TOO_LARGE = 413;

    WholeBody(Handler next) {
        super(next);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) throws Exception {
        if (!hasBody(request)) {
            return super.handle(request, response, callback);
        }
        new Arrival(request, response, callback).run();
        return true;
    }

    private static boolean hasBody(Request request) {
        var headers = request.getHeaders();
        return headers.getLongField(HttpHeader.CONTENT_LENGTH) > 0 || headers.contains(HttpHeader.TRANSFER_ENCODING);
    }

    /** One body on its way: run whenever there is more of it. */
    private final class Arrival implements Runnable {

        private final Request request;
        private final Response response;
        private final Callback callback;
        private final ByteArrayOutputStream arrived = new ByteArrayOutputStream();
        private final long begun = System.nanoTime();

        Arrival(Request request, Response response, Callback callback) {
            this.request = request;
            this.response = response;
            this.callback = callback;
        }

        @Override
        public void run() {
            boolean last = false;
            while (!last) {
                var chunk = request.read();
                if (chunk == null) {
                    request.demand(this);
                    return;
                }
                var objection = Content.Chunk.isFailure(chunk) ? notWhole() : keep(chunk);
                if (objection != null) {
                    ServerErrors.write(objection, request, response, callback);
                    return;
                }
                last = chunk.isLast();
            }
            goOn();
        }

        /** Copies, because a few bytes would otherwise keep a whole buffer of the connection. */
        private Problem keep(Content.Chunk chunk) {
            var bytes = new byte[chunk.remaining()];
            chunk.getByteBuffer().get(bytes);
            chunk.release();
            arrived.writeBytes(bytes);
            if (arrived.size() > Bodies.LARGEST) {
                return Failures.ofStatus(TOO_LARGE);
            }
            return System.nanoTime() - begun > LONGEST_NANOS ? notWhole() : null;
        }

        private static Problem notWhole() {
            return Problem.of(
                    ProblemCode.INVALID_REQUEST, "the body did not arrive whole within 30 seconds: send it again");
        }

        private void goOn() {
            try {
                if (!WholeBody.super.handle(new Arrived(request, arrived.toByteArray()), response, callback)) {
                    ServerErrors.write(Failures.ofStatus(404), request, response, callback);
                }
            } catch (Exception failed) {
                Response.writeError(request, response, callback, failed);
            }
        }
    }

    /** The request with its body in memory. */
    private static final class Arrived extends Request.Wrapper {

        private final ByteBufferContentSource body;

        Arrived(Request request, byte[] body) {
            super(request);
            this.body = new ByteBufferContentSource(ByteBuffer.wrap(body));
        }

        @Override
        public Content.Chunk read() {
            return body.read();
        }

        @Override
        public void demand(Runnable more) {
            body.demand(more);
        }

        @Override
        public void fail(Throwable failure) {
            body.fail(failure);
            super.fail(failure);
        }
    }
}
