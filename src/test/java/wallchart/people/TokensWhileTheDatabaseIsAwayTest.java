package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.peopleOf;

import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.OnEveryDatabase;
import wallchart.store.StoreException;

/** The room page goes on while the database is away, and a revocation still counts. */
class TokensWhileTheDatabaseIsAwayTest extends OnEveryDatabase {

    private static final Duration A_SECOND = Duration.ofSeconds(1);

    private People people;
    private RoomToken.Issued issued;

    @BeforeEach
    void room_one_has_a_token() {
        people = peopleOf(database());
        issued = people.issueRoomToken(ADMINISTRATOR, "r1", "workstation by the door");
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
}
