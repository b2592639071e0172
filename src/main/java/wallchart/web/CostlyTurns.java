package wallchart.web;

import io.javalin.http.Context;
import io.javalin.http.Handler;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Predicate;
import wallchart.web.problem.Problem;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/**
 * Lets the long computations of people (drafts, transfers, whole charts against beam physics, effects of equipment) through a few at a
 * time, so that one processor is always left for the room that asks for a technique. The rest wait in a short line; whoever comes
 * after that is asked to come again. Thread-safe.
 */
final class CostlyTurns {

    private static final int WAITING_FOR_EACH = 4;
    private static final long LONGEST_WAIT_MS = 3_000;
    private static final String COME_AGAIN_SECONDS = "3";

    private final int atOnce;
    private final Semaphore turns;
    private final AtomicInteger inside = new AtomicInteger();

    /** As many at once as there are processors but one, and at least one. */
    CostlyTurns() {
        this(Math.max(1, Runtime.getRuntime().availableProcessors() - 1));
    }

    CostlyTurns(int atOnce) {
        this.atOnce = atOnce;
        this.turns = new Semaphore(atOnce, true);
    }

    /** The handler, when its turn comes. */
    Handler of(Handler handler) {
        return ctx -> handle(handler, ctx);
    }

    /** The same; but at once where what is asked for is there already. */
    Handler unless(Predicate<Context> ready, Handler handler) {
        return ctx -> {
            if (ready.test(ctx)) {
                handler.handle(ctx);
            } else {
                handle(handler, ctx);
            }
        };
    }

    private void handle(Handler handler, Context ctx) throws Exception {
        try {
            if (inside.incrementAndGet() > atOnce * (1 + WAITING_FOR_EACH) || !hasTurn()) {
                throw busy();
            }
            try {
                handler.handle(ctx);
            } finally {
                turns.release();
            }
        } finally {
            inside.decrementAndGet();
        }
    }

    private boolean hasTurn() {
        try {
            return turns.tryAcquire(LONGEST_WAIT_MS, TimeUnit.MILLISECONDS);
        } catch (InterruptedException closing) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private RequestRefused busy() {
        return new RequestRefused(Problem.of(
                        ProblemCode.BUSY,
                        "long computations are made " + atOnce
                                + " at a time, so that rooms get their techniques at once,"
                                + " and others are waiting already: try again in " + COME_AGAIN_SECONDS + " s")
                .withHeader("Retry-After", COME_AGAIN_SECONDS));
    }
}
