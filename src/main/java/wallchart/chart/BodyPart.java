package wallchart.chart;

/**
 * A body part by its DICOM term.
 *
 * @param term DICOM Body Part Examined (0018,0015), such as {@code KNEE}
 * @param sctCode its SNOMED CT code
 * @param meaning the code's meaning in words, such as {@code Knee}
 * @param label what people at a screen read
 * @param region that pages and sheets list it under
 */
public record BodyPart(String term, String sctCode, String meaning, String label, BodyRegion region) {}
