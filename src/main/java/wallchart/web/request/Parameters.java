package wallchart.web.request;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;

/**
 * The query parameters of one request. Reading collects every mistake; {@link #refuseMistakes()} then ends the request naming
 * all of them at once. Until then a mistaken parameter reads as absent.
 */
public final class Parameters {

    private static final int LONGEST_ECHO = 40;

    private final Map<String, List<String>> values;
    private final List<FieldError> errors = new ArrayList<>();

    private Parameters(Map<String, List<String>> values) {
        this.values = values;
    }

    /**
     * The parameters of a query.
     *
     * @param query as it stands in the address, not decoded; null for none
     * @param once names that may stand there once
     * @param often names that may stand there several times
     */
    public static Parameters of(String query, Set<String> once, Set<String> often) {
        var parameters = new Parameters(QueryText.read(query));
        parameters.values.forEach((name, given) -> {
            if (!once.contains(name) && !often.contains(name)) {
                parameters.wrong(name, null, "there is no such parameter: leave it out, or correct its name");
            } else if (given.size() > 1 && !often.contains(name)) {
                parameters.wrong(name, null, "stands " + given.size() + " times: once is allowed");
            }
        });
        return parameters;
    }

    /** Refuses any query at all. */
    public static void none(String query) {
        of(query, Set.of(), Set.of()).refuseMistakes();
    }

    /** Whether it stands there at all. */
    public boolean has(String name) {
        return values.containsKey(name);
    }

    /** A parameter that may be left out. */
    public <T> Optional<T> find(String name, Syntax<T> syntax) {
        var given = values.get(name);
        return given == null ? Optional.empty() : read(name, given.get(0), syntax);
    }

    /** A parameter that must stand there; null where it does not, which {@link #refuseMistakes()} reports. */
    public <T> T require(String name, Syntax<T> syntax) {
        if (!has(name)) {
            wrong(name, null, "is missing: " + syntax.rule());
        }
        return find(name, syntax).orElse(null);
    }

    /** All values of a parameter that may be repeated; none twice. */
    public <T> List<T> list(String name, Syntax<T> syntax) {
        var read = new ArrayList<T>();
        for (var text : values.getOrDefault(name, List.of())) {
            read(name, text, syntax).ifPresent(value -> {
                if (read.contains(value)) {
                    wrong(name, text, "stands there twice: each once");
                }
                read.add(value);
            });
        }
        return read;
    }

    private <T> Optional<T> read(String name, String text, Syntax<T> syntax) {
        var value = syntax.read(text);
        if (value.isEmpty()) {
            wrong(name, text, syntax.rule());
        }
        return value;
    }

    /** Notes a mistake of the caller. */
    public void wrong(String name, String value, String detail) {
        errors.add(new FieldError(echo(name), null, value == null ? null : echo(value), detail));
    }

    /** Ends the request if anything was wrong. */
    public void refuseMistakes() {
        if (!errors.isEmpty()) {
            throw new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_PARAMETER, List.copyOf(errors)));
        }
    }

    /** What was sent, safe to repeat: short, no control characters. */
    static String echo(String text) {
        var shown = text.codePoints()
                .limit(LONGEST_ECHO)
                .map(c -> Character.isISOControl(c) ? '?' : c)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append);
        return text.codePointCount(0, text.length()) > LONGEST_ECHO ? shown + "…" : shown.toString();
    }

    /**
     * How a text becomes a value.
     *
     * @param rule for people: the limits, the next step
     * @param parse empty where the text breaks the rule
     */
    public record Syntax<T>(String rule, Function<String, Optional<T>> parse) {
        Optional<T> read(String text) {
            return parse.apply(text);
        }
    }
}
