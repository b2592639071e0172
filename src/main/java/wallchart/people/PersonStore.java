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
            "person.id, person.name, person.printed_name, person.role, person.disabled_at, person.revision";

    static final RowMapper<Person> PERSON = (rows, context) -> person(rows, "id");

    /** The person in a row whose id stands under that label. */
    static Person person(ResultSet rows, String idLabel) throws SQLException {
        return new Person(
                rows.getLong(idLabel),
                rows.getString("name"),
                rows.getString("printed_name"),
                Role.ofSlug(rows.getString("role")),
                instant(rows, "disabled_at"),
                rows.getInt("revision"));
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

    /** Holds the row until the commit, so that what was found is still so when it is changed. */
    Optional<Person> findToChange(Tx tx, long id) {
        return tx.handle()
                .createQuery("SELECT " + COLUMNS + " FROM person WHERE id = :id FOR UPDATE")
                .bind("id", id)
                .map(PERSON)
                .findOne();
    }

    /** Waits for whoever changes an administrator's account; in the order of ids, so that nobody waits for each other. */
    void holdAdministrators(Tx tx) {
        tx.handle()
                .createQuery("SELECT id FROM person WHERE role = 'administrator' AND disabled_at IS NULL"
                        + " ORDER BY id FOR UPDATE")
                .mapTo(Long.class)
                .list();
    }

    /** How many may sign in. */
    int administrators(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT COUNT(*) FROM person WHERE role = 'administrator' AND disabled_at IS NULL")
                .mapTo(Integer.class)
                .one();
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

    /** Every account, column by column. */
    List<StoredRecord> records(ReadTx tx) {
        return tx.handle()
                .createQuery("SELECT id, name, printed_name, role, password_hash, created_at, created_by, disabled_at,"
                        + " revision FROM person ORDER BY id")
                .map((rows, context) -> StoredRecordColumns.read(
                        rows,
                        AccountEvents.object(rows.getLong("id")),
                        "password_hash",
                        "name",
                        "printed_name",
                        "role",
                        "created_at",
                        "created_by",
                        "disabled_at",
                        "revision"))
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

    /** The same; holds the account until the commit, so that whoever gives it another password ends this session too. */
    Optional<String> findHashToSignIn(Tx tx, String name) {
        return tx.handle()
                .createQuery("SELECT password_hash FROM person WHERE name = :name AND disabled_at IS NULL FOR UPDATE")
                .bind("name", name)
                .mapTo(String.class)
                .findOne();
    }

    void setPasswordHash(Tx tx, long id, String passwordHash) {
        tx.handle()
                .createUpdate("UPDATE person SET password_hash = :passwordHash, revision = revision + 1 WHERE id = :id")
                .bind("passwordHash", passwordHash)
                .bind("id", id)
                .execute();
    }

    void setRole(Tx tx, long id, Role role) {
        tx.handle()
                .createUpdate("UPDATE person SET role = :role, revision = revision + 1 WHERE id = :id")
                .bind("role", role.slug())
                .bind("id", id)
                .execute();
    }

    void disable(Tx tx, long id) {
        tx.handle()
                .createUpdate("UPDATE person SET disabled_at = :at, revision = revision + 1 WHERE id = :id")
                .bind("at", tx.at())
                .bind("id", id)
                .execute();
    }

    void enable(Tx tx, long id) {
        tx.handle()
                .createUpdate("UPDATE person SET disabled_at = NULL, revision = revision + 1 WHERE id = :id")
                .bind("id", id)
                .execute();
    }
}
