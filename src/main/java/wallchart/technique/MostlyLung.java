package wallchart.technique;

import java.util.Optional;
import java.util.Set;
import wallchart.chart.ExaminationKey;

/**
 * The examinations whose path through the patient is mostly lung, in every projection: for them no slab of water as thick as the
 * patient stands, so nothing is predicted along or behind their thickness. What reaches the skin does not depend on it.
 *
 * <p>At 60 keV 1 cm of inflated lung weakens the beam as 0.26 cm of water, 1 cm of soft tissue as 0.98 cm (coefficients of NISTIR
 * 5632; density of inflated lung 0.26 g/cm3, ICRU Report 44, from memory). A chest that is two thirds lung is about half as much water
 * as it measures, and one centimetre more of it may be anything from a quarter of a centimetre to a whole one, as it is breath or fat.
 */
public final class MostlyLung {

    /**
     * In terms of DICOM. The chest; ribs, because a chart does not say whether above or below the diaphragm; the sternum, seen across
     * the lungs in every view; chest and abdomen together, for its upper half. The thoracic spine is none of them: its path is spine,
     * mediastinum and shoulder girdle. Nor are clavicle and scapula, of whose field the apex of a lung is a corner. Anatomy: common knowledge of the trade, no source.
     */
    private static final Set<String> TERMS = Set.of("CHEST", "RIB", "STERNUM", "CHESTABDOMEN");

    /** Why nothing is predicted. */
    public static final String SENTENCE =
            "mostly lung: a slab of water does not stand for it (1 cm of inflated lung is about "
                    + "0.26 cm of water, of soft tissue 0.98)";

    private MostlyLung() {}

    /** Whether the path is mostly lung. */
    public static boolean is(ExaminationKey examination) {
        return TERMS.contains(examination.bodyPart());
    }

    /** {@link #SENTENCE} where the path is mostly lung, else empty. */
    public static Optional<String> findObjection(ExaminationKey examination) {
        return is(examination) ? Optional.of(SENTENCE) : Optional.empty();
    }

    /** The terms, for whoever holds them against the table of body parts. */
    static Set<String> terms() {
        return TERMS;
    }
}
