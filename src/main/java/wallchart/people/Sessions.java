package wallchart.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Semaphore;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import java.util.function.Supplier;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.Tx;

/** The part of {@link People} that lets people in and remembers who is in. */
final class Sessions {

    private static final int REMEMBERED = 10_000;
    /** So many passwords are hashed at once, 19 MiB each; more are asked to come back, so that room pages keep their threads. */
    private static final int HASHED_AT_ONCE = 8;
    /** Stands for whatever cannot be a name. */
    private static final String NOBODY = "";

    private static final Duration BETWEEN_LIFE_SIGNS = Duration.ofMinutes(1);
    /** So long, and not less, after a session is over its row is removed: clocks of nodes differ, but not by that. */
    private static final Duration KEPT = Duration.ofDays(1);

    private static final Duration BETWEEN_PURGES = Duration.ofDays(1);
    private static final Actor LIFE_SIGN = Actor.system("session");

    private final Database database;
    private final SignInSettings settings;
    private final Semaphore hashing = new Semaphore(HASHED_AT_ONCE);
    private final WrongPasswords wrongPasswords;
    private final Cache<String, Optional<Session>> remembered;
    private final PersonStore people = new PersonStore();
    private final SessionStore sessions = new SessionStore();
    private final AtomicReference<Instant> purgeDue = new AtomicReference<>(Instant.MIN);

    Sessions(Database database, SignInSettings settings, Ticker ticker) {
        this.database = database;
        this.settings = settings;
        this.wrongPasswords = new WrongPasswords(settings, ticker);
        this.remembered = Caffeine.newBuilder()
                .maximumSize(REMEMBERED)
                .expireAfterWrite(People.REMEMBERED_FOR)
                .ticker(ticker)
                .build();
    }

    SignIn signIn(String askedName, String password, String address) {
        var asked = askedName.strip().toLowerCase(Locale.ROOT);
        var name = Accounts.isName(asked) ? asked : NOBODY;
        return check(name, password, address, hash -> start(name, hash), SignIn.Refused::new, SignIn.Throttled::new);
    }

    Confirmation confirm(Person person, String password, String address) {
        return check(
                person.name(),
                password,
                address,
                hash -> new Confirmation.Confirmed(person),
                Confirmation.Refused::new,
                Confirmation.Throttled::new);
    }

    private <A> A check(
            String name,
            String password,
            String address,
            Function<String, ? extends A> right,
            Supplier<? extends A> wrong,
            Function<Duration, ? extends A> throttled) {
        if (!hashing.tryAcquire()) {
            return throttled.apply(Duration.ofSeconds(1));
        }
        Optional<String> hash;
        try {
            var wait = wrongPasswords.waitBefore(name, address);
            if (!wait.isZero()) {
                return throttled.apply(wait);
            }
            hash = findHash(name, password);
        } finally {
            hashing.release();
        }
        if (hash.isEmpty()) {
            return wrong.get();
        }
        wrongPasswords.forgive(name, address);
        return right.apply(hash.get());
    }

    /**
     * The stored hash that the password has; empty where it is not the password. Looks up and hashes in every case, so that the time
     * taken tells nothing; holds no connection while hashing.
     */
    private Optional<String> findHash(String name, String password) {
        var hash = database.<Optional<String>>read(tx -> people.findPasswordHash(tx, name));
        var allowed = database.mode() == Mode.DEMO || !Secrets.isForDemonstration(password);
        return PasswordHashes.matches(password, hash) & allowed ? hash : Optional.empty();
    }

    private SignIn start(String name, String checked) {
        var by = database.<Optional<Person>>read(tx -> people.findByName(tx, name));
        if (by.isEmpty()) {
            return new SignIn.Refused();
        }
        purgeIfDue();
        return database.write(by.get().asActor(), tx -> start(tx, name, checked));
    }

    /** Once a day, at somebody's sign-in; never removes a session that is in use. */
    private void purgeIfDue() {
        var due = purgeDue.get();
        if (!now().isBefore(due) && purgeDue.compareAndSet(due, now().plus(BETWEEN_PURGES))) {
            database.run(LIFE_SIGN, tx -> {
                var over = tx.at().minus(KEPT);
                sessions.purge(tx, over, over.minus(settings.idle()));
            });
        }
    }

    /** @param checked the hash that the password had when it was checked, a tenth of a second ago */
    private SignIn start(Tx tx, String name, String checked) {
        var person = people.findByName(tx, name);
        if (!people.findHashToSignIn(tx, name).equals(Optional.of(checked))) {
            return new SignIn.Refused(); // disabled, or given another password, while this one was being checked
        }
        var token = Secrets.newToken();
        var csrf = Secrets.newToken();
        var ends = tx.at().plus(settings.absolute());
        sessions.start(tx, person.get().id(), Secrets.hash(token), Secrets.hash(csrf), ends);
        return new SignIn.SignedIn(token, csrf, person.get(), ends);
    }

    Optional<Session> find(String token) {
        if (token.length() > Secrets.LONGEST_TOKEN || Secrets.isForDemonstration(token)) {
            return Optional.empty();
        }
        return remembered.get(Secrets.hash(token), this::load).filter(this::isRunning);
    }

    private Optional<Session> load(String tokenHash) {
        var found = database.<Optional<Session>>read(tx -> sessions.find(tx, tokenHash))
                .filter(this::isRunning);
        return found.map(
                session -> session.lastSeen().plus(BETWEEN_LIFE_SIGNS).isAfter(now()) ? session : seen(session));
    }

    private Session seen(Session session) {
        database.run(LIFE_SIGN, tx -> sessions.seen(tx, session.id()));
        return session.seenAt(now());
    }

    private boolean isRunning(Session session) {
        return now().isBefore(session.expires())
                && now().isBefore(session.lastSeen().plus(settings.idle()));
    }

    void end(String token) {
        var hash = Secrets.hash(token);
        var by = find(token).map(session -> session.person().asActor());
        database.run(by.orElse(LIFE_SIGN), tx -> sessions.end(tx, hash));
        remembered.invalidate(hash);
    }

    void forgetAll() {
        remembered.invalidateAll();
    }

    private Instant now() {
        return database.clock().instant();
    }
}
