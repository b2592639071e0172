package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Requests are served under a user, or a role, that cannot change the ledger: also where somebody took the triggers away. */
class ApplicationRightsTest extends OnEveryDatabase {

    private static final String ADD =
            "INSERT INTO audit_event (seq, at, actor, role, action, object, reason, details, prev, hash)"
                    + " VALUES (1, CURRENT_TIMESTAMP, 'a', 'b', 'c', 'd', '', '{}', 'p', 'h')";

    @BeforeEach
    void a_ledger_of_one_event_without_its_triggers() throws SQLException {
        asOwner("DROP TRIGGER audit_event_append_only" + (onH2() ? "" : " ON audit_event"));
        if (!onH2()) {
            asOwner("DROP TRIGGER audit_event_no_truncate ON audit_event");
        }
        asApplication(ADD);
    }

    private boolean onH2() {
        return kind() == TestDatabases.Kind.H2;
    }

    private void asOwner(String statement) throws SQLException {
        try (var connection = database().engine().owner().getConnection();
                var execution = connection.createStatement()) {
            execution.execute(statement);
        }
    }

    private void asApplication(String statement) {
        database().run(Actor.system("test"), tx -> tx.handle().execute(statement));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "UPDATE audit_event SET reason = 'another'",
                "DELETE FROM audit_event",
                "TRUNCATE TABLE audit_event",
                "DROP TABLE audit_event",
                "ALTER TABLE audit_event ADD COLUMN more INTEGER",
                "UPDATE chart_version SET reason = 'another'",
                "DELETE FROM flyway_schema_history"
            })
    void what_is_append_only_cannot_be_changed(String statement) throws SQLException {
        assertThatThrownBy(() -> asApplication(statement)).isInstanceOf(StoreException.class);
        assertThat(database().<List<String>>read(tx -> tx.handle()
                        .createQuery("SELECT reason FROM audit_event")
                        .mapTo(String.class)
                        .list()))
                .containsExactly("");
    }

    /** The guard of the guard: it is the missing right that refuses, and nothing else. */
    @Test
    void its_owner_could() throws SQLException {
        asOwner("UPDATE audit_event SET reason = 'another'");
        assertThat(database().<String>read(tx -> tx.handle()
                        .createQuery("SELECT reason FROM audit_event")
                        .mapTo(String.class)
                        .one()))
                .isEqualTo("another");
    }
}
