package wallchart;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.Verification;

/** Re-derives the ledger and says whether it can be trusted. */
@Command(
        name = "verify",
        description = {
            "Re-derives the ledger from its rows, holds it against its signed checkpoints and the records it speaks of; changes"
                    + " nothing. Stop the service before.",
            "Exit code 1 if anything is in doubt; the first event that cannot be trusted is named."
        },
        mixinStandardHelpOptions = true)
final class VerifyCommand implements Callable<Integer> {

    @Mixin
    private ConfigOption config;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var settings = config.settings();
        var checkpoints = new Checkpoints(settings.ledgerFolder());
        var found = SiteDatabase.<Verification>with(
                settings, database -> new AuditTrail(database, checkpoints, LedgerRecords.all()).verify());
        new FoundByCheck(spec.commandLine().getOut()).say(found);
        return found instanceof Verification.Sound ? 0 : 1;
    }
}
