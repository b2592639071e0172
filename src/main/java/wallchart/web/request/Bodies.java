package wallchart.web.request;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import io.javalin.http.Context;
import java.io.IOException;
import java.util.List;
import java.util.stream.Collectors;
import wallchart.document.DocumentReading;
import wallchart.document.Documents;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.problem.Problem.FieldError;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.view.Json;

/** Request bodies: JSON of at most 64 KiB, never more of it in memory, read strictly. */
public final class Bodies {

    /** The most that any request here needs. */
    public static final int LARGEST = 64 * 1024;

    private static final int TOO_LARGE = 413;
    private static final int UNSUPPORTED_MEDIA_TYPE = 415;
    private static final String NOT_WHOLE = "did not arrive whole: send it again";
    private static final ObjectReader NOTHING = Json.readerFor(Nothing.class);

    private Bodies() {}

    /** A body without members. */
    record Nothing() {}

    /** The body as JSON. */
    public static <T> T readJson(Context ctx, ObjectReader reader) {
        requireJson(ctx);
        return read(bytes(ctx), reader);
    }

    /** The body as a document that people write, as strictly as a file of theirs: numbers in plain digits, each key known. */
    static <T> T readDocument(Context ctx, Class<T> shape) {
        requireJson(ctx);
        var reading = Documents.json(bytes(ctx), shape);
        return reading instanceof DocumentReading.Unreadable<T> unreadable
                ? refuse(unreadable.field(), unreadable.message())
                : ((DocumentReading.Written<T>) reading).content();
    }

    /** Makes sure that the body says nothing: there is none, or it is an object without members. */
    public static void nothing(Context ctx) {
        var bytes = bytes(ctx);
        if (bytes.length > 0) {
            requireJson(ctx);
            read(bytes, NOTHING);
        }
    }

    private static void requireJson(Context ctx) {
        if (!isJson(ctx.header("Content-Type"))) { // as sent: the library's reading fails on unknown character sets
            throw new RequestRefused(Failures.ofStatus(UNSUPPORTED_MEDIA_TYPE));
        }
    }

    private static <T> T read(byte[] bytes, ObjectReader reader) {
        try {
            T value = reader.readValue(bytes);
            return value == null ? refuse("", "is null or empty: send a JSON object") : value;
        } catch (JsonMappingException mismatch) {
            return refuse(pointer(mismatch), words(mismatch));
        } catch (JsonProcessingException notJson) {
            return refuse("", "is not JSON, names a member twice or has too long a piece" + place(notJson));
        } catch (IOException broken) {
            return refuse("", NOT_WHOLE);
        }
    }

    private static String place(JsonProcessingException notJson) {
        var at = notJson.getLocation();
        return at == null ? "" : ", at line " + at.getLineNr() + ", column " + at.getColumnNr();
    }

    private static byte[] bytes(Context ctx) {
        try {
            var bytes = ctx.req().getInputStream().readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw new RequestRefused(Failures.ofStatus(TOO_LARGE));
            }
            return bytes;
        } catch (IOException broken) {
            return refuse("", NOT_WHOLE);
        }
    }

    private static boolean isJson(String contentType) {
        if (contentType == null) {
            return false;
        }
        int parameters = contentType.indexOf(';');
        var type = parameters < 0 ? contentType : contentType.substring(0, parameters);
        return type.strip().equalsIgnoreCase("application/json");
    }

    private static String words(JsonMappingException mismatch) {
        return mismatch instanceof UnrecognizedPropertyException
                ? "there is no such member: leave it out, or correct its name"
                : "has the wrong type: see the schema in /docs";
    }

    private static String pointer(JsonMappingException mismatch) {
        return mismatch.getPath().stream()
                .map(step -> step.getFieldName() == null ? String.valueOf(step.getIndex()) : step.getFieldName())
                .map(name -> "/" + Parameters.echo(name).replace("~", "~0").replace("/", "~1"))
                .collect(Collectors.joining());
    }

    private static <T> T refuse(String pointer, String detail) {
        var errors = List.of(new FieldError(null, pointer, null, detail));
        throw new RequestRefused(Problem.wrongFields(ProblemCode.INVALID_BODY, errors));
    }
}
