package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.peopleOf;

import java.time.Duration;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.OnEveryDatabase;

class RoomTokensTest extends OnEveryDatabase {

    private static final Duration A_SECOND = Duration.ofSeconds(1);

    private People people;
    private RoomToken.Issued issued;

    @BeforeEach
    void room_one_has_a_token() {
        people = peopleOf(database());
        issued = people.issueRoomToken(ADMINISTRATOR, "r1", "workstation by the door");
    }

    @Test
    void a_token_opens_its_own_room() {
        var other = people.issueRoomToken(ADMINISTRATOR, "r2", "workstation");
        assertThat(people.roomOf(issued.secret())).map(RoomToken::room).contains("r1");
        assertThat(people.roomOf(other.secret())).map(RoomToken::room).contains("r2");
    }

    @Test
    void any_other_secret_opens_no_room() {
        assertThat(people.roomOf("")).isEmpty();
        assertThat(people.roomOf("r1")).isEmpty();
        assertThat(people.roomOf(Secrets.newToken())).isEmpty();
        assertThat(people.roomOf(Secrets.hash(issued.secret()))).isEmpty();
        assertThat(people.roomOf("x".repeat(100_000))).isEmpty();
    }

    @Test
    void the_secret_is_32_random_bytes_shown_once_and_kept_as_a_hash() {
        assertThat(issued.secret()).matches("[A-Za-z0-9_-]{43}");
        assertThat(issued.toString()).doesNotContain(issued.secret());
        var kept = database().<String>read(tx -> tx.handle()
                .createQuery("SELECT * FROM room_token")
                .mapToMap()
                .list()
                .toString());
        assertThat(kept).contains(Secrets.hash(issued.secret())).doesNotContain(issued.secret());
    }

    @Test
    void the_list_shows_every_token_with_who_and_when() {
        var revoked = people.revokeRoomToken(ADMINISTRATOR, issued.token().id()).orElseThrow();
        var next = people.issueRoomToken(ADMINISTRATOR, "r1", "the new one").token();
        assertThat(people.roomTokens()).containsExactly(revoked, next);
        assertThat(revoked.issuedBy()).isEqualTo(ADMINISTRATOR.name());
        assertThat(revoked.issuedAt()).isEqualTo(clock().instant());
        assertThat(revoked.revokedAt()).contains(clock().instant());
        assertThat(next.id()).isGreaterThan(revoked.id());
    }

    @Test
    void a_revoked_token_is_refused_at_once_here_and_within_a_second_on_another_node() {
        var elsewhere = peopleOf(database());
        assertThat(elsewhere.roomOf(issued.secret())).isPresent();
        assertThat(people.roomOf(issued.secret())).isPresent();
        people.revokeRoomToken(ADMINISTRATOR, issued.token().id());
        assertThat(people.roomOf(issued.secret())).isEmpty();
        assertThat(elsewhere.roomOf(issued.secret())).as("still remembered").isPresent();
        clock().advance(A_SECOND);
        assertThat(elsewhere.roomOf(issued.secret())).isEmpty();
    }

    @Test
    void revoking_twice_keeps_the_first_and_an_unknown_token_is_told() {
        var first = people.revokeRoomToken(ADMINISTRATOR, issued.token().id());
        clock().advance(A_SECOND);
        assertThat(people.revokeRoomToken(ADMINISTRATOR, issued.token().id())).isEqualTo(first);
        assertThat(people.revokeRoomToken(ADMINISTRATOR, 4711)).isEmpty();
    }

    @Test
    void a_label_that_is_not_one_line_is_refused() {
        assertThatThrownBy(() -> people.issueRoomToken(ADMINISTRATOR, "r1", " "))
                .hasMessageContaining("label");
        assertThatThrownBy(() -> people.issueRoomToken(ADMINISTRATOR, "r1", "a\0b"))
                .hasMessageContaining("label");
        assertThatThrownBy(() -> people.issueRoomToken(ADMINISTRATOR, "", "a")).hasMessageContaining("room");
    }
}
