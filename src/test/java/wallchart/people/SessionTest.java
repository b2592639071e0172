package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.aRadiographer;
import static wallchart.people.PeopleFixtures.disable;
import static wallchart.people.PeopleFixtures.enable;
import static wallchart.people.PeopleFixtures.peopleOf;
import static wallchart.people.PeopleFixtures.signedIn;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.OnEveryDatabase;
import wallchart.store.StoreException;

class SessionTest extends OnEveryDatabase {

    private static final Duration A_SECOND = Duration.ofSeconds(1);

    private People people;
    private Person aino;
    private SignIn.SignedIn in;

    @BeforeEach
    void aino_is_signed_in() {
        people = peopleOf(database());
        aino = aRadiographer(people, "aino");
        in = signedIn(people, aino);
    }

    @Test
    void the_session_tells_who_it_is_and_knows_its_own_csrf_token() {
        var session = people.session(in.sessionToken()).orElseThrow();
        assertThat(session.person()).isEqualTo(aino);
        assertThat(session.expires()).isEqualTo(in.expires());
        assertThat(session.acceptsCsrfToken(in.csrfToken())).isTrue();
        assertThat(session.acceptsCsrfToken(in.sessionToken())).isFalse();
        assertThat(session.acceptsCsrfToken("")).isFalse();
    }

    @Test
    void any_other_token_is_nobody() {
        assertThat(people.session("")).isEmpty();
        assertThat(people.session(in.csrfToken())).isEmpty();
        assertThat(people.session(in.sessionToken() + "x")).isEmpty();
        assertThat(people.session("x".repeat(100_000))).isEmpty();
    }

    @Test
    void the_database_keeps_hashes_of_both_tokens_and_neither_of_them() {
        var kept = database().<String>read(tx -> tx.handle()
                .createQuery("SELECT * FROM sign_in_session")
                .mapToMap()
                .list()
                .toString());
        assertThat(kept).contains(Secrets.hash(in.sessionToken()), Secrets.hash(in.csrfToken()));
        assertThat(kept).doesNotContain(in.sessionToken(), in.csrfToken());
    }

    @Test
    void a_session_nobody_uses_is_over_after_fifteen_minutes() {
        clock().advance(Duration.ofMinutes(15).minusSeconds(1));
        assertThat(people.session(in.sessionToken())).isPresent();
        clock().advance(Duration.ofMinutes(15));
        assertThat(people.session(in.sessionToken())).isEmpty();
    }

    @Test
    void a_session_in_use_is_over_after_twelve_hours() {
        var end = clock().instant().plus(Duration.ofHours(12));
        while (clock().instant().isBefore(end)) {
            assertThat(people.session(in.sessionToken())).isPresent();
            clock().advance(Duration.ofMinutes(10));
        }
        assertThat(people.session(in.sessionToken())).isEmpty();
    }

    @Test
    void a_session_that_ran_out_does_not_come_back() {
        clock().advance(Duration.ofMinutes(16));
        assertThat(people.session(in.sessionToken())).isEmpty();
        assertThat(lastSeen()).isEqualTo(Instant.parse(START));
        assertThat(people.session(in.sessionToken())).isEmpty();
    }

    @Test
    void use_is_noted_at_most_once_a_minute() {
        clock().advance(Duration.ofSeconds(59));
        people.session(in.sessionToken());
        assertThat(lastSeen()).isEqualTo(Instant.parse(START));
        clock().advance(A_SECOND);
        people.session(in.sessionToken());
        assertThat(lastSeen()).isEqualTo(clock().instant());
    }

    @Test
    void who_signs_out_is_out_at_once() {
        assertThat(people.session(in.sessionToken())).isPresent();
        people.signOut(in.sessionToken());
        assertThat(people.session(in.sessionToken())).isEmpty();
        people.signOut("never signed in");
    }

    @Test
    void a_disabled_persons_session_ends_at_once_here_and_within_a_second_on_another_node() {
        var elsewhere = peopleOf(database());
        assertThat(elsewhere.session(in.sessionToken())).isPresent();
        assertThat(people.session(in.sessionToken())).isPresent();
        disable(people, aino);
        assertThat(people.session(in.sessionToken())).isEmpty();
        assertThat(elsewhere.session(in.sessionToken())).as("still remembered").isPresent();
        clock().advance(A_SECOND);
        assertThat(elsewhere.session(in.sessionToken())).isEmpty();
    }

    /** A sign-in and a disabling at the same moment may leave such a row. */
    @Test
    void a_session_nobody_ended_is_worth_nothing_once_its_person_is_disabled() {
        database().run(ADMINISTRATOR, tx -> new PersonStore().disable(tx, aino.id()));
        assertThat(people.session(in.sessionToken())).isEmpty();
    }

    @Test
    void enabling_an_account_does_not_revive_its_sessions() {
        disable(people, aino);
        enable(people, aino);
        assertThat(people.session(in.sessionToken())).isEmpty();
        assertThat(people.session(signedIn(people, aino).sessionToken())).isPresent();
    }

    @Test
    void a_new_password_ends_all_sessions() {
        assertThat(people.session(in.sessionToken())).isPresent();
        people.setPassword(ADMINISTRATOR, aino.id(), aino.revision(), "another long password");
        assertThat(people.session(in.sessionToken())).isEmpty();
    }

    @Test
    void rows_of_sessions_that_are_over_are_removed_a_day_later_and_never_one_in_use() {
        signedIn(people, aino);
        people.signOut(signedIn(people, aino).sessionToken());
        clock().advance(Duration.ofDays(1).plusHours(1));
        var inUse = signedIn(people, aino);
        assertThat(rows()).as("left alone, signed out, in use").isEqualTo(1);
        clock().advance(Duration.ofMinutes(14));
        signedIn(peopleOf(database()), aino);
        assertThat(rows()).isEqualTo(2);
        assertThat(people.session(inUse.sessionToken())).isPresent();
    }

    private int rows() {
        return database().read(tx -> tx.handle()
                .createQuery("SELECT COUNT(*) FROM sign_in_session")
                .mapTo(Integer.class)
                .one());
    }

    @Test
    void a_database_that_is_away_never_reads_as_signed_out() {
        people.session(in.sessionToken());
        database().close();
        assertThat(people.session(in.sessionToken())).as("remembered").isPresent();
        clock().advance(A_SECOND);
        assertThatThrownBy(() -> people.session(in.sessionToken())).isInstanceOf(StoreException.class);
    }

    private Instant lastSeen() {
        return database().read(tx -> tx.handle()
                .createQuery("SELECT last_seen_at FROM sign_in_session")
                .mapTo(Instant.class)
                .one());
    }
}
