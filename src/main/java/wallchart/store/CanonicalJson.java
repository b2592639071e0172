package wallchart.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.erdtman.jcs.JsonCanonicalizer;

/**
 * The one written form of a JSON document (RFC 8785): equal documents have equal bytes, so a digest stands for what they say, in
 * any language.
 *
 * @param text the document in that form
 */
public record CanonicalJson(String text) {

    /** Brings a JSON text into its canonical form; the text must be JSON. */
    public static CanonicalJson of(String json) {
        try {
            return new CanonicalJson(new JsonCanonicalizer(json).getEncodedString());
        } catch (IOException notJson) {
            throw new UncheckedIOException(notJson);
        }
    }

    /** {@code sha256:} and 64 hex digits. */
    public String digest() {
        return "sha256:" + Sha256.hex(text);
    }
}
