package wallchart.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class TermsTest {

    /** DICOM PS3.16 CID 4031 (edition 20250709), Annex L. */
    @Test
    void a_body_part_has_its_dicom_code() {
        assertThat(BodyParts.find("CHEST"))
                .contains(new BodyPart("CHEST", "816094009", "Chest", "Chest", BodyRegion.CHEST));
        assertThat(BodyParts.find("chest")).isEmpty();
        assertThat(BodyParts.all()).hasSize(60).doesNotHaveDuplicates();
    }

    /** DICOM PS3.16 CID 4010 and CID 4012. */
    @Test
    void a_projection_has_its_view_and_where_it_has_one_its_eponym() {
        var towne = Projections.find("towne").orElseThrow();
        assertThat(towne.view()).isEqualTo(new Projection.Code("SCT", "399348003", "antero-posterior"));
        assertThat(towne.eponym()).contains(new Projection.Code("SCT", "399270002", "Towne"));
        assertThat(towne.modifier()).isEmpty();
        assertThat(Projections.find("cross-table-lateral").orElseThrow().modifier())
                .contains(new Projection.Code("DCM", "111069", "Crosstable"));
    }

    @Test
    void every_projection_slug_can_stand_in_an_address_and_fits_its_column() {
        assertThat(Projections.all()).hasSize(37).allMatch(each -> wallchart.equipment.Slugs.isSlug(each.slug()));
        assertThat(BodyParts.all()).allMatch(each -> each.term().length() <= 16);
    }

    @Test
    void a_table_with_other_columns_is_not_read() {
        assertThatThrownBy(() -> TermTable.read("/chart/body-parts.csv", "term,meaning", cells -> cells[0]))
                .hasMessageContaining("another header");
    }
}
