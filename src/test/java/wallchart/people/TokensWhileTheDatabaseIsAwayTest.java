package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.peopleOf;
import static wallchart.people.PeopleFixtures.tickerOf;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.OnEveryDatabase;
import wallchart.store.StoreException;

/** The room page goes on while the database is away, and a revocation still counts. */
class TokensWhileTheDatabaseIsAwayTest extends OnEveryDatabase {

    private static final Duration A_SECOND = Duration.ofSeconds(1);
    private static final RoomToken TOKEN =
            new RoomToken(7, "r1", "workstation", Instant.EPOCH, "office", Optional.empty());

    private People people;
    private RoomToken.Issued issued;
    private LastAnswers lastAnswers;

    @BeforeEach
    void room_one_has_a_token() {
        people = peopleOf(database());
        issued = people.issueRoomToken(ADMINISTRATOR, "r1", "workstation by the door");
        lastAnswers = new LastAnswers(tickerOf(clock()));
    }

    @Test
    void a_token_that_was_good_stays_good_and_any_other_is_no_answer() {
        var unknown = Secrets.newToken();
        people.roomOf(issued.secret());
        people.roomOf(unknown);
        database().close();
        assertThat(people.roomOf(issued.secret())).isPresent();
        assertThat(people.roomOf(unknown)).as("remembered for a second").isEmpty();
        clock().advance(A_SECOND);
        assertThat(people.roomOf(issued.secret())).map(RoomToken::room).contains("r1");
        assertThatThrownBy(() -> people.roomOf(unknown)).isInstanceOf(StoreException.class);
        assertThatThrownBy(() -> people.roomOf(Secrets.newToken())).isInstanceOf(StoreException.class);
    }

    @Test
    void a_token_seen_revoked_stays_revoked() {
        var elsewhere = peopleOf(database());
        elsewhere.roomOf(issued.secret());
        people.roomOf(issued.secret());
        people.revokeRoomToken(ADMINISTRATOR, issued.token().id());
        clock().advance(A_SECOND);
        assertThat(elsewhere.roomOf(issued.secret())).isEmpty();
        database().close();
        clock().advance(A_SECOND);
        assertThatThrownBy(() -> people.roomOf(issued.secret())).isInstanceOf(StoreException.class);
        assertThatThrownBy(() -> elsewhere.roomOf(issued.secret())).isInstanceOf(StoreException.class);
    }

    @Test
    void a_token_whose_revoking_failed_needs_the_database_again() {
        people.roomOf(issued.secret());
        database().close();
        assertThatThrownBy(() ->
                        people.revokeRoomToken(ADMINISTRATOR, issued.token().id()))
                .isInstanceOf(StoreException.class);
        clock().advance(A_SECOND);
        assertThatThrownBy(() -> people.roomOf(issued.secret())).isInstanceOf(StoreException.class);
    }

    @Test
    void an_answer_on_its_way_while_the_token_is_revoked_is_not_kept() {
        lastAnswers.orLast("hash", () -> {
            lastAnswers.revoke(TOKEN.id());
            return Optional.of(TOKEN);
        });
        assertThatThrownBy(() -> lastAnswers.orLast("hash", this::away)).isInstanceOf(StoreException.class);
    }

    @Test
    void nobody_waits_for_the_database_twice_within_five_seconds() {
        var asked = new AtomicInteger();
        Supplier<Optional<RoomToken>> away = () -> {
            asked.incrementAndGet();
            return away();
        };
        lastAnswers.orLast("hash", () -> Optional.of(TOKEN));
        for (int second = 0; second < 10; second++) {
            assertThat(lastAnswers.orLast("hash", away)).contains(TOKEN);
            clock().advance(A_SECOND);
        }
        assertThat(asked).hasValue(2);
    }

    @Test
    void once_the_database_is_back_it_is_believed() {
        lastAnswers.orLast("hash", () -> Optional.of(TOKEN));
        assertThat(lastAnswers.orLast("hash", this::away)).contains(TOKEN);
        clock().advance(LastAnswers.BETWEEN_TRIES);
        assertThat(lastAnswers.orLast("hash", Optional::empty)).isEmpty();
        assertThatThrownBy(() -> lastAnswers.orLast("hash", this::away)).isInstanceOf(StoreException.class);
    }

    @Test
    void after_three_days_the_last_answer_is_too_old() {
        lastAnswers.orLast("hash", () -> Optional.of(TOKEN));
        clock().advance(LastAnswers.LONGEST.minusSeconds(1));
        assertThat(lastAnswers.orLast("hash", this::away)).contains(TOKEN);
        clock().advance(A_SECOND);
        assertThatThrownBy(() -> lastAnswers.orLast("hash", this::away)).isInstanceOf(StoreException.class);
    }

    @Test
    void a_fault_of_the_program_is_not_hidden() {
        lastAnswers.orLast("hash", () -> Optional.of(TOKEN));
        assertThatThrownBy(() -> lastAnswers.orLast("hash", () -> {
                    throw new IllegalStateException("fault");
                }))
                .isInstanceOf(IllegalStateException.class);
    }

    private Optional<RoomToken> away() {
        database().close();
        return database().read(tx -> Optional.empty());
    }
}
