package wallchart;

import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** Runs the service for a site. */
@Command(
        name = "serve",
        description = "Runs the service with a site's settings, until it is stopped.",
        mixinStandardHelpOptions = true)
final class ServeCommand implements Callable<Integer> {

    @Mixin
    private ConfigOption config;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var settings = config.settings();
        FreePort.require(settings.server(), "server.port");
        var application =
                Application.start(settings, SiteDatabase.open(settings), settings.ledgerFolder(), Clock.systemUTC());
        spec.commandLine()
                .getOut()
                .println("Wallchart for " + settings.site().name() + ": http://"
                        + settings.server().host() + ":" + application.port());
        spec.commandLine().getOut().flush();
        Lifetime.untilStopped(application);
        return 0;
    }
}
