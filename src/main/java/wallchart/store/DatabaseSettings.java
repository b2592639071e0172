package wallchart.store;

/**
 * Where the department's data are kept.
 *
 * @param url {@code jdbc:h2:file:…} or {@code jdbc:h2:mem:name} without further settings, or {@code jdbc:postgresql:…}
 * @param user who owns the tables; on H2 the administrator of the file, who never serves a request
 * @param password of that user
 * @param poolSize connections kept for requests, 1 or more
 */
public record DatabaseSettings(String url, String user, String password, int poolSize) {

    public DatabaseSettings {
        if (poolSize < 1) {
            throw new IllegalArgumentException("pool size is " + poolSize + ": it must be at least 1");
        }
        if (user.isBlank()) {
            throw new IllegalArgumentException("database user is empty: name the user who owns the tables");
        }
    }

    /** Without the password, so that it never reaches a log. */
    @Override
    public String toString() {
        return "database " + url + " as " + user + ", pool of " + poolSize;
    }
}
