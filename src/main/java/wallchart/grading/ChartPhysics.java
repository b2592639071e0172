package wallchart.grading;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartVersion;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Finding;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.physics.BeamPhysics;
import wallchart.technique.BandReach;
import wallchart.technique.ExposureModel;
import wallchart.technique.OutputSinceSigning;
import wallchart.technique.OutputWatch;
import wallchart.technique.ReferenceLevel;
import wallchart.technique.RowDoses;

/**
 * Holds charts against beam physics. Pure and thread-safe; one instance serves every room.
 *
 * <p>Predictions are made with the rules of an answer (thickness method, kV window, generator), without named adjustments and before
 * any rounding to stations.
 */
public final class ChartPhysics {

    private static final int DIGEST_BYTES = 12;

    private final ExposureModel model;
    private final OutputWatch outputs;
    private final BandReach reach;
    private final RowDoses doses;
    private final PhysicsLimits limits;
    private final String settingsDigest;

    /**
     * With the beam model that the answers use.
     *
     * @param levels the site's reference levels
     */
    public ChartPhysics(BeamPhysics physics, List<ReferenceLevel> levels, PhysicsLimits limits) {
        this.model = new ExposureModel(physics);
        this.outputs = new OutputWatch(model);
        this.reach = new BandReach(model);
        this.limits = limits;
        this.doses = new RowDoses(model, levels);
        this.settingsDigest = digest(limits + " " + levels);
    }

    /** Begins the digest of all that the site has set: another one may say something else of the same chart and equipment. */
    public String settingsDigest() {
        return settingsDigest;
    }

    private static String digest(String text) {
        try {
            var digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(digest, 0, DIGEST_BYTES);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }

    /**
     * What became of the tube's output since a version was signed; empty where the tube is still that of its signature.
     *
     * @param now a state of the room's equipment
     * @param ofRoom all its states, oldest first
     */
    public Optional<OutputSinceSigning> since(ChartVersion version, RoomRevision now, List<RoomRevision> ofRoom) {
        return outputs.since(version, now, ofRoom);
    }

    /** A caution for each row that cannot be set at an end of its band. */
    public List<Finding> unreachable(Room room, ChartContent content, Predicate<ExaminationKey> wanted) {
        return reach.check(room, content, row -> wanted.test(row.key().examination()));
    }

    /** Everything about a whole chart in that room. */
    public PhysicsReport check(Room room, ChartContent content) {
        return check(room, content, examination -> true);
    }

    /** The same of some examinations only. */
    public PhysicsReport check(Room room, ChartContent content, Predicate<ExaminationKey> wanted) {
        return new PhysicsReport(
                examinations(room, content, wanted, true),
                limits,
                Stations.roundingDb(room.generator()),
                ModelLimits.of(room));
    }

    /** What a change brings in the examinations that it touches, and what stands there as before. */
    public ChangedPhysics compare(Room room, ChartContent before, ChartContent after) {
        var touched = TouchedExaminations.of(before, after);
        return touched.isEmpty()
                ? ChangedPhysics.NOTHING
                : ChangedPhysics.of(
                        examinations(room, before, touched::contains, false),
                        examinations(room, after, touched::contains, false));
    }

    private List<ExaminationPhysics> examinations(
            Room room, ChartContent content, Predicate<ExaminationKey> wanted, boolean withGrades) {
        var byExamination = new LinkedHashMap<ExaminationKey, List<Row>>();
        for (var row : content.rows()) {
            if (wanted.test(row.key().examination())) {
                byExamination
                        .computeIfAbsent(row.key().examination(), key -> new ArrayList<>())
                        .add(row);
            }
        }
        var beams = new Beams(model);
        var found = new ArrayList<ExaminationPhysics>();
        byExamination.forEach((key, rows) ->
                found.add(new ExaminationCheck(key, rows, room, beams, doses).check(limits, withGrades)));
        return found;
    }
}
