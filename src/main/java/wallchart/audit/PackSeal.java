package wallchart.audit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;

/**
 * Seals what rooms take along, with a key of its own beside the ledger's: rooms remember it at their first visit, so it must last, and
 * it signs all day long, which the ledger's key must not. The key is made where there is none. Thread-safe.
 */
public final class PackSeal {

    /** Media type of what is sealed, without {@code application/} (RFC 7515 section 4.1.9). */
    public static final String TYPE = "wallchart-pack+jws";

    private static final String NAME = "packs";

    private final Path folder;
    private SigningKey key;

    /** @param folder of the ledger's key */
    public PackSeal(Path folder) {
        this.folder = folder;
    }

    /**
     * Signs a pack.
     *
     * @param packed the pack as JSON, packed by gzip (RFC 1952)
     * @param at when it is given out
     * @throws UncheckedIOException where the key cannot be read or made
     */
    public SealedPack seal(byte[] packed, Instant at) {
        try {
            var signing = key();
            return SealedPack.sign(signing, header(signing, at), packed);
        } catch (IOException failed) {
            throw new UncheckedIOException("no pack can be signed in " + folder, failed);
        }
    }

    private static String header(SigningKey key, Instant at) {
        return "{\"alg\":\"EdDSA\",\"typ\":\"" + TYPE + "\",\"cty\":\"gzip\",\"kid\":\"" + thumbprint(key)
                + "\",\"jwk\":" + jwk(key) + ",\"issuedAt\":\"" + at + "\"}";
    }

    /** The public key (RFC 8037 section 2), members in the order that its thumbprint wants. */
    static String jwk(SigningKey key) {
        return "{\"crv\":\"Ed25519\",\"kty\":\"OKP\",\"x\":\"" + SealedPack.BASE64URL.encodeToString(key.raw()) + "\"}";
    }

    /** RFC 7638, by SHA-256. */
    static String thumbprint(SigningKey key) {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(jwk(key).getBytes(StandardCharsets.UTF_8));
            return SealedPack.BASE64URL.encodeToString(digest);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    private synchronized SigningKey key() throws IOException {
        if (key == null) {
            Files.createDirectories(folder);
            var found = SigningKey.findOrMake(folder, NAME);
            if (!SealedPack.sign(found, "{}", new byte[0]).fits(found)) {
                throw new IOException("private and public key of packs are no pair: restore them from a backup");
            }
            key = found;
        }
        return key;
    }
}
