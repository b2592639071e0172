package wallchart.store;

import java.util.List;
import java.util.stream.Collectors;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.CoreErrorCode;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.output.ValidateOutput;

/** Brings the tables up to what this program expects, or says in one line why it will not. */
final class Migration {

    private final Flyway flyway;
    private final String url;

    Migration(Engine engine, String url) {
        this(engine, url, List.of("classpath:db/common", "classpath:db/" + engine.dialect()));
    }

    Migration(Engine engine, String url, List<String> locations) {
        this.url = url;
        this.flyway = Flyway.configure()
                .dataSource(engine.owner())
                .locations(locations.toArray(String[]::new))
                .failOnMissingLocations(true)
                .validateMigrationNaming(true)
                .validateOnMigrate(true)
                .ignoreMigrationPatterns("*:pending") // not "*:future": a newer program's tables are not ours to use
                .outOfOrder(false)
                .baselineOnMigrate(false)
                .cleanDisabled(true)
                .load();
    }

    void run() {
        try {
            var found = flyway.validateWithResult();
            if (!found.validationSuccessful) {
                throw StoreException.cannotOpen(
                        "database " + url + ": " + reasons(found.invalidMigrations, found.getAllErrorMessages()), null);
            }
            flyway.migrate();
        } catch (FlywayException failed) {
            throw StoreException.cannotOpen("database " + url + ": " + firstLine(failed.getMessage()), failed);
        }
    }

    private static String reasons(List<ValidateOutput> invalid, String otherwise) {
        return invalid.isEmpty()
                ? firstLine(otherwise)
                : invalid.stream().map(Migration::reason).collect(Collectors.joining("; "));
    }

    private static String reason(ValidateOutput invalid) {
        var code = invalid.errorDetails.errorCode;
        if (code == CoreErrorCode.CHECKSUM_MISMATCH) {
            return "migration " + invalid.version
                    + " was edited after it ran here (checksum differs): restore the file, or restore a backup";
        }
        if (code == CoreErrorCode.APPLIED_VERSIONED_MIGRATION_NOT_RESOLVED) {
            return "it was written by a newer program (migration " + invalid.version
                    + " is unknown here): start that program";
        }
        return "migration " + invalid.version + ": " + firstLine(invalid.errorDetails.errorMessage);
    }

    private static String firstLine(String message) {
        return message.strip().lines().findFirst().orElse("no reason given").strip();
    }
}
