package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.people.PeopleFixtures.ADDRESS;
import static wallchart.people.PeopleFixtures.PASSWORD;
import static wallchart.people.PeopleFixtures.aRadiographer;
import static wallchart.people.PeopleFixtures.disable;
import static wallchart.people.PeopleFixtures.peopleOf;
import static wallchart.people.PeopleFixtures.signedIn;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.text.Normalizer;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wallchart.store.OnEveryDatabase;

class SignInTest extends OnEveryDatabase {

    private static final long MEMORY_OF_A_HASH = 19L * 1024 * 1024;
    private static final String WRONG = "not the password at all";

    private People people;
    private Person aino;

    @BeforeEach
    void aino_has_an_account() {
        people = peopleOf(database());
        aino = aRadiographer(people, "aino");
    }

    @Test
    void the_right_password_signs_in_for_twelve_hours() {
        assertThat(people.signIn(" Aino", PASSWORD, ADDRESS))
                .isInstanceOfSatisfying(SignIn.SignedIn.class, signedIn -> {
                    assertThat(signedIn.person()).isEqualTo(aino);
                    assertThat(signedIn.expires()).isEqualTo(clock().instant().plus(Duration.ofHours(12)));
                    assertThat(signedIn.sessionToken()).hasSize(43).isNotEqualTo(signedIn.csrfToken());
                    assertThat(signedIn.toString()).doesNotContain(signedIn.sessionToken(), signedIn.csrfToken());
                });
    }

    @Test
    void letters_composed_of_parts_are_the_same_password() {
        var decomposed = Normalizer.normalize(PASSWORD, Normalizer.Form.NFD);
        assertThat(decomposed).isNotEqualTo(PASSWORD);
        assertThat(people.signIn("aino", decomposed, ADDRESS)).isInstanceOf(SignIn.SignedIn.class);
    }

    @Test
    void an_unknown_name_a_wrong_password_and_a_disabled_account_answer_the_same() {
        var refused = new SignIn.Refused();
        assertThat(people.signIn("aino", WRONG, ADDRESS)).isEqualTo(refused);
        assertThat(people.signIn("aino", "", ADDRESS)).isEqualTo(refused);
        assertThat(people.signIn("aino", "x".repeat(1000), ADDRESS)).isEqualTo(refused);
        assertThat(people.signIn("nobody", PASSWORD, ADDRESS)).isEqualTo(refused);
        assertThat(people.signIn("no\0body", PASSWORD, ADDRESS)).isEqualTo(refused);
        disable(people, aino);
        assertThat(people.signIn("aino", PASSWORD, ADDRESS)).isEqualTo(refused);
    }

    /** A name that is not there must cost as much as one that is: the hash fills 19 MiB of memory, nothing else comes near. */
    @Test
    void an_unknown_name_is_hashed_against_as_well() {
        assertThat(bytesAllocatedBy("aino")).isGreaterThan(MEMORY_OF_A_HASH);
        assertThat(bytesAllocatedBy("nobody")).isGreaterThan(MEMORY_OF_A_HASH);
    }

