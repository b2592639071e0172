package wallchart;

import java.util.concurrent.CountDownLatch;

/** Keeps a command running until the process is asked to end, then closes the service in order. */
final class Lifetime {

    private Lifetime() {}

    static void untilStopped(Application application) {
        var stopped = new CountDownLatch(1);
        Runtime.getRuntime()
                .addShutdownHook(new Thread(
                        () -> {
                            application.close();
                            stopped.countDown();
                        },
                        "stop"));
        try {
            stopped.await();
        } catch (InterruptedException asked) {
            Thread.currentThread().interrupt();
        }
    }
}
