package wallchart.intake;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.fasterxml.jackson.datatype.jsr310.JavaTimeModule;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import org.yaml.snakeyaml.LoaderOptions;

/**
 * Reads YAML that people wrote, strictly: an unknown key, a key written twice, a wrong type or a number that is not in plain
 * digits is refused with its place. No types can be named in the file. Thread-safe.
 */
public final class YamlFile {

    private static final int LARGEST_BYTES = 1024 * 1024;
    private static final int DEEPEST_NESTING = 20;
    private static final ObjectMapper MAPPER = mapper();

    private YamlFile() {}

    private static ObjectMapper mapper() {
        var limits = new LoaderOptions();
        limits.setAllowDuplicateKeys(false);
        limits.setMaxAliasesForCollections(0);
        limits.setNestingDepthLimit(DEEPEST_NESTING);
        limits.setCodePointLimit(LARGEST_BYTES);
        var factory = YAMLFactory.builder()
                .loaderOptions(limits)
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .build();
        return YAMLMapper.builder(factory)
                .addModule(new JavaTimeModule())
                .addModule(new SimpleModule().addDeserializer(BigDecimal.class, new PlainDecimal()))
                .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
                .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
                .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
                .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
                .build();
    }

    /** Reads a file of at most 1 MiB of UTF-8. */
    public static <T> YamlReading<T> read(Path file, Class<T> shape) {
        try {
            if (Files.size(file) > LARGEST_BYTES) {
                return new YamlReading.Unreadable<>(
                        "", "is " + Files.size(file) + " bytes: at most " + LARGEST_BYTES + " are read");
            }
            return parse(Files.readAllBytes(file), shape);
        } catch (NoSuchFileException missing) {
            return new YamlReading.Unreadable<>("", "does not exist: check the path");
        } catch (IOException failed) {
            return new YamlReading.Unreadable<>("", "cannot be read: " + failed.getMessage());
        }
    }

    /** Reads the bytes of a file. */
    static <T> YamlReading<T> parse(byte[] bytes, Class<T> shape) {
        try {
            var text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            var content = MAPPER.readValue(text, shape);
            return content == null ? new YamlReading.Unreadable<>("", "is empty") : new YamlReading.Read<>(content);
        } catch (CharacterCodingException notUtf8) {
            return new YamlReading.Unreadable<>("", "is not UTF-8: save it in that encoding");
        } catch (JsonProcessingException wrong) {
            var fault = JsonFault.of(wrong);
            return new YamlReading.Unreadable<>(fault.pointer(), fault.message());
        }
    }
}
