package wallchart;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** Looks whether the service could listen, before anything else is touched. */
final class FreePort {

    private FreePort() {}

    /**
     * @param setting where the port is chosen, for the next step
     * @throws Refusals.Refused naming the address and the next step
     */
    static void require(Settings.Server server, String setting) {
        try {
            new ServerSocket(server.port(), 1, InetAddress.getByName(server.host())).close();
        } catch (IOException taken) {
            throw new Refusals.Refused("cannot listen on " + server.host() + " port " + server.port() + ": "
                    + taken.getMessage() + "; stop what uses it, or set " + setting);
        }
    }
}
