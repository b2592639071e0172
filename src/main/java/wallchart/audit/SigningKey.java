package wallchart.audit;

import java.io.IOException;
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
import java.util.Arrays;
import java.util.Base64;
import java.util.Optional;

/**
 * A key to sign with, in a folder: a private file for its owner only, and the public key beside it, both base64. One key signs one
 * kind of thing, so each has a name of its own.
 */
final class SigningKey {

    private static final String PRIVATE = ".key";
    private static final String PUBLIC = ".pub";
    private static final int RAW_BYTES = 32;

    private final PublicKey shown;
    private final Path secret;

    private SigningKey(PublicKey shown, Path secret) {
        this.shown = shown;
        this.secret = secret;
    }

    /** The public key of that name; empty where nothing was signed yet. */
    static Optional<SigningKey> find(Path folder, String name) throws IOException {
        var file = folder.resolve(name + PUBLIC);
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            var encoded = new X509EncodedKeySpec(bytes(file));
            return Optional.of(new SigningKey(
                    KeyFactory.getInstance(Ed25519.ALGORITHM).generatePublic(encoded), folder.resolve(name + PRIVATE)));
        } catch (GeneralSecurityException | IllegalArgumentException noKey) {
            throw new IOException(file + " is no public key: restore it from a backup", noKey);
        }
    }

    /** The public key as it is written there; empty where there is none. */
    static String text(Path folder, String name) throws IOException {
        var file = folder.resolve(name + PUBLIC);
        return Files.exists(file) ? Files.readString(file) : "";
    }

    /** The key of that name, made where there is none. */
    static SigningKey findOrMake(Path folder, String name) throws IOException {
        var found = find(folder, name);
        if (found.isPresent()) {
            return found.get();
        }
        try {
            var pair = KeyPairGenerator.getInstance(Ed25519.ALGORITHM).generateKeyPair();
            write(folder.resolve(name + PRIVATE), pair.getPrivate().getEncoded(), "rw-------");
            write(folder.resolve(name + PUBLIC), pair.getPublic().getEncoded(), "rw-r--r--");
            return new SigningKey(pair.getPublic(), folder.resolve(name + PRIVATE));
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

    /** The public key as X.509 writes it. */
    byte[] encoded() {
        return shown.getEncoded();
    }

    /** The public key alone: the last 32 bytes of a SubjectPublicKeyInfo (RFC 8410 section 4). */
    byte[] raw() {
        var encoded = shown.getEncoded();
        return Arrays.copyOfRange(encoded, encoded.length - RAW_BYTES, encoded.length);
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

    boolean signed(byte[] message, byte[] signature) {
        return Ed25519.fits(shown, message, signature);
    }
}
