package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class CanonicalJsonTest {

    private static final int OBJECTS = 2_000;

    /** The strings of the sample in RFC 8785, section 3.2.2, as section 3.2.3 writes them. */
    @Test
    void the_sample_of_the_standard_is_written_as_the_standard_says() {
        var sample = new TreeMap<String, String>();
        sample.put("string", "\u20ac$\u000f\nA'B\"\\\\\"/");
        assertThat(CanonicalJson.of(sample).text()).isEqualTo("{\"string\":\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}");
    }

    @Test
    void an_object_of_texts_is_written_as_the_library_writes_it() throws Exception {
        var random = new Random(20_261_125);
        for (int i = 0; i < OBJECTS; i++) {
            var members = new TreeMap<String, String>();
            for (int j = random.nextInt(5); j >= 0; j--) {
                members.put(text(random), text(random));
            }
            assertThat(CanonicalJson.of(members))
                    .isEqualTo(CanonicalJson.of(new JsonMapper().writeValueAsString(members)));
        }
    }

    /** Control characters, ASCII, letters of other scripts and beyond the first plane. */
    private static String text(Random random) {
        int[][] ranges = {{0, ' '}, {' ', 0x80}, {0x80, 0xd800}, {0xe000, 0x1_0000}, {0x1_0000, 0x11_0000}};
        var text = new StringBuilder();
        for (int length = random.nextInt(12); length > 0; length--) {
            var range = ranges[random.nextInt(ranges.length)];
            text.appendCodePoint(range[0] + random.nextInt(range[1] - range[0]));
        }
        return text.toString();
    }
}
