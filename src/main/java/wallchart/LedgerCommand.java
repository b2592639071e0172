package wallchart;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;
import wallchart.Refusals.Refused;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.Event;
import wallchart.audit.Reopening;
import wallchart.audit.Verification;
import wallchart.people.Confirmation;
import wallchart.people.People;
import wallchart.people.Person;
import wallchart.people.Role;

/** The way back from a ledger that was stopped because of a doubt. */
@Command(
        name = "ledger",
        description = "The ledger of a site. Stop the service before.",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND")
final class LedgerCommand implements Runnable {

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "name a command: resume");
    }

    @Command(
            name = "resume",
            description = {
                "Checks a ledger that is in doubt or stopped, says what is wrong, and goes on with it: the medical physicist"
                        + " answers for it with their password and a reason. Stop the service before.",
                "The doubt stays on record as an event, and every later check names it. The checkpoints are put aside, and new"
                        + " ones begun. A record that differs from its event is never acknowledged: restore it."
            },
            mixinStandardHelpOptions = true)
    int resume(
            @Mixin ConfigOption config,
            @Option(names = "--name", required = true, description = "Account of the medical physicist.") String name,
            @Option(
                            names = "--reason",
                            required = true,
                            description = "What was found out about the doubt and why the ledger may go on.")
                    String reason) {
        var settings = config.settings();
        return SiteDatabase.with(settings, database -> {
            var people = Application.people(settings, database);
            var audit = new AuditTrail(database, new Checkpoints(settings.ledgerFolder()), LedgerRecords.all());
            var physicist = physicist(people, name);
            sayWhatIsWrong(audit);
            confirm(people, physicist);
            var event = resumed(audit.resume(physicist.asActor(), reason));
            say("resumed by event " + event.seq() + ": start the service, and keep a copy of "
                    + settings.ledgerFolder());
            return 0;
        });
    }

    private static Person physicist(People people, String name) {
        var person = people.findByName(name)
                .orElseThrow(() -> new Refused("there is no account \"" + name + "\": see person list"));
        if (person.role() != Role.PHYSICIST) {
            throw new Refused("\"" + name + "\" has the role " + person.role().slug()
                    + ": only a physicist answers for a ledger in doubt");
        }
        return person;
    }

    private void sayWhatIsWrong(AuditTrail audit) {
        var found = audit.verify();
        var stop = audit.findStop();
        new FoundByCheck(spec.commandLine().getOut()).say(found);
        stop.ifPresent(why -> say("stopped: " + why));
        if (found instanceof Verification.Sound && stop.isEmpty()) {
            throw new Refused("the ledger is neither stopped nor in doubt: there is nothing to resume");
        }
    }

    private static void confirm(People people, Person physicist) {
        var password = Passwords.read(physicist.name());
        if (!(people.confirm(physicist, password, "command line") instanceof Confirmation.Confirmed)) {
            throw new Refused(
                    "the password of \"" + physicist.name() + "\" was not accepted: the ledger stays as it is");
        }
    }

    private static Event resumed(Reopening outcome) {
        if (outcome instanceof Reopening.Refused refused) {
            throw new Refused(refused.text());
        }
        return ((Reopening.Reopened) outcome).event();
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
    }
}
