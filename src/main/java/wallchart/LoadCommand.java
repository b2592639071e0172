package wallchart;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wallchart.Refusals.Refused;
import wallchart.people.Confirmation;
import wallchart.people.Person;

/** Takes a department folder into a site's database, signed by its lead radiographer. */
@Command(
        name = "load",
        description = {
            "Installs the equipment and publishes the charts of a department folder, signed by the lead radiographer.",
            "The password is asked on the terminal, or read from standard input. Stop the service before."
        },
        mixinStandardHelpOptions = true)
final class LoadCommand implements Callable<Integer> {

    @Mixin
    private ConfigOption config;

    @Option(
            names = "--signed-by",
            paramLabel = "NAME",
            required = true,
            description = "Account of the lead radiographer.")
    private String name;

    @Parameters(paramLabel = "FOLDER", description = "One folder for each room, as for check.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var settings = config.settings();
        var rules = settings.chartRules();
        var rooms = new DepartmentFolder(folder).rooms();
        var out = spec.commandLine().getOut();
        return SiteDatabase.with(settings, database -> {
            var people = Application.people(settings, database);
            var signer = people.findByName(name)
                    .orElseThrow(() -> new Refused("there is no account \"" + name + "\": add it with person add"));
            confirm(people.confirm(signer, Passwords.read(name), "command line"), signer);
            new DepartmentLoader(database, rules, out::println)
                    .load(rooms, signer, settings.chart().reviewAfterMonths());
            out.flush();
            return 0;
        });
    }

    private static void confirm(Confirmation confirmation, Person signer) {
        if (!(confirmation instanceof Confirmation.Confirmed)) {
            throw new Refused("the password of \"" + signer.name() + "\" was not accepted: nothing was loaded");
        }
    }
}
