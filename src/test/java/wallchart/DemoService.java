package wallchart;

import java.nio.file.Path;
import java.time.Clock;

/** The demo department as the program starts it, on a free port; for tests that look at it from outside. */
public final class DemoService implements AutoCloseable {

    private final Application application;

    private DemoService(Application application) {
        this.application = application;
    }

    /** Starts it afresh in that folder. */
    public static DemoService start(Path folder) {
        return start(folder, 0, false);
    }

    /**
     * Starts it.
     *
     * @param port 0 for any free one
     * @param keep go on with what an earlier start left in the folder
     */
    public static DemoService start(Path folder, int port, boolean keep) {
        return new DemoService(new DemoDepartment(Path.of("demo-data"), folder, port, keep).start(Clock.systemUTC()));
    }

    public int port() {
        return application.port();
    }

    /** Without a slash at its end. */
    public String address() {
        return "http://127.0.0.1:" + port();
    }

    @Override
    public void close() {
        application.close();
    }
}
