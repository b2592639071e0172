package wallchart.grading;

import wallchart.chart.Finding;
import wallchart.chart.Finding.Severity;

/**
 * What beam physics has to say about one examination: cautions and notes, never anything that blocks.
 *
 * @param kind what it is about; an examination has at most one finding of a kind
 * @param severity caution or note
 * @param row the row it points at
 * @param field the field it points at, as files name it
 * @param figure its figure in short, to be compared with another time
 * @param reason what, the value, the limit, the next step
 */
public record PhysicsFinding(Kind kind, Severity severity, String row, String field, String figure, String reason) {

    /** What a finding is about, the most pressing first. */
    public enum Kind {
        JUMP,
        SLOPE,
        DRIFT,
        LUNG_AS_WATER,
        OVER_KERMA_LEVEL,
        OVER_AREA_LEVEL,
        DOUBTFUL_KERMA_LEVEL,
        DOUBTFUL_AREA_LEVEL,
        BACKUP_OVER_KERMA_LEVEL,
        BACKUP_OVER_AREA_LEVEL
    }

    public PhysicsFinding {
        if (severity == Severity.BLOCKING) {
            throw new IllegalArgumentException("beam physics keeps no chart from being signed: " + reason);
        }
    }

    /** As the findings of a chart or change are listed. */
    public Finding asFinding() {
        return new Finding(severity, row, field, reason);
    }
}
