package wallchart.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonMetaSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.NonValidationKeyword;
import com.networknt.schema.SchemaId;
import com.networknt.schema.SchemaLocation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The OpenAPI document as tests see it: which operations it declares, and whether a body is what it promises. */
final class ApiDocument {

    private static final String ADDRESS = "https://wallchart.test/openapi";
    private static final Set<String> METHODS = Set.of("get", "post", "put", "patch", "delete");

    private final JsonNode document;
    private final JsonSchemaFactory schemas;

    private ApiDocument(JsonNode document) {
        this.document = document;
        this.schemas = JsonSchemaFactory.builder()
                .metaSchema(dialect())
                .defaultMetaSchemaIri(SchemaId.V202012)
                .schemaLoaders(loaders -> loaders.schemas(Map.of(ADDRESS, document.toString())))
                .build();
    }

    /** JSON Schema 2020-12, in a document that also has members which are no keywords of it. */
    private static JsonMetaSchema dialect() {
        var others = Stream.of("openapi", "info", "servers", "tags", "paths", "security", "components")
                .map(NonValidationKeyword::new)
                .toList();
        return JsonMetaSchema.builder(JsonMetaSchema.getV202012())
                .keywords(others)
                .build();
    }

    /** The document that the service serves. */
    static ApiDocument ours() {
        try (var yaml = ApiDocument.class.getResourceAsStream("/web/openapi.yaml")) {
            return new ApiDocument(new YAMLMapper().readTree(yaml));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** A copy in which one thing was changed, to see a test turn red. */
    ApiDocument with(Consumer<JsonNode> change) {
        JsonNode copy = document.deepCopy();
        change.accept(copy);
        return new ApiDocument(copy);
    }

    /** Every operation as {@code GET /path/{name}}. */
    Set<String> operations() {
        var operations = new TreeSet<String>();
        document.get("paths")
                .properties()
                .forEach(path -> path.getValue().fieldNames().forEachRemaining(method -> {
                    if (METHODS.contains(method)) {
                        operations.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey());
                    }
                }));
        return operations;
    }

    /** The path template that a path fits; a template without parameters goes before one with. */
    Optional<String> findTemplate(String path) {
        var templates = new ArrayList<String>();
        document.get("paths").fieldNames().forEachRemaining(templates::add);
        return templates.stream()
                .filter(template -> path.matches(template.replaceAll("\\{[^/]+}", "[^/]+")))
                .min((one, other) -> Boolean.compare(one.contains("{"), other.contains("{")));
    }

    boolean declares(String template, String method) {
        return !document.at(pointer("paths", template, method.toLowerCase(Locale.ROOT)))
                .isMissingNode();
    }

    /** Pointer to the response of an operation, with the reference followed. */
    Optional<String> findResponse(String template, String method, int status) {
        var pointer = pointer("paths", template, method.toLowerCase(Locale.ROOT), "responses", String.valueOf(status));
        var response = document.at(pointer);
        return response.isMissingNode()
                ? Optional.empty()
                : Optional.of(
                        response.has("$ref") ? response.get("$ref").asText().substring(1) : pointer);
    }

    /** The media types that a response may have; none where it has no body. */
    Set<String> mediaTypes(String response) {
        var types = new TreeSet<String>();
        document.at(response + "/content").fieldNames().forEachRemaining(types::add);
        return types;
    }

    /** The headers that a response promises. */
    Set<String> headers(String response) {
        var names = new TreeSet<String>();
        document.at(response + "/headers").fieldNames().forEachRemaining(names::add);
        return names;
    }

    /** What a JSON body breaks of the schema at that pointer; empty where nothing. */
    List<String> violations(String schemaPointer, String json) {
        if (document.at(schemaPointer).isMissingNode()) {
            throw new IllegalArgumentException("no schema at " + schemaPointer);
        }
        var schema = schemas.getSchema(SchemaLocation.of(ADDRESS + "#" + schemaPointer));
        return schema
                .validate(
                        json, InputFormat.JSON, run -> run.getExecutionConfig().setFormatAssertionsEnabled(true))
                .stream()
                .map(Object::toString)
                .toList();
    }

    static String mediaTypeSchema(String response, String mediaType) {
        return response + "/content/" + mediaType.replace("/", "~1") + "/schema";
    }

    /** Every example with the pointer of the schema it must satisfy. */
    Map<String, JsonNode> examples() {
        var found = new TreeMap<String, JsonNode>();
        collect(document, "", found);
        return found;
    }

    private void collect(JsonNode node, String at, Map<String, JsonNode> found) {
        if (node.has("schema") && node.has("examples")) {
            node.get("examples").forEach(example -> found.put(at + "/schema", value(example)));
        }
        if (node.isObject()) {
            node.properties().forEach(member -> collect(member.getValue(), at + "/" + escaped(member.getKey()), found));
        }
    }

    private JsonNode value(JsonNode example) {
        return example.has("$ref")
                ? document.at(example.get("$ref").asText().substring(1)).get("value")
                : example.get("value");
    }

    private static String pointer(String... steps) {
        return "/"
                + String.join(
                        "/", Arrays.stream(steps).map(ApiDocument::escaped).toList());
    }

    private static String escaped(String step) {
        return step.replace("~", "~0").replace("/", "~1");
    }

    /** The whole document as JSON. */
    String text() {
        return document.toString();
    }
}
