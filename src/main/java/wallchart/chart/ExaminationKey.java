package wallchart.chart;

import wallchart.equipment.SupportKind;

/**
 * What is examined, on whom and where: all of a row's key but its band.
 *
 * @param bodyPart DICOM Body Part Examined term, such as {@code KNEE}
 * @param projection projection slug, such as {@code ap}
 * @param patientGroup group slug, such as {@code adult}
 * @param support where receptor and patient are
 */
public record ExaminationKey(String bodyPart, String projection, String patientGroup, SupportKind support) {

    @Override
    public String toString() {
        return bodyPart + "/" + projection + "/" + patientGroup + "/" + support.slug();
    }
}
