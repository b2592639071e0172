package wallchart.grading;

import java.util.List;
import java.util.Optional;
import wallchart.chart.ExaminationKey;
import wallchart.chart.RowKey;
import wallchart.physics.ReceptorResponse;

/**
 * All rows of one examination held against beam physics, along one curve.
 *
 * @param examination body part, projection, patient group and support
 * @param reference what 0 dB is; absent where nothing is predicted
 * @param quantity what counts as receptor exposure
 * @param comparedAs the same in words, with the target exposure indices where they differ
 * @param rows by ascending band
 * @param offers what would give the receptor as much at the reference for less kerma at the skin; none where grades were not asked for
 * @param findings at most one of each kind, the most pressing first
 */
public record ExaminationPhysics(
        ExaminationKey examination,
        Optional<Reference> reference,
        ReceptorResponse quantity,
        String comparedAs,
        List<RowPhysics> rows,
        List<Offer> offers,
        List<PhysicsFinding> findings) {

    /**
     * Where the receptor exposure is 0 dB: the row whose reference thickness lies nearest the middle of what the examination covers,
     * at that thickness.
     */
    public record Reference(RowKey row, double thicknessCm) {}

    public ExaminationPhysics {
        rows = List.copyOf(rows);
        offers = List.copyOf(offers);
        findings = List.copyOf(findings);
    }

    /** The finding of that kind. */
    public Optional<PhysicsFinding> find(PhysicsFinding.Kind kind) {
        return findings.stream().filter(finding -> finding.kind() == kind).findFirst();
    }
}
