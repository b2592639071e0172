package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.store.StoreFixtures.databaseAway;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.people.TokensInUse.State;
import wallchart.store.StoreException;

/** One short look at the table twice a second, however many workstations ask; and what is known while there is none. */
class TokensInUseTest {

    private static final RoomToken TOKEN =
            new RoomToken(7, "r1", "workstation", Instant.EPOCH, "office", Optional.empty());
    private static final RoomToken OTHER =
            new RoomToken(8, "r2", "workstation", Instant.EPOCH, "office", Optional.empty());

    private final AtomicLong ticks = new AtomicLong();
    private final FakeTable table = new FakeTable();
    private final TokensInUse tokens = new TokensInUse(ticks::get, table);

    @BeforeEach
    void one_token_is_known() {
        table.inUse.put("hash", TOKEN);
        assertThat(tokens.find("hash")).contains(TOKEN);
        table.looks = 0;
        table.readings = 0;
    }

    @Test
    void a_thousand_questions_in_a_second_are_two_looks_and_no_reading() {
        for (int i = 0; i < 1000; i++) {
            pass(Duration.ofMillis(1));
            assertThat(tokens.find("hash")).contains(TOKEN);
            assertThat(tokens.find("unknown")).isEmpty();
        }
        assertThat(table.looks).isEqualTo(2);
        assertThat(table.readings).isZero();
    }

    @Test
    void a_token_issued_or_revoked_elsewhere_is_noticed_at_the_next_look() {
        table.inUse.put("other", OTHER);
        assertThat(tokens.find("other")).isEmpty();
        pass(TokensInUse.BETWEEN_LOOKS);
        assertThat(tokens.find("other")).contains(OTHER);
        table.revoke("hash");
        pass(TokensInUse.BETWEEN_LOOKS);
        assertThat(tokens.find("hash")).isEmpty();
        assertThat(tokens.find("other")).contains(OTHER);
    }

    @Test
    void what_was_changed_here_counts_at_once() {
        table.revoke("hash");
        tokens.revoke(TOKEN.id());
        assertThat(tokens.find("hash")).isEmpty();
    }

    @Test
    void an_answer_on_its_way_while_a_token_is_revoked_here_is_not_kept() {
        pass(TokensInUse.BETWEEN_LOOKS);
        table.inUse.put("other", OTHER);
        table.whileReading = () -> {
            table.revoke("hash");
            tokens.revoke(TOKEN.id());
        };
        tokens.find("other");
        assertThat(tokens.find("hash")).isEmpty();
        table.away = true;
        pass(TokensInUse.BETWEEN_LOOKS);
        assertThatThrownBy(() -> tokens.find("hash")).isInstanceOf(StoreException.class);
    }

    @Test
    void while_the_database_is_away_nobody_waits_for_it_twice_within_five_seconds() {
        table.away = true;
        for (int second = 0; second < 10; second++) {
            pass(Duration.ofSeconds(1));
            assertThat(tokens.find("hash")).contains(TOKEN);
            assertThatThrownBy(() -> tokens.find("unknown")).isInstanceOf(StoreException.class);
        }
        assertThat(table.looks).isEqualTo(2);
    }

    @Test
    void a_token_whose_revocation_was_asked_for_here_is_refused_while_the_database_is_away_and_believed_afterwards() {
        table.away = true;
        tokens.revoke(TOKEN.id());
        assertThatThrownBy(() -> tokens.find("hash")).isInstanceOf(StoreException.class);
        table.away = false;
        pass(TokensInUse.BETWEEN_TRIES);
        assertThat(tokens.find("hash")).contains(TOKEN);
    }

    @Test
    void once_the_database_is_back_it_is_believed() {
        table.away = true;
        pass(TokensInUse.BETWEEN_LOOKS);
        assertThat(tokens.find("hash")).contains(TOKEN);
        table.away = false;
        table.revoke("hash");
        pass(TokensInUse.BETWEEN_TRIES);
        assertThat(tokens.find("hash")).isEmpty();
    }

    @Test
    void after_three_days_the_last_answer_is_too_old() {
        table.away = true;
        pass(TokensInUse.LONGEST.minusSeconds(1));
        assertThat(tokens.find("hash")).contains(TOKEN);
        pass(Duration.ofSeconds(1));
        assertThatThrownBy(() -> tokens.find("hash")).isInstanceOf(StoreException.class);
    }

    @Test
    void one_thread_looks_while_the_others_go_on() throws Exception {
        var looking = new CountDownLatch(1);
        var goOn = new CountDownLatch(1);
        table.inUse.put("other", OTHER);
        table.whileReading = () -> {
            looking.countDown();
            await(goOn);
        };
        pass(TokensInUse.BETWEEN_LOOKS);
        var slow = CompletableFuture.supplyAsync(() -> tokens.find("other"));
        assertThat(looking.await(10, TimeUnit.SECONDS)).isTrue();
        assertThat(tokens.find("hash")).contains(TOKEN);
        goOn.countDown();
        assertThat(slow.get(10, TimeUnit.SECONDS)).contains(OTHER);
    }

    @Test
    void a_fault_of_the_program_is_not_hidden() {
        table.whileReading = () -> {
            throw new IllegalStateException("fault");
        };
        tokens.changed();
        assertThatThrownBy(() -> tokens.find("hash")).hasMessage("fault");
    }

    private void pass(Duration time) {
        ticks.addAndGet(time.toNanos());
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    private static final class FakeTable implements TokensInUse.Table {
        private final Map<String, RoomToken> inUse = new HashMap<>();
        private long revoked;
        private int looks;
        private int readings;
        private boolean away;
        private Runnable whileReading = () -> {};

        @Override
        public State state() {
            looks++;
            if (away) {
                throw databaseAway();
            }
            return new State(inUse.size() + revoked, revoked);
        }

        @Override
        public Map<String, RoomToken> inUse() {
            readings++;
            var read = Map.copyOf(inUse);
            whileReading.run();
            return read;
        }

        void revoke(String hash) {
            inUse.remove(hash);
            revoked++;
        }
    }
}
