package wallchart.chart;

import java.util.Optional;

/**
 * A projection by its slug, with the DICOM codes it corresponds to.
 *
 * @param slug the word used in files, row keys and queries, such as {@code ap}
 * @param label words for people
 * @param view view code (DICOM PS3.16 CID 4010)
 * @param modifier view modifier (CID 4011), where the view alone does not tell
 * @param eponym eponymous name (CID 4012), where the projection has one
 */
public record Projection(String slug, String label, Code view, Optional<Code> modifier, Optional<Code> eponym) {

    /**
     * A coded term.
     *
     * @param scheme coding scheme designator, such as {@code SCT}
     * @param value code value
     * @param meaning code meaning
     */
    public record Code(String scheme, String value, String meaning) {}
}
