package wallchart.web;

/**
 * Where the service listens.
 *
 * @param host the one address it binds, such as 127.0.0.1
 * @param port 0 for any free one
 * @param secureCookies whether browsers reach it over TLS, by a proxy in front: cookies are then for TLS only
 */
public record WebSettings(String host, int port, boolean secureCookies) {

    private static final int LARGEST_PORT = 65_535;

    public WebSettings {
        if (host.isBlank()) {
            throw new IllegalArgumentException("host is empty: name the address to listen on, such as 127.0.0.1");
        }
        if (port < 0 || port > LARGEST_PORT) {
            throw new IllegalArgumentException("port is " + port + ": 0 for any free one, or 1 to " + LARGEST_PORT);
        }
    }
}
