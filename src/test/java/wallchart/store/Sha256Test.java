package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;

/** The digest that records are signed by. */
class Sha256Test {

    /**
     * NIST, example values for FIPS 180-4, SHA-256: "abc" in one block and the message of 448 bits in two, each also on paper in the
     * standard's older edition (FIPS 180-2, appendix B); a million times "a" (FIPS 180-2, B.3); and the empty message, whose digest
     * NIST publishes among its test vectors. Compared with copies in public source code.
     */
    @Validation
    @ParameterizedTest
    @CsvSource({
        "'', 1, e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855",
        "abc, 1, ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
        "abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq, 1,"
                + " 248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1",
        "a, 1000000, cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0"
    })
    void the_digest_is_that_of_the_standard(String part, int times, String digest) {
        var message = part.repeat(times);
        assertThat(Sha256.hex(message)).isEqualTo(digest);
        assertThat(Sha256.hex(message.getBytes(StandardCharsets.US_ASCII))).isEqualTo(digest);
    }
}
