package wallchart.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.javalin.http.Handler;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/** Who computes for long, who waits, and who is asked to come again. */
class CostlyTurnsTest {

    private static final int MANY = 20;

    private final AtomicInteger computing = new AtomicInteger();
    private final AtomicInteger mostAtOnce = new AtomicInteger();

    private Handler slow(CountDownLatch end) {
        return ctx -> {
            mostAtOnce.accumulateAndGet(computing.incrementAndGet(), Math::max);
            end.await(10, TimeUnit.SECONDS);
            computing.decrementAndGet();
        };
    }

    private static boolean isServed(Handler handler) {
        try {
            handler.handle(null);
            return true;
        } catch (RequestRefused refused) {
            assertThat(refused.problem().code()).isEqualTo(ProblemCode.BUSY);
            assertThat(refused.problem().headers()).containsKey("Retry-After");
            return false;
        } catch (Exception other) {
            throw new AssertionError(other);
        }
    }

    @Test
    void of_many_at_once_two_compute_eight_wait_and_the_rest_is_asked_to_come_again() {
        var end = new CountDownLatch(1);
        var handler = new CostlyTurns(2).of(slow(end));
        var threads = Executors.newFixedThreadPool(MANY);
        var refused = new CountDownLatch(MANY - 10);
        List<CompletableFuture<Boolean>> all = IntStream.range(0, MANY)
                .mapToObj(i -> CompletableFuture.supplyAsync(
                        () -> {
                            boolean served = isServed(handler);
                            if (!served) {
                                refused.countDown();
                            }
                            return served;
                        },
                        threads))
                .toList();
        assertThat(await(refused)).isTrue();
        end.countDown();
        assertThat(all.stream().filter(CompletableFuture::join)).hasSize(10);
        assertThat(mostAtOnce).hasValue(2);
        threads.shutdown();
    }

    private static boolean await(CountDownLatch latch) {
        try {
            return latch.await(10, TimeUnit.SECONDS);
        } catch (InterruptedException stopped) {
            throw new AssertionError(stopped);
        }
    }

    @Test
    void whoever_fails_gives_the_turn_back() {
        var turns = new CostlyTurns(1);
        var failing = turns.of(ctx -> {
            throw new IllegalStateException("planned");
        });
        for (int i = 0; i < MANY; i++) {
            assertThatThrownBy(() -> failing.handle(null)).hasMessage("planned");
        }
        assertThat(isServed(turns.of(ctx -> {}))).isTrue();
    }

    @Test
    void what_is_there_already_waits_for_nobody_and_what_is_not_does() {
        var turns = new CostlyTurns(1);
        var end = new CountDownLatch(1);
        var threads = Executors.newFixedThreadPool(MANY);
        var busy = turns.of(slow(end));
        IntStream.range(0, 5).forEach(i -> threads.execute(() -> isServed(busy)));
        var answered = new AtomicInteger();
        Handler handler = ctx -> answered.incrementAndGet();
        while (isServed(turns.unless(ctx -> false, handler))) {
            Thread.onSpinWait(); // until all five have come
        }
        answered.set(0);
        assertThat(isServed(turns.unless(ctx -> true, handler))).isTrue();
        assertThat(isServed(turns.unless(ctx -> false, handler))).isFalse();
        assertThat(answered).hasValue(1);
        end.countDown();
        threads.shutdown();
    }
}
