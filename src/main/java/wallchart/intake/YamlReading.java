package wallchart.intake;

/**
 * What comes of reading a YAML file that people wrote.
 *
 * @param <T> the shape that was expected
 */
public sealed interface YamlReading<T> {

    /** It has the expected shape. */
    record Read<T>(T content) implements YamlReading<T> {}

    /**
     * It has not.
     *
     * @param field JSON Pointer (RFC 6901) to what is wrong; empty for the file as a whole
     * @param message what, the value, what would be right; one line
     */
    record Unreadable<T>(String field, String message) implements YamlReading<T> {}
}
