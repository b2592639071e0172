package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.StoreException.Kind;

class DatabaseTest extends OnEveryDatabase {

    private static final Actor SOMEBODY = Actor.person(7, "lead", "lead");

    private Notes notes;

    @BeforeEach
    void a_table_to_write_into() throws Exception {
        notes = Notes.createIn(database());
    }

    @Test
    void what_a_write_did_is_there_for_the_next_read() {
        long id = database().write(SOMEBODY, tx -> notes.add(tx, "kept"));
        assertThat(database().<String>read(tx -> notes.text(tx, id))).isEqualTo("kept");
    }

    @Test
    void a_write_that_throws_leaves_nothing_behind() {
        assertThatThrownBy(() -> database().run(SOMEBODY, tx -> {
                    notes.add(tx, "never");
                    throw new IllegalStateException("changed my mind");
                }))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("changed my mind");
        assertThat(count()).isZero();
    }

    @Test
    void what_a_read_writes_is_not_kept() {
        try {
            database().read(tx -> notes.add(tx, "smuggled"));
        } catch (StoreException refusedByPostgres) {
            assertThat(refusedByPostgres.kind()).isEqualTo(Kind.FAULT);
        }
        assertThat(count()).isZero();
    }

    @Test
    void a_read_sees_one_state_even_while_others_write() {
        var counts = database().<int[]>read(tx -> {
            var before = notes.count(tx);
            elsewhere(() -> database().run(SOMEBODY, other -> notes.add(other, "meanwhile")));
            return new int[] {before, notes.count(tx)};
        });
        assertThat(counts).containsExactly(0, 0);
        assertThat(count()).isOne();
    }

    /** The state of all tables is that of the first question, also of tables that are asked later. */
    @Test
    void a_read_sees_one_state_over_all_tables() {
        var count = database().<Integer>read(tx -> {
            tx.handle()
                    .createQuery("SELECT COUNT(*) FROM person")
                    .mapTo(Integer.class)
                    .one();
            elsewhere(() -> database().run(SOMEBODY, other -> notes.add(other, "meanwhile")));
            return notes.count(tx);
        });
        assertThat(count).isZero();
        assertThat(count()).isOne();
    }

    @Test
    void a_store_method_that_reads_takes_a_write_as_well() {
        assertThat(database().<Integer>write(SOMEBODY, tx -> {
                    notes.add(tx, "mine");
                    return notes.count(tx);
                }))
                .isOne();
    }

    @Test
    void a_transaction_inside_another_on_the_same_thread_is_refused() {
        var message = "already open on this thread";
        assertThatThrownBy(
                        () -> database().run(SOMEBODY, tx -> database().run(SOMEBODY, inner -> notes.add(inner, "x"))))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining(message);
        assertThatThrownBy(() -> database().run(SOMEBODY, tx -> count())).hasMessageContaining(message);
        assertThatThrownBy(() -> database().read(tx -> count())).hasMessageContaining(message);
        assertThatThrownBy(() ->
                        database().run(SOMEBODY, tx -> database().at(clock()).read(notes::count)))
                .hasMessageContaining(message);
        assertThat(count()).isZero();
    }

    @Test
    void a_write_has_one_instant_in_whole_microseconds_and_one_actor() {
        var fine = SettableClock.at("2026-03-02T08:00:00.123456789Z");
        var seen = database().at(fine).<Instant>write(SOMEBODY, tx -> {
            fine.advance(java.time.Duration.ofSeconds(5));
            assertThat(tx.by()).isEqualTo(SOMEBODY);
            return tx.at();
        });
        assertThat(seen).isEqualTo(Instant.parse("2026-03-02T08:00:00.123456Z"));
    }

    @Test
    void a_history_is_written_at_past_instants_through_another_clock() {
        var past = SettableClock.at("2019-05-06T07:08:09Z");
        long id = database().at(past).write(SOMEBODY, tx -> notes.add(tx, "long ago"));
        assertThat(database().<Instant>read(tx -> notes.writtenAt(tx, id))).isEqualTo(past.instant());
        database().at(past).close();
        assertThat(count()).as("still open").isOne();
    }

    @Test
    void a_named_constraint_is_told_by_its_name_and_nothing_is_written() {
        database().run(SOMEBODY, tx -> notes.add(tx, "twice"));
        assertThatThrownBy(() -> database().run(SOMEBODY, tx -> {
                    notes.add(tx, "once");
                    notes.add(tx, "twice");
                }))
                .isInstanceOfSatisfying(ConstraintViolated.class, refused -> assertThat(refused.constraint())
                        .isEqualTo("note_text_unique"));
        assertThatThrownBy(() -> database().run(SOMEBODY, tx -> notes.add(tx, "")))
                .isInstanceOfSatisfying(ConstraintViolated.class, refused -> assertThat(refused.constraint())
                        .isEqualTo("note_text_not_empty"));
        assertThat(count()).isOne();
    }

    @Test
    void sql_the_database_does_not_take_is_a_fault_without_sql_in_its_message() {
        assertThatThrownBy(() -> database().read(tx -> tx.handle()
                        .createQuery("SELECT nothing FROM nowhere")
                        .mapTo(String.class)
                        .one()))
                .isInstanceOfSatisfying(StoreException.class, fault -> {
                    assertThat(fault.kind()).isEqualTo(Kind.FAULT);
                    assertThat(fault.getMessage()).doesNotContain("SELECT");
                });
    }

    @Test
    void a_thread_that_was_interrupted_does_not_take_the_database_down() {
        Thread.currentThread().interrupt();
        try {
            database().run(SOMEBODY, tx -> notes.add(tx, "interrupted"));
        } catch (StoreException onlyThisOne) {
            assertThat(onlyThisOne.kind()).isEqualTo(Kind.UNAVAILABLE);
        } finally {
            Thread.interrupted();
        }
        database().run(SOMEBODY, tx -> notes.add(tx, "afterwards"));
        assertThat(count()).isPositive();
    }

    private int count() {
        return database().read(notes::count);
    }

    private static void elsewhere(Runnable work) {
        var thread = new Thread(work);
        thread.start();
        try {
            thread.join();
        } catch (InterruptedException interrupted) {
            throw new IllegalStateException(interrupted);
        }
    }
}
