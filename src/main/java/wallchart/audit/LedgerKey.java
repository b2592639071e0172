package wallchart.audit;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.KeyFactory;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.spec.PKCS8EncodedKeySpec;
import java.security.spec.X509EncodedKeySpec;
import java.util.Base64;
import java.util.Optional;
import wallchart.store.Sha256;

/** The key that checkpoints are signed with: a private file for its owner only, and the public key beside it, both base64. */
final class LedgerKey {

    private static final String PRIVATE = "ledger.key";
    private static final String PUBLIC = "ledger.pub";
    private static final int ID_DIGITS = 16;

    private final PublicKey shown;
    private final Path secret;

    private LedgerKey(PublicKey shown, Path secret) {
        this.shown = shown;
        this.secret = secret;
    }

    /** The public key of that folder; empty where nothing was signed yet. */
    static Optional<LedgerKey> find(Path folder) throws IOException {
        var file = folder.resolve(PUBLIC);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            var encoded = new X509EncodedKeySpec(bytes(file));
            return Optional.of(new LedgerKey(
                    KeyFactory.getInstance(Ed25519.ALGORITHM).generatePublic(encoded), folder.resolve(PRIVATE)));
        } catch (GeneralSecurityException | IllegalArgumentException noKey) {
            throw new IOException(file + " is no public key: restore it from a backup", noKey);
        }
    }

    /** The public key of that folder as it is written there; empty where there is none. */
    static String text(Path folder) throws IOException {
        var file = folder.resolve(PUBLIC);
        return Files.exists(file) ? Files.readString(file) : "";
    }

    /** The key of that folder, made where there is none. */
    static LedgerKey findOrMake(Path folder) throws IOException {
        var found = find(folder);
        if (found.isPresent()) {
            return found.get();
        }
        try {
            var pair = KeyPairGenerator.getInstance(Ed25519.ALGORITHM).generateKeyPair();
            write(folder.resolve(PRIVATE), pair.getPrivate().getEncoded(), "rw-------");
            write(folder.resolve(PUBLIC), pair.getPublic().getEncoded(), "rw-r--r--");
            return new LedgerKey(pair.getPublic(), folder.resolve(PRIVATE));
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has Ed25519", impossible);
        }
    }

    private static void write(Path file, byte[] key, String rights) throws IOException {
        Files.deleteIfExists(file); // one without the other is of no use
        boolean posix = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        Files.createFile(
                file,
                posix
                        ? new FileAttribute<?>[] {
                            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
                        }
                        : new FileAttribute<?>[0]);
        Files.writeString(file, Base64.getEncoder().encodeToString(key) + "\n");
    }

    private static byte[] bytes(Path file) throws IOException {
        return Base64.getDecoder().decode(Files.readString(file).strip());
    }

    String id() {
        return Sha256.hex(shown.getEncoded()).substring(0, ID_DIGITS);
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
        return Ed25519.sign(secretKey(), message);
    }

    private PrivateKey secretKey() throws IOException {
        try {
            return KeyFactory.getInstance(Ed25519.ALGORITHM).generatePrivate(new PKCS8EncodedKeySpec(bytes(secret)));
        } catch (GeneralSecurityException | IllegalArgumentException noKey) {
            throw new IOException(secret + " is no private key: restore it from a backup", noKey);
        }
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
        return Ed25519.fits(shown, message, signature);
    }
}
