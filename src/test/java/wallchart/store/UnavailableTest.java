package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import wallchart.store.StoreException.Kind;

/** A database that is away says so soon, and is used again once it is back. */
class UnavailableTest {

    private static final Actor SOMEBODY = Actor.system("test");
    private static final Duration SECOND = Duration.ofSeconds(1);
    private static final SettableClock CLOCK = SettableClock.at(OnEveryDatabase.START);

    @Test
    void nobody_is_told_to_wait_longer_than_a_few_seconds_for_a_connection() {
        var config = Pools.config("jdbc:h2:mem:never-opened", "somebody", "", 1);
        assertThat(Duration.ofMillis(config.getConnectionTimeout())).isBetween(SECOND, SECOND.multipliedBy(5));
        assertThat(config.getValidationTimeout()).isLessThan(config.getConnectionTimeout());
    }

    /** Would hang if the wait had no end. */
    @Test
    @Timeout(60)
    void who_waits_in_vain_for_a_connection_is_told_and_the_next_gets_it() throws Exception {
        var settings = TestDatabases.inMemory();
        var single = new DatabaseSettings(settings.url(), settings.user(), settings.password(), 1);
        var taken = new CountDownLatch(1);
        var release = new CountDownLatch(1);
        try (var database = Database.open(single, Mode.SITE, CLOCK)) {
            var holder = new Thread(() -> database.run(SOMEBODY, tx -> {
                taken.countDown();
                await(release);
            }));
            holder.start();
            await(taken);
            try {
                assertUnavailable(database);
            } finally {
                release.countDown();
                holder.join();
            }
            assertThat(database.<Integer>read(tx -> 1)).isOne();
        }
    }

    @Test
    void a_connection_the_server_cut_is_told_and_replaced() {
        var settings = TestDatabases.onPostgres();
        try (var database = Database.open(settings, Mode.SITE, CLOCK)) {
            assertThatThrownBy(() -> database.run(SOMEBODY, tx -> {
                        cutEveryConnection(settings);
                        tx.handle().execute("SELECT 1");
                    }))
                    .isInstanceOfSatisfying(StoreException.class, away -> assertThat(away.kind())
                            .isEqualTo(Kind.UNAVAILABLE));
            assertThat(database.<Integer>read(tx -> 1)).isOne();
        }
    }

    @Test
    void a_closed_database_is_unavailable() {
        var database = Database.open(TestDatabases.inMemory(), Mode.SITE, CLOCK);
        database.close();
        assertUnavailable(database);
    }

    @Test
    void a_server_that_is_not_there_cannot_be_opened_and_is_named() {
        var nowhere = new DatabaseSettings("jdbc:postgresql://127.0.0.1:1/wallchart", "wallchart", "x", 1);
        assertThatThrownBy(() -> Database.open(nowhere, Mode.SITE, CLOCK).close())
                .isInstanceOfSatisfying(StoreException.class, refused -> {
                    assertThat(refused.kind()).isEqualTo(Kind.CANNOT_OPEN);
                    assertThat(refused.getMessage()).contains(nowhere.url()).doesNotContain("\n");
                });
    }

    private static void assertUnavailable(Database database) {
        assertThatThrownBy(() -> database.run(SOMEBODY, tx -> {}))
                .isInstanceOfSatisfying(
                        StoreException.class, away -> assertThat(away.kind()).isEqualTo(Kind.UNAVAILABLE));
    }

    private static void cutEveryConnection(DatabaseSettings settings) {
        try (var connection = DriverManager.getConnection(settings.url(), settings.user(), settings.password());
                var statement = connection.createStatement()) {
            statement.execute("SELECT pg_terminate_backend(pid) FROM pg_stat_activity"
                    + " WHERE datname = CURRENT_DATABASE() AND pid <> pg_backend_pid()");
        } catch (SQLException failed) {
            throw new IllegalStateException(failed);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            latch.await();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }
}
