package wallchart.audit;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.concurrent.atomic.AtomicLong;
import wallchart.store.Database;

/** Events checked per second, beside plain SHA-256 over the same bytes, read from the same table in the same run. */
final class VerificationRatio {

    private static final int ROUNDS = 3;

    private VerificationRatio() {}

    static void measure(Database database, AuditTrail trail) {
        for (int round = 1; round <= ROUNDS; round++) {
            long begin = System.nanoTime();
            var found = trail.verify();
            double checked = (System.nanoTime() - begin) / 1e9;
            if (!(found instanceof Verification.Sound sound)) {
                throw new IllegalStateException("not sound: " + found);
            }
            var hashing = new AtomicLong();
            begin = System.nanoTime();
            long bytes = hashAll(database, hashing);
            double plain = (System.nanoTime() - begin) / 1e9;
            System.out.printf(
                    "verification, round %d: %.0f events/s; reading and plain SHA-256 of %d MB: %.0f events/s; ratio %.2f (goal: at least 0.3); SHA-256 alone %.0f events/s, ratio %.2f%n",
                    round,
                    sound.events() / checked,
                    bytes / 1_000_000,
                    sound.events() / plain,
                    plain / checked,
                    sound.events() / (hashing.get() / 1e9),
                    hashing.get() / 1e9 / checked);
        }
    }

    /** One pass over the table with nothing but a hash of what stands in each row. */
    private static long hashAll(Database database, AtomicLong hashing) {
        return database.<Long>read(tx -> {
            var sha256 = sha256();
            var bytes = new AtomicLong();
            tx.handle()
                    .createQuery("SELECT seq, at, actor, role, action, object, room, reason, details, request_id, prev"
                            + " FROM audit_event ORDER BY seq")
                    .setFetchSize(1000)
                    .map((rows, context) -> {
                        var text = new StringBuilder(1000);
                        for (int column = 1; column <= 11; column++) {
                            text.append(rows.getString(column));
                        }
                        return text.toString().getBytes(StandardCharsets.UTF_8);
                    })
                    .forEach(row -> {
                        long begin = System.nanoTime();
                        sha256.update(row);
                        sha256.digest();
                        hashing.addAndGet(System.nanoTime() - begin);
                        bytes.addAndGet(row.length);
                    });
            return bytes.get();
        });
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }
}