    private long bytesAllocatedBy(String name) {
        var threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getCurrentThreadAllocatedBytes();
        assertThat(people.signIn(name, WRONG, ADDRESS)).isEqualTo(new SignIn.Refused());
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    @Test
    void after_five_wrong_passwords_not_even_the_right_one_is_looked_at() {
        for (int attempt = 0; attempt < 5; attempt++) {
            assertThat(people.signIn("aino", WRONG, ADDRESS)).isInstanceOf(SignIn.Refused.class);
            clock().advance(Duration.ofSeconds(10));
        }
        assertThat(people.signIn("aino", PASSWORD, ADDRESS))
                .isEqualTo(new SignIn.Throttled(Duration.ofMinutes(5).minusSeconds(50)));
        assertThat(people.signIn("AINO ", PASSWORD, ADDRESS)).isInstanceOf(SignIn.Throttled.class);
    }

    @Test
    void others_and_other_addresses_are_not_kept_waiting() {
        var other = aRadiographer(people, "other");
        fiveWrong();
        assertThat(people.signIn("aino", PASSWORD, "10.0.0.8")).isInstanceOf(SignIn.SignedIn.class);
        assertThat(signedIn(people, other).person()).isEqualTo(other);
    }

    @Test
    void who_waits_as_long_as_told_may_try_again() {
        fiveWrong();
        var wait = ((SignIn.Throttled) people.signIn("aino", PASSWORD, ADDRESS)).retryAfter();
        clock().advance(wait.minusSeconds(1));
        assertThat(people.signIn("aino", PASSWORD, ADDRESS)).isInstanceOf(SignIn.Throttled.class);
        clock().advance(Duration.ofSeconds(1));
        assertThat(people.signIn("aino", PASSWORD, ADDRESS)).isInstanceOf(SignIn.SignedIn.class);
    }

    @Test
    void the_right_password_forgives_the_wrong_ones_before_it() {
        for (int round = 0; round < 2; round++) {
            for (int attempt = 0; attempt < 4; attempt++) {
                people.signIn("aino", WRONG, ADDRESS);
            }
            assertThat(people.signIn("aino", PASSWORD, ADDRESS)).isInstanceOf(SignIn.SignedIn.class);
        }
    }

    @Test
    void a_password_given_again_before_a_signature_is_checked_and_counted_alike() {
        assertThat(people.confirm(aino, PASSWORD, ADDRESS)).isEqualTo(new Confirmation.Confirmed(aino));
        assertThat(people.confirm(aino, WRONG, ADDRESS)).isEqualTo(new Confirmation.Refused());
        for (int attempt = 0; attempt < 4; attempt++) {
            people.signIn("aino", WRONG, ADDRESS);
        }
        assertThat(people.confirm(aino, PASSWORD, ADDRESS)).isInstanceOf(Confirmation.Throttled.class);
        disable(people, aino);
        assertThat(people.confirm(aino, PASSWORD, "10.0.0.9")).isEqualTo(new Confirmation.Refused());
    }

    @Test
    void when_too_many_sign_in_at_once_some_are_asked_to_come_back_in_a_second() throws Exception {
        var answers = atOnce(40, number -> people.signIn("nobody" + number, WRONG, ADDRESS));
        assertThat(answers)
                .contains(new SignIn.Refused(), new SignIn.Throttled(Duration.ofSeconds(1)))
                .hasSize(40);
        assertThat(people.signIn("aino", PASSWORD, ADDRESS)).isInstanceOf(SignIn.SignedIn.class);
    }

    @Test
    void many_wrong_passwords_at_once_gain_no_extra_attempt() throws Exception {
        var answers = atOnce(8, number -> people.signIn("aino", WRONG, ADDRESS));
        assertThat(answers).filteredOn(SignIn.Refused.class::isInstance).hasSize(5);
    }

    /** Whoever knows the old password and asks all the time must not be left with a session when it is replaced. */
    @Test
    void a_password_replaced_while_it_is_checked_signs_nobody_in() throws Exception {
        var thread = Executors.newSingleThreadExecutor();
        try {
            var answer = database().<Future<SignIn>>write(PeopleFixtures.ADMINISTRATOR, tx -> {
                new PersonStore().setPasswordHash(tx, aino.id(), PasswordHashes.of(WRONG));
                var asked = thread.submit(() -> people.signIn("aino", PASSWORD, ADDRESS));
                assertThatThrownBy(() -> asked.get(700, TimeUnit.MILLISECONDS)).isInstanceOf(TimeoutException.class);
                return asked;
            });
            assertThat(answer.get()).isEqualTo(new SignIn.Refused());
        } finally {
            thread.shutdown();
        }
    }

    private static List<SignIn> atOnce(int many, IntFunction<SignIn> attempt) throws Exception {
        var threads = Executors.newFixedThreadPool(many);
        var gate = new CyclicBarrier(many);
        try {
            List<Callable<SignIn>> attempts = IntStream.range(0, many)
                    .<Callable<SignIn>>mapToObj(number -> () -> {
                        gate.await();
                        return attempt.apply(number);
                    })
                    .toList();
            List<SignIn> answers = new ArrayList<>();
            for (var answer : threads.invokeAll(attempts)) {
                answers.add(answer.get());
            }
            return answers;
        } finally {
            threads.shutdown();
        }
    }

    private void fiveWrong() {
        for (int attempt = 0; attempt < 5; attempt++) {
            people.signIn("aino", WRONG, ADDRESS);
        }
    }
}
