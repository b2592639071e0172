package wallchart.print;

import java.util.List;
import java.util.Optional;

/**
 * Everything that stands on one wall sheet, in words, before anybody decides where on the paper.
 *
 * @param head what stands on every page
 * @param sections the chart's rows by region of the body and patient group
 * @param adjustments the version's named adjustments
 * @param closing what stands once, on the last page
 */
record Sheet(Head head, List<Section> sections, List<AdjustmentLine> adjustments, List<Paragraph> closing) {

    Sheet {
        sections = List.copyOf(sections);
        adjustments = List.copyOf(adjustments);
        closing = List.copyOf(closing);
    }

    /**
     * What stands on every page.
     *
     * @param room id of the room
     * @param lengthUnit symbol of the unit that all lengths are in
     * @param facts version, signature, review, equipment, checkpoint and printing, one line each
     * @param address of the page that says whether the sheet is still current, for the square code; empty for a sheet without one
     * @param caution stands at the foot
     * @param invented whether the department is a demonstration
     */
    record Head(
            String room,
            String roomName,
            String site,
            String part,
            String lengthUnit,
            List<String> facts,
            Optional<String> address,
            String caution,
            boolean invented) {}

    /**
     * The rows of one region and one patient group.
     *
     * @param children whether the group is another than adults, which must be seen at a glance
     */
    record Section(String region, String group, boolean children, List<Block> blocks) {}

    /**
     * Consecutive bands of one examination for which everything but kV and exposure is the same.
     *
     * @param examination body part and projection
     * @param place the support
     * @param within how the technique follows the thickness inside a band, and how far it may move
     * @param words where to measure, centring, breathing, shielding, notes: each with its label, none of them empty
     */
    record Block(
            String examination,
            String place,
            List<BandLine> bands,
            String focalSpot,
            String grid,
            String sid,
            String receptor,
            String within,
            List<Words> words) {}

    /**
     * One row of the chart.
     *
     * @param thickness the band
     * @param exposure mAs, or AEC with its chambers
     * @param more density and back-up of an AEC exposure; else empty
     * @param reference the thickness at which the row holds as written
     */
    record BandLine(String thickness, String kV, String exposure, String more, String reference) {}

    /** A labelled text. */
    record Words(String label, String text) {}

    /** One named adjustment: what it does, and when it is for. */
    record AdjustmentLine(String label, String effect, String when) {}

    /** A heading and what stands under it. */
    record Paragraph(String heading, String text) {}
}
