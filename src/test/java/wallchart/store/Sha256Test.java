package wallchart.store;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import wallchart.Validation;

/** The digest that records are signed by. */
class Sha256Test {

    /** NIST, example values for FIPS 180-4, SHA-256 of the three bytes "abc"; from memory. */
    @Validation
    @Test
    void the_digest_of_abc_is_that_of_the_standard() {
        assertThat(Sha256.hex("abc")).isEqualTo("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
    }
}
