package wallchart.equipment;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wallchart.equipment.EquipmentDocument.DistancesPart;
import wallchart.equipment.EquipmentDocument.GridPart;
import wallchart.equipment.EquipmentDocument.RangePart;
import wallchart.equipment.EquipmentDocument.ReceptorPart;
import wallchart.equipment.EquipmentDocument.SupportPart;
import wallchart.quantity.Distance;
import wallchart.quantity.FieldSize;
import wallchart.quantity.TubeVoltage;

/**
 * Turns what people wrote about a room into a {@link Room}, or says everything that is impossible about it, each with its field.
 *
 * <p>Stateless and thread-safe.
 */
public final class EquipmentReader {

    private EquipmentReader() {}

    /** What somebody enters now. */
    public static EquipmentReading read(EquipmentDocument document) {
        var problems = new ReadingProblems();
        EquipmentTexts.check(document, problems);
        return read(document, problems);
    }

    /** What was entered before, under the rules of its day. */
    static EquipmentReading readStored(EquipmentDocument document) {
        return read(document, new ReadingProblems());
    }

    private static EquipmentReading read(EquipmentDocument document, ReadingProblems problems) {
        var id = problems.required("/room", document.room(), room -> Slugs.require("room", room));
        var name = problems.required("/name", document.name(), text -> text);
        var generator = new GeneratorReader(problems).read(document.generator());
        var tube = new TubeReader(problems).read(document.tube());
        var reading = new EquipmentReader.Places(problems);
        var grids = problems.each("/grids", document.grids(), reading::grid);
        var receptors = problems.each("/receptors", document.receptors(), reading::receptor);
        var supports = problems.each("/supports", document.supports(), reading::support);
        if (problems.found().isEmpty()) {
            var room = problems.at(
                    "",
                    () -> new Room(
                            id.orElseThrow(),
                            name.orElseThrow(),
                            generator.orElseThrow(),
                            tube.orElseThrow(),
                            grids,
                            receptors,
                            supports));
            room.ifPresent(possible -> RoomChecks.check(possible, problems));
            if (problems.found().isEmpty()) {
                return new EquipmentReading.Accepted(room.orElseThrow());
            }
        }
        return new EquipmentReading.Refused(problems.found());
    }

    /** Reads grids, receptors and supports. */
    private record Places(ReadingProblems problems) {

        Optional<Grid> grid(String field, GridPart part) {
            int before = problems.count();
            var id = problems.required(field + "/id", part.id(), text -> text);
            var ratio = problems.required(field + "/ratio", part.ratio(), value -> value);
            var lines = problems.required(field + "/linesPerCm", part.linesPerCm(), value -> value);
            var focus = problems.optional(field + "/focalDistanceCm", part.focalDistanceCm(), Distance::new);
            var range = problems.optional(field + "/focalRangeCm", part.focalRangeCm(), Places::range);
            var factors = problems.eachOfSome(field + "/factors", part.factors(), (pointer, factor) -> {
                var kV = problems.required(pointer + "/kV", factor.kV(), TubeVoltage::new);
                var times = problems.required(pointer + "/factor", factor.factor(), value -> value);
                return kV.flatMap(at -> times.map(value -> new Grid.Factor(at, value)));
            });
            return problems.sound(
                    before, field, () -> new Grid(id.get(), ratio.get(), lines.get(), focus, range, factors));
        }

        Optional<Receptor> receptor(String field, ReceptorPart part) {
            int before = problems.count();
            var id = problems.required(field + "/id", part.id(), text -> text);
            var name = problems.required(field + "/name", part.name(), text -> text);
            var kind = problems.required(field + "/kind", part.kind(), Places::receptorKind);
            var sizes = problems.eachOfSome(
                    field + "/sizesCm",
                    part.sizesCm(),
                    (pointer, size) -> problems.at(pointer, () -> FieldSize.parse(size)));
            var target = problems.required(field + "/targetExposureIndex", part.targetExposureIndex(), value -> value);
            return problems.sound(
                    before, field, () -> new Receptor(id.get(), name.get(), kind.get(), sizes, target.get()));
        }

        Optional<Support> support(String field, SupportPart part) {
            int before = problems.count();
            var kind = problems.required(field + "/kind", part.kind(), Places::supportKind);
            var gap = problems.required(field + "/receptorGapCm", part.receptorGapCm(), Distance::new);
            var sids = distances(field + "/sidCm", part.sidCm());
            var grids = ids(field + "/grids", part.grids());
            var receptors = ids(field + "/receptors", part.receptors());
            var chambers = problems.all(
                    field + "/aecChambers",
                    part.aecChambers() == null ? List.of() : part.aecChambers(),
                    Places::chambers);
            return problems.sound(
                    before,
                    field,
                    () -> new Support(kind.get(), gap.get(), sids.get(), grids.get(), receptors.get(), chambers.get()));
        }

        private static DistanceRange range(RangePart part) {
            if (part.from() == null || part.to() == null) {
                throw new IllegalArgumentException("from and to must both be given");
            }
            return new DistanceRange(new Distance(part.from()), new Distance(part.to()));
        }

        private Optional<List<String>> ids(String field, List<String> ids) {
            return problems.required(field, ids, given -> given)
                    .flatMap(given -> problems.all(field, given, entries -> entries));
        }

        private Optional<? extends AllowedDistances> distances(String field, DistancesPart part) {
            if (part == null || part.stations() == null) {
                return problems.required(
                        field,
                        part,
                        given -> new AllowedDistances.Within(range(new RangePart(given.from(), given.to()))));
            }
            if (part.from() != null || part.to() != null) {
                problems.add(field, "give either stations, or from and to");
                return Optional.empty();
            }
            return problems.all(
                    field + "/stations",
                    part.stations(),
                    stops -> new AllowedDistances.Stops(
                            stops.stream().map(Distance::new).toList()));
        }

        private static ReceptorKind receptorKind(String slug) {
            return ReceptorKind.find(slug)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "kind is \"" + slug + "\": write csi, gadox, storage-phosphor or film-screen"));
        }

        private static SupportKind supportKind(String slug) {
            return SupportKind.find(slug)
                    .orElseThrow(() -> new IllegalArgumentException(
                            "kind is \"" + slug + "\": write tabletop, table-bucky, wall-bucky or mobile"));
        }

        private static Set<Chamber> chambers(List<String> slugs) {
            return slugs.stream()
                    .map(slug -> Chamber.find(slug)
                            .orElseThrow(() -> new IllegalArgumentException(
                                    "chamber is \"" + slug + "\": write left, centre or right")))
                    .collect(Collectors.toUnmodifiableSet());
        }
    }
}
