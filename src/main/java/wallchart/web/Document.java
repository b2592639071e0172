package wallchart.web;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Properties;
import wallchart.store.Sha256;
import wallchart.web.view.Json;

/**
 * A file that the service serves.
 *
 * @param bytes its content; not to be changed
 * @param mediaType with the character set where it is text
 * @param tag changes whenever the content does
 */
record Document(byte[] bytes, String mediaType, String tag) {

    static final String HTML = "text/html;charset=utf-8";
    static final String CSS = "text/css;charset=utf-8";
    static final String JAVASCRIPT = "text/javascript;charset=utf-8";

    private static final String SWAGGER = "/META-INF/maven/org.webjars/swagger-ui/pom.properties";
    private static final int TAG_DIGITS = 32;

    private static Document of(byte[] bytes, String mediaType) {
        return new Document(bytes, mediaType, Sha256.hex(bytes).substring(0, TAG_DIGITS));
    }

    /** A file of this project. */
    static Document ours(String name, String mediaType) {
        return of(resource("/web/" + name), mediaType);
    }

    /** A file of the documentation browser, from its WebJar. */
    static Document swagger(String name, String mediaType) {
        var about = new Properties();
        try {
            about.load(new ByteArrayInputStream(resource(SWAGGER)));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        var version = about.getProperty("version");
        return of(resource("/META-INF/resources/webjars/swagger-ui/" + version + "/" + name), mediaType);
    }

    /** The OpenAPI document, written in YAML, served as JSON. */
    static Document openApi() {
        try {
            var document = new YAMLMapper().readTree(resource("/web/openapi.yaml"));
            return of(Json.bytes(document), "application/json");
        } catch (IOException notYaml) {
            throw new UncheckedIOException(notYaml);
        }
    }

    /** A copy with words put in; they are our own and hold no mark-up. */
    Document with(Map<String, String> words) {
        var text = new String(bytes, StandardCharsets.UTF_8);
        for (var word : words.entrySet()) {
            text = text.replace(word.getKey(), word.getValue());
        }
        return of(text.getBytes(StandardCharsets.UTF_8), mediaType);
    }

    private static byte[] resource(String path) {
        try (InputStream stream = Document.class.getResourceAsStream(path)) {
            if (stream == null) {
                throw new IllegalStateException("the program lacks its file " + path + ": build it again");
            }
            return stream.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
