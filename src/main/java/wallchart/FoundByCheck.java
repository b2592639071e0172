package wallchart;

import java.io.PrintWriter;
import wallchart.audit.Verification;

/** Says on the terminal what a check of the ledger found. */
final class FoundByCheck {

    private final PrintWriter out;

    FoundByCheck(PrintWriter out) {
        this.out = out;
    }

    void say(Verification found) {
        if (found instanceof Verification.Sound sound) {
            sound(sound);
        } else {
            out.println("in doubt: " + ((Verification.Doubtful) found).what());
            out.println("Leave the database as it is, tell the medical physicist, and compare with a backup.");
        }
        out.flush();
    }

    private void sound(Verification.Sound sound) {
        sound.notes().forEach(note -> out.println("note: " + note));
        out.println(sound.checkpoint()
                .map(signed -> "checkpoint " + signed.seq() + " of " + signed.at() + ", key " + signed.keyId())
                .orElse("no checkpoint yet: the service signs one when it runs"));
        out.println("sound: " + sound.events() + " events, head " + sound.head());
    }
}
