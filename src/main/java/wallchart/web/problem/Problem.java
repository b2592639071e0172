package wallchart.web.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Why a request has no other answer, as RFC 9457 writes it.
 *
 * @param code which kind
 * @param detail for people: what, the value, the limit, the next step
 * @param members what this kind says beyond that, such as {@code nearestBandsCm}
 * @param headers response headers this kind needs, such as {@code Allow}
 */
public record Problem(ProblemCode code, String detail, Map<String, Object> members, Map<String, String> headers) {

    private static final int MOST_ERRORS = 50;
    private static final int MOST_IN_WORDS = 5;
    private static final int LONGEST_POINTER = 200;
    private static final int LONGEST_DETAIL = 600;

    /** The media type of every problem. */
    public static final String MEDIA_TYPE = "application/problem+json";

    /**
     * One field that is wrong; exactly one of parameter and pointer.
     *
     * @param parameter name of the query or path parameter
     * @param pointer RFC 6901 pointer into the body
     * @param value what was sent, shortened; left out for what must not be repeated, such as a password
     * @param detail the limit and the next step
     * @param confirm code to send back by whoever stands by the value; left out where it cannot be taken
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    public record FieldError(String parameter, String pointer, String value, String detail, String confirm) {
        public FieldError(String parameter, String pointer, String value, String detail) {
            this(parameter, pointer, value, detail, null);
        }

        FieldError shortened() {
            return new FieldError(
                    parameter, shortened(pointer, LONGEST_POINTER), value, shortened(detail, LONGEST_DETAIL), confirm);
        }

        /** The ends of what is too long, with a question mark for half a character, which no answer can hold. */
        private static String shortened(String text, int most) {
            if (text == null) {
                return null;
            }
            var kept = text.length() <= most
                    ? text
                    : text.substring(0, most / 2) + "…" + text.substring(text.length() - most / 2);
            return kept.codePoints()
                    .map(c -> Character.getType(c) == Character.SURROGATE ? '?' : c)
                    .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                    .toString();
        }
    }

    public static Problem of(ProblemCode code, String detail) {
        return new Problem(code, detail, Map.of(), Map.of());
    }

    /** With a member of its own. */
    public static Problem of(ProblemCode code, String detail, String member, Object value) {
        return new Problem(code, detail, Map.of(member, value), Map.of());
    }

    /** With several of them. */
    static Problem of(ProblemCode code, String detail, Map<String, Object> members) {
        return new Problem(code, detail, members, Map.of());
    }

    /** A request whose fields are wrong; the detail names the first. An answer is no larger than somebody reads. */
    public static Problem wrongFields(ProblemCode code, List<FieldError> errors) {
        var shown =
                errors.stream().limit(MOST_ERRORS).map(FieldError::shortened).toList();
        var named = shown.stream().limit(MOST_IN_WORDS).map(Problem::inWords).collect(Collectors.joining("; "));
        int unnamed = errors.size() - MOST_IN_WORDS;
        var detail = named + (unnamed > 0 ? "; and " + unnamed + " more" : "");
        int left = errors.size() - shown.size();
        return left > 0
                ? new Problem(code, detail, Map.of("errors", shown, "errorsLeftOut", left), Map.of())
                : of(code, detail, "errors", shown);
    }

    public Problem withHeader(String name, String value) {
        return new Problem(code, detail, members, Map.of(name, value));
    }

    private static String inWords(FieldError error) {
        var name = error.parameter() == null ? "body" + error.pointer() : error.parameter();
        return name + (error.value() == null ? "" : " is \"" + error.value() + "\"") + ": " + error.detail();
    }

    /** The members as they go out, in the order people read them. */
    public Map<String, Object> body(String instance, String requestId) {
        var body = new LinkedHashMap<String, Object>();
        body.put("type", "/problems/" + code.slug());
        body.put("title", code.title());
        body.put("status", code.status());
        body.put("detail", detail);
        body.put("instance", instance);
        body.put("code", code.slug());
        body.put("requestId", requestId);
        body.putAll(members);
        return body;
    }
}
