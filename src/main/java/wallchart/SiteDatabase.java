package wallchart;

import java.time.Clock;
import java.util.function.Function;
import wallchart.store.Database;
import wallchart.store.Mode;

/** A site's database, opened for one command and closed after it. */
final class SiteDatabase {

    private SiteDatabase() {}

    static Database open(Settings settings) {
        return Database.open(DatabaseAccess.of(settings.database()), Mode.SITE, Clock.systemUTC());
    }

    static <T> T with(Settings settings, Function<Database, T> work) {
        try (var database = open(settings)) {
            return work.apply(database);
        }
    }
}
