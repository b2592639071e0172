package wallchart.store;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Set;

/** A small table that only the tests of this package have, and the statements on it. */
final class Notes {

    /** Creates the table as its owner and lets the application use it. */
    static Notes createIn(Database database) throws SQLException {
        try (var connection = database.engine().owner().getConnection();
                var create = connection.createStatement()) {
            create.execute("CREATE TABLE note ("
                    + " id BIGINT GENERATED ALWAYS AS IDENTITY NOT NULL,"
                    + " text VARCHAR(100) NOT NULL,"
                    + " written_at TIMESTAMP WITH TIME ZONE NOT NULL,"
                    + " CONSTRAINT note_pk PRIMARY KEY (id),"
                    + " CONSTRAINT note_text_unique UNIQUE (text),"
                    + " CONSTRAINT note_text_not_empty CHECK (text <> ''))");
            create.execute("GRANT SELECT, INSERT, UPDATE, DELETE ON note TO " + H2Rights.APPLICATION);
        }
        return new Notes();
    }

    long add(ReadTx tx, String text) {
        return tx.handle()
                .createUpdate("INSERT INTO note (text, written_at) VALUES (:text, :at)")
                .bind("text", text)
                .bind("at", tx.at())
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
    }

    int count(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT COUNT(*) FROM note")
                .mapTo(Integer.class)
                .one();
    }

    String text(ReadTx tx, long id) {
        return tx.handle()
                .createQuery("SELECT text FROM note WHERE id = :id")
                .bind("id", id)
                .mapTo(String.class)
                .one();
    }

    Set<String> texts(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT text FROM note")
                .mapTo(String.class)
                .set();
    }

    Instant writtenAt(ReadTx tx, long id) {
        return tx.handle()
                .createQuery("SELECT written_at FROM note WHERE id = :id")
                .bind("id", id)
                .mapTo(Instant.class)
                .one();
    }
}
