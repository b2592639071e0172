package wallchart.web.request;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/**
 * The query of an address, decoded strictly: a bad escape or a text that is not UTF-8 is refused, not guessed at.
 *
 * <p>{@code +} is a space, as forms send it.
 */
final class QueryText {

    private QueryText() {}

    /** Values by name, in the order they came; empty where there is no query. */
    static Map<String, List<String>> read(String query) {
        var values = new LinkedHashMap<String, List<String>>();
        if (query == null || query.isEmpty()) {
            return values;
        }
        int start = 0;
        while (start <= query.length()) {
            int next = query.indexOf('&', start);
            int end = next < 0 ? query.length() : next;
            addPair(values, query.substring(start, end));
            start = end + 1;
        }
        return values;
    }

    private static void addPair(Map<String, List<String>> values, String pair) {
        int equals = pair.indexOf('=');
        var name = decoded(equals < 0 ? pair : pair.substring(0, equals));
        var value = equals < 0 ? "" : decoded(pair.substring(equals + 1));
        values.computeIfAbsent(name, first -> new ArrayList<>(1)).add(value);
    }

    private static String decoded(String text) {
        return text.indexOf('%') < 0 && isPlain(text) ? text.replace('+', ' ') : unescaped(text);
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) < ' ' || text.charAt(i) >= 127) {
                return false;
            }
        }
        return true;
    }

    private static String unescaped(String text) {
        var bytes = ByteBuffer.allocate(text.length());
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '%') {
                bytes.put((byte) (hex(text, i + 1) * 16 + hex(text, i + 2)));
                i += 2;
            } else if (c >= ' ' && c < 127) {
                bytes.put((byte) (c == '+' ? ' ' : c));
            } else {
                throw malformed();
            }
        }
        try {
            return StandardCharsets.UTF_8.newDecoder().decode(bytes.flip()).toString();
        } catch (CharacterCodingException notUtf8) {
            throw malformed();
        }
    }

    private static int hex(String text, int index) {
        if (index >= text.length() || !HexFormat.isHexDigit(text.charAt(index))) {
            throw malformed();
        }
        return HexFormat.fromHexDigit(text.charAt(index));
    }

    private static RequestRefused malformed() {
        return new RequestRefused(
                ProblemCode.INVALID_REQUEST,
                "the query is not well formed: escape everything but plain ASCII as UTF-8 bytes, such as %2B for +");
    }
}
