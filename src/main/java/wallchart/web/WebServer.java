package wallchart.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.http.HttpResponseException;
import io.javalin.util.JavalinBindException;
import java.util.function.Consumer;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.handler.GracefulHandler;
import wallchart.web.request.Bodies;

/** The running service. Closing it lets requests under way finish first. */
public final class WebServer implements AutoCloseable {

    private static final int LARGEST_HEADERS = 8 * 1024;
    private static final long LONGEST_FAREWELL_MS = 10_000;

    private final Javalin javalin;

    private WebServer(Javalin javalin) {
        this.javalin = javalin;
    }

    /**
     * Starts listening.
     *
     * @throws PortInUse where it cannot listen there
     * @throws IllegalStateException where a route names nobody who may use it
     */
    public static WebServer start(WebSettings settings, Services services) {
        var cookie = new SessionCookie(settings.secureCookies());
        var pages = Pages.of(services, cookie);
        var doorkeeper = new Doorkeeper(services.people(), cookie);
        return start(settings, config -> {
            config.routes.beforeMatched(doorkeeper::admit);
            Routes.declare(config.routes, pages);
        });
    }

    /** For tests: with routes of their own. */
    static WebServer start(WebSettings settings, Consumer<JavalinConfig> routes) {
        var javalin = Javalin.create(config -> {
            configure(config, settings);
            routes.accept(config);
        });
        try {
            return new WebServer(javalin.start());
        } catch (JavalinBindException refused) {
            throw new PortInUse(settings, refused);
        }
    }

    private static void configure(JavalinConfig config, WebSettings settings) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.startup.startupWatcherEnabled = false;
        config.jetty.host = settings.host();
        config.jetty.port = settings.port();
        config.http.defaultContentType = Answers.JSON;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = Bodies.LARGEST;
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.router.ignoreTrailingSlashes = false;
        config.jetty.modifyHttpConfiguration(WebServer::configure);
        config.jetty.modifyServer(WebServer::configure);
        config.jetty.modifyServletContextHandler(handler -> handler.setErrorHandler(new ServerErrors()));
        config.events.handlerAdded(Doorkeeper::requireRoles);
        config.routes.exception(HttpResponseException.class, Answers::failure);
        config.routes.exception(Exception.class, Answers::failure);
        config.router.javaLangErrorHandler(Answers::error);
    }

    private static void configure(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setHeaderCacheSize(
                0); // the one header that repeats is a room's token: not kept, and never the same behind a proxy
        http.setRequestHeaderSize(LARGEST_HEADERS);
    }

    private static void configure(Server server) {
        var gate = new Gate();
        gate.setHandler(new WholeBody(new GracefulHandler()));
        server.setHandler(gate);
        server.setErrorHandler(new ServerErrors());
        server.setStopTimeout(LONGEST_FAREWELL_MS);
    }

    /** The port it listens on. */
    public int port() {
        return javalin.port();
    }

    @Override
    public void close() {
        javalin.stop();
    }
}
