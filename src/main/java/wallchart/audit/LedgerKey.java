package wallchart.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Optional;
import wallchart.store.Sha256;

/** The key that checkpoints are signed with, and nothing else. */
final class LedgerKey {

    private static final String NAME = "ledger";
    private static final int ID_DIGITS = 16;

    private final SigningKey key;

    private LedgerKey(SigningKey key) {
        this.key = key;
    }

    /** The public key of that folder; empty where nothing was signed yet. */
    static Optional<LedgerKey> find(Path folder) throws IOException {
        return SigningKey.find(folder, NAME).map(LedgerKey::new);
    }

    /** The public key of that folder as it is written there; empty where there is none. */
    static String text(Path folder) throws IOException {
        return SigningKey.text(folder, NAME);
    }

    /** The key of that folder, made where there is none. */
    static LedgerKey findOrMake(Path folder) throws IOException {
        return new LedgerKey(SigningKey.findOrMake(folder, NAME));
    }

    String id() {
        return Sha256.hex(key.encoded()).substring(0, ID_DIGITS);
    }

    Checkpoint sign(Checkpoint unsigned) throws IOException {
        var signature = sign(unsigned.text().getBytes(StandardCharsets.UTF_8));
        return new Checkpoint(
                unsigned.seq(),
                unsigned.hash(),
                unsigned.at(),
                unsigned.keyId(),
                Base64.getEncoder().encodeToString(signature));
    }

    byte[] sign(byte[] message) throws IOException {
        return key.sign(message);
    }

    boolean signed(Checkpoint checkpoint) {
        try {
            return checkpoint.keyId().equals(id())
                    && signed(
                            checkpoint.text().getBytes(StandardCharsets.UTF_8),
                            Base64.getDecoder().decode(checkpoint.signature()));
        } catch (IllegalArgumentException noBase64) {
            return false;
        }
    }

    boolean signed(byte[] message, byte[] signature) {
        return key.signed(message, signature);
    }
}
