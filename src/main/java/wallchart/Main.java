package wallchart;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.HelpCommand;

/** Where the program starts: arguments become a command, a command becomes an exit code. */
@Command(
        name = "wallchart",
        description = "Approved, room-specific X-ray technique charts, answered for the patient in front of you.",
        mixinStandardHelpOptions = true,
        versionProvider = Main.Version.class,
        synopsisSubcommandLabel = "COMMAND",
        footer = {
            "",
            "Supports, and never replaces, the operator's judgement, local rules and licensed practice.",
            "It drives no generator and keeps no patient data.",
            "Exit codes: 0 done, 1 refused with a reason, 2 wrong usage."
        },
        subcommands = {
            DemoCommand.class,
            ServeCommand.class,
            CheckCommand.class,
            LoadCommand.class,
            PersonCommand.class,
            TokenCommand.class,
            VerifyCommand.class,
            LedgerCommand.class,
            HelpCommand.class
        })
public final class Main {

    private Main() {}

    public static void main(String[] args) {
        int exitCode = run(args);
        if (exitCode != 0) {
            System.exit(exitCode);
        }
    }

    private static int run(String... args) {
        return run(
                new PrintWriter(System.out, true, StandardCharsets.UTF_8),
                new PrintWriter(System.err, true, StandardCharsets.UTF_8),
                args);
    }

    /** Runs one command; every refusal is one line on {@code err}. */
    static int run(PrintWriter out, PrintWriter err, String... args) {
        return commandLine()
                .setOut(out)
                .setErr(err)
                .setExecutionExceptionHandler((failure, command, parsed) -> {
                    command.getErr().println("wallchart: " + Refusals.oneLine(failure));
                    return CommandLine.ExitCode.SOFTWARE;
                })
                .execute(args);
    }

    /** Every command with its options. */
    static CommandLine commandLine() {
        return new CommandLine(new Main());
    }

    /** The version the jar was built as. */
    static final class Version implements CommandLine.IVersionProvider {
        @Override
        public String[] getVersion() {
            var version = Main.class.getPackage().getImplementationVersion();
            return new String[] {"wallchart " + (version == null ? "(from source)" : version)};
        }
    }
}
