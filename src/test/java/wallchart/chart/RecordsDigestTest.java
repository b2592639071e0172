package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.chart.ChartFixtures.aChart;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.chart.ChartFixtures.addingKV;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.audit.AuditTrail;
import wallchart.audit.Checkpoints;
import wallchart.audit.Event;
import wallchart.audit.EventFilter;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

/** What a version wrote into the tables of rows and adjustments is digested, every column of it, alike on every database. */
class RecordsDigestTest extends OnEveryDatabase {

    /** Written by hand: version 2 introduced row 2 and retired row 1 and adjustment 1. */
    private static final String WRITTEN_BY_THE_SECOND =
            """
            {"added_al_mm":"0","added_cu_mm":"0","band_from_cm":"18","band_to_cm":"24","body_part":"LSPINE",\
            "breathing":"expiration","central_ray_deg":"0","centring":"midline at L3","field_cm":"24x43",\
            "focal_spot":"large","grid":"g10","id":"2","introduced_in":"2","kv":"75","mas":"32",\
            "measure_at":"level of L3","notes":"","ordinal":"1048576","orientation":"lengthwise","patient_group":"adult",\
            "projection":"ap","receptor":"dr1","reference_cm":"21","room":"r1","shielding":"none, site policy",\
            "sid_cm":"110","support":"table-bucky","table":"chart_row","thickness_method":"kv-per-cm",\
            "thickness_rate":"2"}
            {"retired_in":"2","room":"r1","row_id":"1","table":"chart_row_retired"}
            {"adjustment_id":"1","retired_in":"2","room":"r1","table":"chart_adjustment_retired"}
            """;

    @TempDir
    private Path folder;

    private final RecordsDigestStore store = new RecordsDigestStore();

    @BeforeEach
    void two_versions_are_signed() {
        var department = PublishingFixtures.aDepartmentIn(database());
        department.publish(
                0, aChart().withBand(18, 24).with(addingKV("cast", "5")).content());
        department.publish(1, aChart().with(aRow().withMAs("32")).content());
    }

    @Test
    void the_digest_is_the_sha_256_of_lines_that_anybody_can_write() throws Exception {
        var hash = MessageDigest.getInstance("SHA-256").digest(WRITTEN_BY_THE_SECOND.getBytes(StandardCharsets.UTF_8));
        var expected = "sha256:" + HexFormat.of().formatHex(hash);
        assertThat(database().<String>read(tx -> store.of(tx, new VersionNumber("r1", 2))))
                .isEqualTo(expected);
        assertThat(signature(2).detail(VersionEvent.RECORDS_DIGEST)).contains(expected);
    }

    @Test
    void read_one_by_one_or_all_at_once_the_digests_are_the_same() {
        var all = database().read(store::all);
        assertThat(all).containsOnlyKeys(new VersionNumber("r1", 1), new VersionNumber("r1", 2));
        all.forEach((version, digest) ->
                assertThat(database().<String>read(tx -> store.of(tx, version))).isEqualTo(digest));
    }

    /** A column that a migration adds must be digested too. */
    @Test
    void every_column_of_these_tables_is_digested() {
        for (var table : RecordsDigestStore.TABLES) {
            List<String> columns = database().read(tx -> tx.handle()
                    .createQuery("SELECT DISTINCT LOWER(column_name) FROM information_schema.columns"
                            + " WHERE LOWER(table_name) = :table AND table_schema = CURRENT_SCHEMA")
                    .bind("table", table.name())
                    .mapTo(String.class)
                    .list());
            assertThat(table.columns()).as(table.name()).containsExactlyInAnyOrderElementsOf(columns);
        }
    }

    /** Versions that were signed before events had this digest are held against the digest of their content alone. */
    @Test
    void an_event_without_the_digest_is_believed_only_before_the_first_that_has_it() {
        var first = signature(1);
        var second = signature(2);
        database().run(Actor.system("test"), tx -> {
            var old = new VersionWalk(tx);
            assertThat(old.difference(withoutTheDigest(first))).isEmpty();
            assertThat(old.difference(second)).isEmpty();
            assertThat(old.unrecorded()).isEmpty();

            var forged = new VersionWalk(tx);
            assertThat(forged.difference(first)).isEmpty();
            assertThat(forged.difference(withoutTheDigest(second)).orElseThrow())
                    .isEqualTo("r1/version/2 has no recordsDigest, though an earlier version of the room has one");
        });
    }

    private Event signature(int version) {
        return new AuditTrail(database(), new Checkpoints(folder), List.of())
                .page(EventFilter.ALL, 0, AuditTrail.LONGEST_PAGE).stream()
                        .filter(event -> event.object().equals("r1/version/" + version))
                        .findFirst()
                        .orElseThrow();
    }

    private static Event withoutTheDigest(Event event) {
        var details = event.details().replaceAll("\"recordsDigest\":\"[^\"]*\",", "");
        assertThat(details).isNotEqualTo(event.details());
        return new Event(
                event.seq(),
                event.at(),
                event.actor(),
                event.role(),
                event.action(),
                event.object(),
                event.room(),
                event.reason(),
                details,
                event.requestId(),
                event.prev(),
                event.hash());
    }
}
