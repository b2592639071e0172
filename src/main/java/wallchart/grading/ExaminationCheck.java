package wallchart.grading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.grading.ExaminationPhysics.Reference;
import wallchart.physics.ReceptorResponse;
import wallchart.technique.Arrangement;
import wallchart.technique.ReferenceLevel;
import wallchart.technique.RowDoses;

/** Holds the rows of one examination against beam physics. For one thread and one check. */
final class ExaminationCheck {

    private static final String AEC = "AEC ends the exposure: not predicted";

    private final ExaminationKey examination;
    private final List<Row> rows;
    private final Map<Row, Arrangement> arrangements = new IdentityHashMap<>();
    private final Map<Row, PlacedRow> placed = new IdentityHashMap<>();
    private final ReceptorResponse quantity;
    private final Beams beams;
    private final RowDoses doses;

    ExaminationCheck(ExaminationKey examination, List<Row> unordered, Room room, Beams beams, RowDoses doses) {
        this.examination = examination;
        this.doses = doses;
        this.beams = beams;
        this.rows = unordered.stream()
                .sorted(Comparator.comparing(row -> row.key().band().from()))
                .toList();
        rows.forEach(row -> Arrangement.find(room, row).ifPresent(how -> arrangements.put(row, how)));
        this.quantity = quantity();
        rows.stream()
                .filter(row -> !PlacedRow.isAutomatic(row) && arrangements.containsKey(row))
                .forEach(row -> placed.put(row, PlacedRow.of(row, arrangements.get(row), beams, quantity)));
    }

    /** What the rows' receptors are modelled as; of rows on receptors of different kinds the air kerma that reaches them. */
    private ReceptorResponse quantity() {
        var kinds = arrangements.values().stream().map(Arrangement::response).collect(Collectors.toSet());
        return kinds.size() == 1 ? kinds.iterator().next() : ReceptorResponse.AIR_KERMA;
    }

    ExaminationPhysics check(PhysicsLimits limits, boolean withGrades) {
        var middle = findReference();
        var found = rows.stream().map(row -> physics(row, middle, withGrades)).toList();
        return new ExaminationPhysics(
                examination,
                middle.map(ExaminationCheck::reference),
                quantity,
                comparedAs(),
                found,
                withGrades ? middle.map(row -> offers(row.row())).orElse(List.of()) : List.of(),
                findings(found, middle, limits));
    }

    private static Reference reference(PlacedRow row) {
        return new Reference(row.row().key(), row.reference());
    }

    private List<Offer> offers(Row row) {
        return Optional.ofNullable(placed.get(row))
                .filter(place -> place.findObjection(place.reference()).isEmpty())
                .flatMap(place -> doses.find(row, place.how()).map(dose -> new Offers(beams, dose).of(place)))
                .orElse(List.of());
    }

    /** The predicted row whose reference thickness lies nearest the middle of what the examination covers; of two, the thinner. */
    private Optional<PlacedRow> findReference() {
        double middle = middleCentimetres();
        return rows.stream()
                .map(placed::get)
                .filter(row -> row != null && row.findObjection(row.reference()).isEmpty())
                .min(Comparator.comparingDouble(row -> Math.abs(row.reference() - middle)));
    }

    /** The middle of what the examination covers. */
    private double middleCentimetres() {
        double from = rows.get(0).key().band().from().inCentimetres();
        double to = rows.stream()
                .mapToDouble(row -> row.key().band().to().inCentimetres())
                .max()
                .orElseThrow();
        return (from + to) / 2;
    }

    private RowPhysics physics(Row row, Optional<PlacedRow> middle, boolean withGrades) {
        var how = Optional.ofNullable(arrangements.get(row));
        var dose = how.flatMap(arrangement -> doses.find(row, arrangement));
        var place = placed.get(row);
        if (place == null) {
            var reason = PlacedRow.isAutomatic(row) ? AEC : "the room does not have all that the row names";
            return new RowPhysics(row, List.of(), RowCurve.nothing(row.key().band(), reason), dose, List.of());
        }
        var grades = withGrades ? RuleGrades.of(place, beams) : List.<Grade>of();
        if (middle.isEmpty()) {
            var reason = place.findObjection(place.reference()).orElseThrow();
            return new RowPhysics(row, List.of(), RowCurve.nothing(row.key().band(), reason), dose, grades);
        }
        var curve = RowCurve.of(place, exposureAtReference(middle.get()));
        return new RowPhysics(row, curve.points(), curve.gaps(), dose, grades);
    }

    private static double exposureAtReference(PlacedRow middle) {
        return middle.exposure(middle.course().at(middle.reference()), middle.reference());
    }

    private String comparedAs() {
        var receptors = quantity == ReceptorResponse.CESIUM_IODIDE
                ? "energy absorbed in a caesium iodide panel"
                : "air kerma at the receptor"
                        + (arrangements.values().stream().anyMatch(how -> how.response() != quantity)
                                ? ", because the rows' receptors are of different kinds"
                                : "");
        var targets = placed.values().stream()
                .map(row -> PlacedRow.target(row.row(), row.how()))
                .collect(Collectors.toCollection(TreeSet::new));
        return targets.size() < 2
                ? receptors
                : receptors + ", over each row's own target exposure index ("
                        + targets.stream().map(String::valueOf).collect(Collectors.joining(", ")) + ")";
    }

    private List<PhysicsFinding> findings(List<RowPhysics> found, Optional<PlacedRow> middle, PhysicsLimits limits) {
        var findings = new ArrayList<PhysicsFinding>();
        new EdgeJumps(limits).find(found).ifPresent(findings::add);
        new BandSlopes(limits).find(found).ifPresent(findings::add);
        if (findings.isEmpty()) {
            middle.flatMap(row -> new WholeDrift(limits).find(found, reference(row)))
                    .ifPresent(findings::add);
        }
        LungAsWater.find(rows).ifPresent(findings::add);
        var beside = new LevelFindings(middleCentimetres(), this::offers);
        for (var level : levels(found)) {
            findings.addAll(beside.of(level, found));
        }
        return findings;
    }

    /** The site's levels for the examination, which stand beside the estimate of every row. */
    private static List<ReferenceLevel> levels(List<RowPhysics> found) {
        return found.stream()
                .flatMap(row -> row.dose().stream())
                .findFirst()
                .map(dose -> Stream.of(dose.referenceLevel(), dose.areaLevel())
                        .flatMap(Optional::stream)
                        .toList())
                .orElse(List.of());
    }
}
