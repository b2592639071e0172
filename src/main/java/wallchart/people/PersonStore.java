package wallchart.people;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.mapper.RowMapper;
import wallchart.store.ReadTx;
import wallchart.store.Tx;

/** The table of people. */
final class PersonStore {

    private static final String COLUMNS =
            "person.id, person.name, person.printed_name, person.role, person.disabled_at";

    static final RowMapper<Person> PERSON = (rows, context) -> person(rows, "id");

    /** The person in a row whose id stands under that label. */
    static Person person(ResultSet rows, String idLabel) throws SQLException {
        return new Person(
                rows.getLong(idLabel),
                rows.getString("name"),
                rows.getString("printed_name"),
                Role.ofSlug(rows.getString("role")),
                instant(rows, "disabled_at"));
    }

    static Optional<Instant> instant(ResultSet rows, String column) throws SQLException {
        return Optional.ofNullable(rows.getObject(column, OffsetDateTime.class)).map(OffsetDateTime::toInstant);
    }

    Person add(Tx tx, NewPerson person, String passwordHash) {
        long id = tx.handle()
                .createUpdate("INSERT INTO person (name, printed_name, role, password_hash, created_at, created_by)"
                        + " VALUES (:name, :printedName, :role, :passwordHash, :at, :by)")
                .bind("name", person.name())
                .bind("printedName", person.printedName())
                .bind("role", person.role().slug())
                .bind("passwordHash", passwordHash)
                .bind("at", tx.at())
                .bind("by", tx.by().name())
                .executeAndReturnGeneratedKeys("id")
                .mapTo(Long.class)
                .one();
        return find(tx, id).orElseThrow();
    }

    Optional<Person> find(ReadTx tx, long id) {
        return tx.handle()
                .createQuery("SELECT " + COLUMNS + " FROM person WHERE id = :id")
                .bind("id", id)
                .map(PERSON)
                .findOne();
    }

    Optional<Person> findByName(ReadTx tx, String name) {
        return tx.handle()
                .createQuery("SELECT " + COLUMNS + " FROM person WHERE name = :name")
                .bind("name", name)
                .map(PERSON)
                .findOne();
    }

    List<Person> list(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT " + COLUMNS + " FROM person ORDER BY name")
                .map(PERSON)
                .list();
    }

    /** The hash of somebody who may sign in. */
    Optional<String> findPasswordHash(ReadTx tx, String name) {
        return tx.handle()
                .createQuery("SELECT password_hash FROM person WHERE name = :name AND disabled_at IS NULL")
                .bind("name", name)
                .mapTo(String.class)
                .findOne();
    }

    void setPasswordHash(Tx tx, long id, String passwordHash) {
        tx.handle()
                .createUpdate("UPDATE person SET password_hash = :passwordHash WHERE id = :id")
                .bind("passwordHash", passwordHash)
                .bind("id", id)
                .execute();
    }

    /** Keeps the instant of the first time where it is disabled already. */
    void disable(Tx tx, long id) {
        tx.handle()
                .createUpdate("UPDATE person SET disabled_at = :at WHERE id = :id AND disabled_at IS NULL")
                .bind("at", tx.at())
                .bind("id", id)
                .execute();
    }

    void enable(Tx tx, long id) {
        tx.handle()
                .createUpdate("UPDATE person SET disabled_at = NULL WHERE id = :id")
                .bind("id", id)
                .execute();
    }
}
