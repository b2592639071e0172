package wallchart;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import wallchart.Refusals.Refused;

/** Asks for a password on the terminal without showing it, or takes the first line of standard input where there is none. */
final class Passwords {

    private Passwords() {}

    static String read(String name) {
        var console = System.console();
        if (console != null) {
            var typed = console.readPassword("Password of %s: ", name);
            return typed == null ? "" : new String(typed);
        }
        try {
            var line = new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).readLine();
            if (line == null) {
                throw new Refused("no password on standard input: type it on a terminal or pipe one line in");
            }
            return line;
        } catch (IOException failed) {
            throw new Refused("the password cannot be read from standard input: " + failed.getMessage());
        }
    }
}
