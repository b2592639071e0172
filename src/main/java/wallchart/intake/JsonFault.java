package wallchart.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import java.util.stream.Collectors;

/**
 * What is wrong with a document, in words for whoever wrote it.
 *
 * @param pointer JSON Pointer to the place, or empty
 * @param message one line
 */
record JsonFault(String pointer, String message) {

    static JsonFault of(JsonProcessingException wrong) {
        return new JsonFault(pointer(wrong), message(wrong));
    }

    private static String pointer(JsonProcessingException wrong) {
        return wrong instanceof JsonMappingException mapping
                ? mapping.getPath().stream()
                        .map(step ->
                                "/" + (step.getFieldName() == null ? step.getIndex() : escaped(step.getFieldName())))
                        .collect(Collectors.joining())
                : "";
    }

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1");
    }

    private static String message(JsonProcessingException wrong) {
        if (wrong instanceof UnrecognizedPropertyException unknown) {
            return "unknown key; known here: "
                    + unknown.getKnownPropertyIds().stream()
                            .map(String::valueOf)
                            .sorted()
                            .collect(Collectors.joining(", "));
        }
        if (wrong instanceof InvalidFormatException format) {
            return "is \"" + format.getValue() + "\": " + expected(format.getTargetType());
        }
        if (wrong instanceof ValueInstantiationException refused && refused.getCause() != null) {
            return firstLine(refused.getCause().getMessage());
        }
        if (wrong instanceof JsonMappingException mapping) {
            return "has the wrong shape" + line(mapping) + ": see config/site.example.yaml or the README for this key";
        }
        return "is not YAML" + line(wrong) + ": " + firstLine(wrong.getOriginalMessage());
    }

    private static String expected(Class<?> type) {
        if (type == Boolean.class || type == boolean.class) {
            return "write true or false";
        }
        if (type == Integer.class || type == int.class) {
            return "write a whole number";
        }
        return Number.class.isAssignableFrom(type)
                ? "write a number in plain digits, such as 62.5"
                : "write a " + type.getSimpleName();
    }

    private static String line(JsonProcessingException wrong) {
        var location = wrong.getLocation();
        return location == null || location.getLineNr() < 1 ? "" : " at line " + location.getLineNr();
    }

    private static String firstLine(String text) {
        return String.valueOf(text).lines().findFirst().orElse("");
    }
}
