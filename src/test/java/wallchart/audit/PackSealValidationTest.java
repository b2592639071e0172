package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Base64;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.Validation;

/** What rooms take along is signed as RFC 7515 and RFC 8037 say; the example is that of RFC 8037, appendix A. */
class PackSealValidationTest {

    private static final String D = "nWGxne_9WmC6hEr0kuwsxERJxWl7MmkZcDusAxyuf2A";
    private static final String X = "11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo";
    private static final Instant AT = Instant.parse("2026-03-02T08:00:00Z");

    @TempDir
    private Path folder;

    private SigningKey appendixA() throws IOException {
        // RFC 8410: what stands before a raw Ed25519 key in PKCS #8 (section 7) and in a SubjectPublicKeyInfo (section
        // 4)
        write("packs.key", "302e020100300506032b657004220420", D);
        write("packs.pub", "302a300506032b6570032100", X);
        return SigningKey.find(folder, "packs").orElseThrow();
    }

    private void write(String file, String before, String raw) throws IOException {
        var hex = before + HexFormat.of().formatHex(Base64.getUrlDecoder().decode(raw));
        Files.writeString(
                folder.resolve(file),
                Base64.getEncoder().encodeToString(HexFormat.of().parseHex(hex)) + "\n");
    }

    @Validation
    @Test
    void the_example_of_rfc_8037_appendix_a_4_comes_out() throws IOException {
        var payload = "Example of Ed25519 signing".getBytes(StandardCharsets.UTF_8);
        var sealed = SealedPack.sign(appendixA(), "{\"alg\":\"EdDSA\"}", payload);
        assertThat(sealed.header()).isEqualTo("eyJhbGciOiJFZERTQSJ9");
        assertThat(sealed.payload()).isEqualTo("RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc");
        assertThat(sealed.signature())
                .isEqualTo("hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg");
        assertThat(sealed.fits(appendixA())).isTrue();
        assertThat(new SealedPack(sealed.payload() + "A", sealed.header(), sealed.signature()).fits(appendixA()))
                .isFalse();
    }

    @Validation
    @Test
    void the_key_has_the_thumbprint_of_rfc_8037_appendix_a_3() throws IOException {
        assertThat(PackSeal.thumbprint(appendixA())).isEqualTo("kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
        assertThat(PackSeal.jwk(appendixA())).contains(X);
    }

    @Test
    void the_key_is_made_once_and_is_not_the_ledgers() throws IOException {
        var first = new PackSeal(folder).seal(new byte[] {1}, AT);
        assertThat(new PackSeal(folder).seal(new byte[] {1}, AT)).isEqualTo(first);
        assertThat(first.fits(SigningKey.find(folder, "packs").orElseThrow())).isTrue();
        LedgerKey.findOrMake(folder);
        assertThat(first.fits(SigningKey.find(folder, "ledger").orElseThrow())).isFalse();
    }

    /** A brace is no base64url: what one key signs can never be read as what the other does, even if it were the same key. */
    @Test
    void a_checkpoint_never_has_the_form_of_a_sealed_pack() {
        assertThat(new Checkpoint(1, "00", AT, "0", "").text()).startsWith("{");
        assertThat(new PackSeal(folder).seal(new byte[] {1}, AT).header()).matches("[A-Za-z0-9_-]+");
    }

    @Test
    void a_private_key_of_another_pair_signs_nothing() throws IOException {
        appendixA();
        Files.createDirectory(folder.resolve("other"));
        SigningKey.findOrMake(folder.resolve("other"), "packs");
        Files.copy(
                folder.resolve("other").resolve("packs.key"),
                folder.resolve("packs.key"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        assertThatThrownBy(() -> new PackSeal(folder).seal(new byte[] {1}, AT))
                .isInstanceOf(UncheckedIOException.class)
                .hasRootCauseMessage("private and public key of packs are no pair: restore them from a backup");
    }
}
