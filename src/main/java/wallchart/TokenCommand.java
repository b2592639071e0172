package wallchart;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wallchart.Refusals.Refused;
import wallchart.equipment.Rooms;
import wallchart.people.People;
import wallchart.people.RoomToken;
import wallchart.store.Actor;

/** Tokens of a site's room workstations. */
@Command(
        name = "token",
        description = "Tokens of the room workstations. Stop the service before.",
        mixinStandardHelpOptions = true,
        synopsisSubcommandLabel = "COMMAND")
final class TokenCommand implements Runnable {

    private static final Actor BY = Actor.system("command line");

    @Spec
    private CommandSpec spec;

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "name a command: issue, list or revoke");
    }

    @Command(
            name = "issue",
            description = "Issues a token for one room and shows it once; only its hash is kept.",
            mixinStandardHelpOptions = true)
    int issue(
            @Mixin ConfigOption config,
            @Parameters(paramLabel = "ROOM", description = "Room, such as r1.") String room,
            @Option(names = "--label", required = true, description = "Which workstation, for people.") String label) {
        var settings = config.settings();
        return SiteDatabase.with(settings, database -> {
            if (new Rooms(database).find(room).isEmpty()) {
                throw new Refused("there is no room \"" + room + "\": load its equipment first");
            }
            var issued = issue(Application.people(settings, database), room, label);
            say("token " + issued.token().id() + " for room " + room + ", shown only now:");
            say(issued.secret());
            return 0;
        });
    }

    private static RoomToken.Issued issue(People people, String room, String label) {
        try {
            return people.issueRoomToken(BY, room, label);
        } catch (IllegalArgumentException unusable) {
            throw new Refused(unusable.getMessage());
        }
    }

    @Command(name = "list", description = "Lists the tokens, never their secrets.", mixinStandardHelpOptions = true)
    int list(@Mixin ConfigOption config) {
        var settings = config.settings();
        return SiteDatabase.with(settings, database -> {
            Application.people(settings, database)
                    .roomTokens()
                    .forEach(token -> say(token.id() + "  " + token.room() + "  " + token.label() + "  issued "
                            + token.issuedAt()
                            + token.revokedAt().map(at -> "  revoked " + at).orElse("")));
            return 0;
        });
    }

    @Command(name = "revoke", description = "Revokes a token for good.", mixinStandardHelpOptions = true)
    int revoke(
            @Mixin ConfigOption config,
            @Parameters(paramLabel = "ID", description = "Number of the token, from token list.") long id) {
        var settings = config.settings();
        return SiteDatabase.with(settings, database -> {
            Application.people(settings, database)
                    .revokeRoomToken(BY, id)
                    .orElseThrow(() -> new Refused("there is no token " + id + ": see token list"));
            say("token " + id + " revoked");
            return 0;
        });
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
        spec.commandLine().getOut().flush();
    }
}
