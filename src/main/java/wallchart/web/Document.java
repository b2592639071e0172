package wallchart.web;

import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import io.javalin.http.Context;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.function.Supplier;
import java.util.zip.GZIPInputStream;
import java.util.zip.GZIPOutputStream;
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

    /** A library for browsers as a Maven artifact. */
    record WebJar(String group, String artifact) {
        static final WebJar SWAGGER = new WebJar("org.webjars", "swagger-ui");
        static final WebJar LIT_HTML = new WebJar("org.webjars.npm", "lit-html");
        static final WebJar UPLOT = new WebJar("org.webjars.npm", "uplot");
    }

    private static final int TAG_DIGITS = 32;
    private static final String PACKED = "-gzip";

    private static Document of(byte[] bytes, String mediaType) {
        return new Document(bytes, mediaType, Sha256.hex(bytes).substring(0, TAG_DIGITS));
    }

    /** What was worked out, as JSON. */
    static Document json(byte[] bytes) {
        return of(bytes, Answers.JSON);
    }

    /** A file of this project. */
    static Document ours(String name, String mediaType) {
        return of(resource("/web/" + name), mediaType);
    }

    /** The same, where it may be missing. */
    static Optional<Document> findOurs(String name, String mediaType) {
        var found = Document.class.getResource("/web/" + name) != null;
        return found ? Optional.of(ours(name, mediaType)) : Optional.empty();
    }

    /** A file of a library for browsers, from its WebJar. */
    static Document library(WebJar jar, String name, String mediaType) {
        var about = new Properties();
        try {
            about.load(new ByteArrayInputStream(
                    resource("/META-INF/maven/" + jar.group() + "/" + jar.artifact() + "/pom.properties")));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        var version = about.getProperty("version");
        return of(resource("/META-INF/resources/webjars/" + jar.artifact() + "/" + version + "/" + name), mediaType);
    }

    /** The same content packed by gzip (RFC 1952), under a tag of its own (RFC 9110 section 8.8.3.3). */
    Document packed() {
        var packed = new ByteArrayOutputStream();
        try (var gzip = new GZIPOutputStream(packed)) {
            gzip.write(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return new Document(packed.toByteArray(), mediaType, tag + PACKED);
    }

    /** What {@link #packed} packed. */
    Document unpacked() {
        try (var gzip = new GZIPInputStream(new ByteArrayInputStream(bytes))) {
            return new Document(gzip.readAllBytes(), mediaType, tag.substring(0, tag.length() - PACKED.length()));
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    /** Sends it packed to whoever takes that. */
    static void answer(Context ctx, Supplier<Document> packed, Supplier<Document> plain) {
        var accepted = ctx.header("Accept-Encoding");
        ctx.header("Vary", "Accept-Encoding");
        if (accepted != null && accepted.contains("gzip")) {
            ctx.header("Content-Encoding", "gzip");
            packed.get().answer(ctx);
        } else {
            plain.get().answer(ctx);
        }
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

    /** Sends it, unless the caller has it already. */
    void answer(Context ctx) {
        if (!Answers.isKnown(ctx, tag, "no-cache")) {
            ctx.res().setContentType(mediaType);
            ctx.result(bytes);
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
