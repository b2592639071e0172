package wallchart.web;

/** The service cannot listen where it should. The message is one line for people. */
public final class PortInUse extends RuntimeException {

    private static final long serialVersionUID = 1;

    PortInUse(WebSettings settings, Throwable cause) {
        super(
                "cannot listen on " + settings.host() + " port " + settings.port()
                        + ": it is in use or not allowed; stop the other program or name another host or port",
                cause);
    }
}
