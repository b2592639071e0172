package wallchart.store;

import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 (FIPS 180-4) as columns, records and entity tags hold it: 64 lower-case hexadecimal digits. */
public final class Sha256 {

    private Sha256() {}

    /**
     * The digest of a text in UTF-8.
     *
     * @throws IllegalArgumentException for a text that UTF-8 cannot write, which would share its digest with others
     */
    public static String hex(String text) {
        return hex(bytes(text));
    }

    private static byte[] bytes(String text) {
        try {
            var encoded = StandardCharsets.UTF_8.newEncoder().encode(CharBuffer.wrap(text));
            var bytes = new byte[encoded.remaining()];
            encoded.get(bytes);
            return bytes;
        } catch (CharacterCodingException half) {
            throw new IllegalArgumentException("the text holds half a character and has no digest", half);
        }
    }

    /** The digest of bytes. */
    public static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(begin().digest(bytes));
    }

    /** The digest of everything that it was updated with; it begins anew then. */
    public static String hex(MessageDigest running) {
        return HexFormat.of().formatHex(running.digest());
    }

    /** A digest of what comes piece by piece. */
    public static MessageDigest begin() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
    }

    /** The digest of the bytes so far, which goes on afterwards. */
    public static byte[] soFar(MessageDigest digest) {
        try {
            return ((MessageDigest) digest.clone()).digest();
        } catch (CloneNotSupportedException missing) {
            throw new IllegalStateException("the SHA-256 of every Java can be copied", missing);
        }
    }
}
