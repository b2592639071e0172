package wallchart.store;

import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Clock;
import java.util.UUID;

/** A program that writes one row after another and prints each as soon as the write returned, until it is killed. */
public final class CommitUntilKilled {

    private CommitUntilKilled() {}

    /** Arguments: the folder of the database; {@code careful} for our own writes, {@code careless} for H2's defaults. */
    public static void main(String[] arguments) throws Exception {
        var settings = TestDatabases.inFile(Path.of(arguments[0]));
        if (arguments[1].equals("careful")) {
            careful(settings);
        } else {
            careless(settings);
        }
    }

    private static void careful(DatabaseSettings settings) throws InterruptedException {
        var database = Database.open(settings, Mode.SITE, Clock.systemUTC());
        var notes = new Notes();
        Runnable writer = () -> {
            while (true) {
                var text = UUID.randomUUID().toString();
                database.run(Actor.system("crash test"), tx -> notes.add(tx, text));
                acknowledge(text);
            }
        };
        var second = new Thread(writer);
        second.start();
        writer.run();
        second.join();
    }

    private static void careless(DatabaseSettings settings) throws SQLException {
        try (Connection connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var insert = connection.prepareStatement(
                        "INSERT INTO note (text, written_at) VALUES (?, CURRENT_TIMESTAMP)")) {
            while (true) {
                var text = UUID.randomUUID().toString();
                insert.setString(1, text);
                insert.executeUpdate();
                acknowledge(text);
            }
        }
    }

    private static synchronized void acknowledge(String text) {
        System.out.print(text + "\n");
        System.out.flush();
    }
}
