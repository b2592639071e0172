package wallchart.audit;

import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.PublicKey;
import java.security.Signature;

/** Ed25519 signatures (RFC 8032) as the JDK makes them. */
final class Ed25519 {

    static final String ALGORITHM = "Ed25519";

    private Ed25519() {}

    static byte[] sign(PrivateKey key, byte[] message) {
        try {
            var signature = Signature.getInstance(ALGORITHM);
            signature.initSign(key);
            signature.update(message);
            return signature.sign();
        } catch (GeneralSecurityException impossible) {
            throw new IllegalStateException("every Java has Ed25519", impossible);
        }
    }

    /** Also false for bytes that are no signature at all. */
    static boolean fits(PublicKey key, byte[] message, byte[] given) {
        try {
            var signature = Signature.getInstance(ALGORITHM);
            signature.initVerify(key);
            signature.update(message);
            return signature.verify(given);
        } catch (GeneralSecurityException noSignature) {
            return false;
        }
    }
}
