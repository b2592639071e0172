package wallchart.people;

import com.github.benmanes.caffeine.cache.Ticker;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import wallchart.audit.RecordCheck;
import wallchart.store.Actor;
import wallchart.store.Database;

/**
 * Who may do what in this department: accounts, sign-in, room tokens. Safe for use by many threads. Each method is a
 * transaction of its own and cannot be called inside another.
 *
 * <p>Every act is entered in the ledger in its own transaction.
 *
 * <p>What a session or a token is worth is remembered for one second: what is revoked, here or on another node, stops
 * working within that second, and a room page that asks often does not ask the database each time. A failed query is an
 * exception, never "not signed in". While the database is away, a room token goes on being worth what it was last found to be,
 * for at most three days; what was revoked meanwhile elsewhere stops within seconds of the database's return.
 */
public final class People {

    static final Duration REMEMBERED_FOR = Duration.ofSeconds(1);

    private final Accounts accounts;
    private final AccountChanges changes;
    private final Sessions sessions;
    private final RoomTokens roomTokens;

    public People(Database database, SignInSettings settings) {
        this(database, settings, Ticker.systemTicker());
    }

    /** With a ticker of one's own, for tests that let a second pass without waiting. */
    public People(Database database, SignInSettings settings, Ticker ticker) {
        accounts = new Accounts(database);
        changes = new AccountChanges(database);
        sessions = new Sessions(database, settings, ticker);
        roomTokens = new RoomTokens(database, ticker);
    }

    /** How the ledger's check holds accounts, and room tokens, against their events. */
    public static List<RecordCheck> records() {
        return List.of(new AccountRecords(), new RoomTokenRecords());
    }

    /** Gives somebody an account. */
    public Registration add(Actor by, NewPerson person) {
        return accounts.add(by, person);
    }

    /**
     * Gives one of the four people of the demonstration an account with the password {@code demo-} and their name.
     *
     * @throws IllegalStateException outside a demonstration, or for any other name
     */
    public Registration addDemonstrationPerson(Actor by, String name, String printedName, Role role) {
        return accounts.addForDemonstration(by, name, printedName, role);
    }

    /**
     * Gives somebody another password and ends all their sessions.
     *
     * @param revision of the account as the one who changes it saw it; so in the methods below
     */
    public Registration setPassword(Actor by, long personId, int revision, String password) {
        return forgetting(changes.setPassword(by, personId, revision, password, OptionalLong.empty()));
    }

    /** Sets the password of the one who is signed in, after {@link #confirm}; ends all their sessions but this one. */
    public Registration setOwnPassword(Actor by, Session session, String password) {
        var person = session.person();
        var kept = OptionalLong.of(session.id());
        return forgetting(changes.setPassword(by, person.id(), person.revision(), password, kept));
    }

    /** Somebody does something else in the department from now on; ends all their sessions. */
    public Registration changeRole(Actor by, long personId, int revision, Role role) {
        return forgetting(changes.changeRole(by, personId, revision, role));
    }

    /** Somebody may no longer sign in, and is signed out everywhere. */
    public Registration disable(Actor by, long personId, int revision, String reason) {
        return forgetting(changes.disable(by, personId, revision, reason));
    }

    /** Somebody may sign in again. */
    public Registration enable(Actor by, long personId, int revision, String reason) {
        return forgetting(changes.enable(by, personId, revision, reason));
    }

    private Registration forgetting(Registration changed) {
        sessions.forgetAll();
        return changed;
    }

    public Optional<Person> find(long personId) {
        return accounts.find(personId);
    }

    /** By the name they sign in with, in lower case; disabled or not. */
    public Optional<Person> findByName(String name) {
        return accounts.findByName(name);
    }

    /** Everybody, disabled or not, by name. */
    public List<Person> list() {
        return accounts.list();
    }

    /**
     * Lets somebody in, or not.
     *
     * @param address where they ask from; wrong passwords are counted per name and address
     */
    public SignIn signIn(String name, String password, String address) {
        return sessions.signIn(name, password, address);
    }

    /** Checks the password of somebody who is signed in, as before a signature; wrong ones count as at sign-in. */
    public Confirmation confirm(Person person, String password, String address) {
        return sessions.confirm(person, password, address);
    }

    /**
     * Who is signed in with that token. Asking keeps the session alive, noted once a minute: it may therefore end up to a
     * minute before its idle time is over.
     */
    public Optional<Session> session(String token) {
        return sessions.find(token);
    }

    /** Ends the session; does nothing if there is none. */
    public void signOut(String token) {
        sessions.end(token);
    }

    /**
     * Makes a token for one workstation; the secret is in the answer and nowhere else.
     *
     * @throws IllegalArgumentException if room or label is blank, too long or more than a line
     */
    public RoomToken.Issued issueRoomToken(Actor by, String room, String label) {
        return roomTokens.issue(by, room, label);
    }

    /**
     * Makes the token {@code demo-} and the room's slug.
     *
     * @throws IllegalStateException outside a demonstration
     */
    public RoomToken.Issued issueDemonstrationToken(Actor by, String room) {
        return roomTokens.issueForDemonstration(by, room);
    }

    /** All tokens, revoked or not, by room. */
    public List<RoomToken> roomTokens() {
        return roomTokens.list();
    }

    public Optional<RoomToken> findRoomToken(long tokenId) {
        return roomTokens.findById(tokenId);
    }

    /** The token stops working; empty if there is no such token. */
    public Optional<RoomToken> revokeRoomToken(Actor by, long tokenId) {
        return roomTokens.revoke(by, tokenId);
    }

    /** Which room the holder of that secret may read; empty if none. */
    public Optional<RoomToken> roomOf(String bearerToken) {
        return roomTokens.find(bearerToken);
    }
}
