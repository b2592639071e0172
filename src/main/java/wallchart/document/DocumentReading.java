package wallchart.document;

/**
 * What comes of reading a document that people wrote.
 *
 * @param <T> the record it should fill
 */
public sealed interface DocumentReading<T> {

    /** It has the expected shape; what it says may still be impossible. */
    record Written<T>(T content) implements DocumentReading<T> {}

    /**
     * It has not.
     *
     * @param field JSON Pointer (RFC 6901) to what is wrong; empty for the document as a whole
     * @param message what is wrong and what would be right, to be read after the field; one line
     */
    record Unreadable<T>(String field, String message) implements DocumentReading<T> {}
}
