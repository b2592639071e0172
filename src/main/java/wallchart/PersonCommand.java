package wallchart;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wallchart.Refusals.Refused;
import wallchart.people.NewPerson;
import wallchart.people.Registration;
import wallchart.people.Role;
import wallchart.store.Actor;

/** Accounts of a site's people. */
@Command(
        name = "person",
        description = "Accounts of a site's people. Stop the service before.",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND")
final class PersonCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "name a command: add or list");
    }

    @Command(
            name = "add",
            description = "Adds an account; the password is asked on the terminal, or read from standard input.",
            mixinStandardHelpOptions = true)
    int add(
            @Mixin ConfigOption config,
            @Parameters(paramLabel = "NAME", description = "Name to sign in with.") String name,
            @Option(names = "--printed-name", required = true, description = "Name as sheets print it.")
                    String printedName,
            @Option(names = "--role", required = true, description = "radiographer, lead, physicist or administrator.")
                    String role) {
        var settings = config.settings();
        return SiteDatabase.with(settings, database -> {
            var people = Application.people(settings, database);
            var person = new NewPerson(name, printedName, role(role), Passwords.read(name));
            if (people.add(Actor.system("command line"), person) instanceof Registration.Refused refused) {
                throw new Refused(refused.text());
            }
            spec.commandLine().getOut().println("added " + name + " as " + role);
            return 0;
        });
    }

    private static Role role(String slug) {
        try {
            return Role.ofSlug(slug);
        } catch (IllegalArgumentException unknown) {
            throw new Refused(unknown.getMessage());
        }
    }

    @Command(name = "list", description = "Lists the accounts.", mixinStandardHelpOptions = true)
    int list(@Mixin ConfigOption config) {
        var settings = config.settings();
        return SiteDatabase.with(settings, database -> {
            Application.people(settings, database).list().forEach(person -> spec.commandLine()
                    .getOut()
                    .println(person.name() + "  " + person.role().slug() + "  " + person.printedName()
                            + (person.isDisabled() ? "  disabled" : "")));
            return 0;
        });
    }
}
