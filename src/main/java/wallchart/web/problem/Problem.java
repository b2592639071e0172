package wallchart.web.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Why a request has no other answer, as RFC 9457 writes it.
 *
 * @param code which kind
 * @param detail for people: what, the value, the limit, the next step
 * @param members what this kind says beyond that, such as {@code nearestBandsCm}
 * @param headers response headers this kind needs, such as {@code Allow}
 */
public record Problem(ProblemCode code, String detail, Map<String, Object> members, Map<String, String> headers) {

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
    }

    public static Problem of(ProblemCode code, String detail) {
        return new Problem(code, detail, Map.of(), Map.of());
    }

    /** With a member of its own. */
    public static Problem of(ProblemCode code, String detail, String member, Object value) {
        return new Problem(code, detail, Map.of(member, value), Map.of());
    }

    /** A request whose fields are wrong; the detail lists them. */
    public static Problem wrongFields(ProblemCode code, List<FieldError> errors) {
        var detail = String.join("; ", errors.stream().map(Problem::inWords).toList());
        return of(code, detail, "errors", errors);
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
