package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

class ContentDigestTest {

    /** Written by hand after RFC 8785, section 3.2: keys sorted by code unit, no blanks, numbers as decimal strings. */
    private static final String TINY =
            """
            {"adjustments":[{"addKv":"5","label":"Adds 5 kV","name":"cast"}],"number":"3","room":"r1","rows":[{\
            "addedFiltration":"none","bandFromCm":"18","bandToCm":"24","bodyPart":"LSPINE","breathing":"expiration",\
            "centralRayAngleDeg":"0","centring":"midline at L3","fieldCm":"24x43","focalSpot":"large","grid":"g10",\
            "kV":"75","mAs":"25","measureAt":"Kn\u00f6chel \\"x\\"","orientation":"lengthwise","patientGroup":"adult",\
            "projection":"ap","receptor":"dr1","referenceThicknessCm":"21","shielding":"none, site policy",\
            "sidCm":"110","support":"table-bucky","thicknessMethod":"kv-per-cm","thicknessRate":"2"}]}\
            """;

    private static ChartContent tiny() {
        return aChart().with(aRow().withMeasureAt("Kn\u00f6chel \"x\""))
                .with(addingKV("cast", "5"))
                .content();
    }

    @Test
    void the_digested_text_is_canonical_json() {
        assertThat(ContentDigest.canonical("r1", 3, tiny()).text()).isEqualTo(TINY);
    }

    @Test
    void the_digest_is_the_sha_256_of_that_text() throws Exception {
        var hash = MessageDigest.getInstance("SHA-256").digest(TINY.getBytes(StandardCharsets.UTF_8));
        assertThat(ContentDigest.of("r1", 3, tiny()))
                .isEqualTo("sha256:" + HexFormat.of().formatHex(hash))
                .isEqualTo("sha256:2702b1d636acbc44289e140099d38f573035c79ca3a81f7e57d8ce13869f448b");
    }

    @Test
    void room_number_order_and_every_field_count() {
        var digest = ContentDigest.of("r1", 3, tiny());
        assertThat(ContentDigest.of("r2", 3, tiny())).isNotEqualTo(digest);
        assertThat(ContentDigest.of("r1", 4, tiny())).isNotEqualTo(digest);
        assertThat(ContentDigest.of(
                        "r1", 3, aChart().withBand(1, 2).withBand(2, 3).content()))
                .isNotEqualTo(ContentDigest.of(
                        "r1", 3, aChart().withBand(2, 3).withBand(1, 2).content()));
    }

    @Test
    void a_text_that_could_be_written_in_two_ways_has_no_digest() {
        for (var text : new String[] {"Kno\u0308chel", "a\ud800b", "a\u0007b"}) {
            assertThatThrownBy(() -> ContentDigest.of(
                            "r1", 1, aChart().with(aRow().withNotes(text)).content()))
                    .isInstanceOf(IllegalArgumentException.class);
        }
    }
}
