package wallchart.people;

import java.time.Instant;

/** A person who is signed in, at the moment of asking. */
public final class Session {

    private final long id;
    private final Person person;
    private final String csrfHash;
    private final Instant lastSeen;
    private final Instant ends;

    Session(long id, Person person, String csrfHash, Instant lastSeen, Instant ends) {
        this.id = id;
        this.person = person;
        this.csrfHash = csrfHash;
        this.lastSeen = lastSeen;
        this.ends = ends;
    }

    public Person person() {
        return person;
    }

    /** When it ends even if it is used all the time. */
    public Instant expires() {
        return ends;
    }

    /** Whether this is the token that was handed out with this session: required for every write. */
    public boolean acceptsCsrfToken(String token) {
        return Secrets.matches(token, csrfHash);
    }

    long id() {
        return id;
    }

    Instant lastSeen() {
        return lastSeen;
    }

    Session seenAt(Instant at) {
        return new Session(id, person, csrfHash, at, ends);
    }
}
