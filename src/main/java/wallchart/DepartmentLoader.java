package wallchart;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import wallchart.DepartmentFolder.RoomFiles;
import wallchart.DepartmentFolder.VersionFiles;
import wallchart.Refusals.Refused;
import wallchart.chart.ChartRules;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.Draft;
import wallchart.chart.Finding;
import wallchart.chart.Publication;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.TubePart;
import wallchart.equipment.Installation;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.Rooms;
import wallchart.people.Person;
import wallchart.store.Actor;
import wallchart.store.Database;

/**
 * Takes a department folder into the database through the same services a user calls: equipment is installed, versions are
 * published by a named signer, and everything that those services refuse is refused here too.
 */
final class DepartmentLoader {

    private static final String MEANING = "Approved for use in this room";

    private final Clock clock;
    private final Rooms rooms;
    private final Charts charts;
    private final Consumer<String> say;

    /** @param say where a line for each thing done goes */
    DepartmentLoader(Database database, ChartRules rules, Consumer<String> say) {
        this.clock = database.clock();
        this.rooms = new Rooms(database);
        this.charts = new Charts(database, rooms, rules);
        this.say = say;
    }

    Rooms rooms() {
        return rooms;
    }

    Charts charts() {
        return charts;
    }

    /**
     * Loads rooms as of now, every version signed by one person. Where the latest published version says what one of a room's
     * files says, that file and those before it are left out: loading again never brings an old chart back.
     */
    void load(List<RoomFiles> department, Person signer, int reviewAfterMonths) {
        requireReadable(department);
        for (var files : department) {
            install(clock, files, signer.asActor());
            for (var version : notYetPublished(files)) {
                var today = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC);
                publish(clock, files, version, signer.asActor(), today.plusMonths(reviewAfterMonths));
            }
        }
    }

    /** A file that says what an earlier revision said is left out: what was entered since then is not undone by loading again. */
    void install(Clock then, RoomFiles files, Actor by) {
        var digest = files.equipment().canonical().digest();
        var said = rooms.revisions(files.room()).stream()
                .filter(revision -> revision.digest().equals(digest))
                .findFirst();
        if (said.isPresent()) {
            say.accept("room " + files.room() + ": equipment.yaml says what revision "
                    + said.get().number() + " says, left out");
            return;
        }
        requireNoOlderMeasurement(files);
        var installation = rooms.at(then).install(by, files.equipment(), "Loaded from a file");
        if (installation instanceof Installation.Refused refused) {
            throw new Refused("equipment of room " + files.room() + ": "
                    + refused.problems().get(0) + more(refused.problems().size()));
        }
        say.accept("room " + files.room() + ": equipment installed");
    }

    /** A file that was edited, but not where somebody has measured meanwhile, would put the old measurement back unseen. */
    private void requireNoOlderMeasurement(RoomFiles files) {
        var written = Optional.ofNullable(files.equipment().tube())
                .map(TubePart::output)
                .map(OutputPart::measuredOn);
        var inForce = rooms.find(files.room())
                .flatMap(room -> room.tube().output())
                .map(MeasuredOutput::measuredOn)
                .filter(newest -> written.map(newest::isAfter).orElse(true));
        inForce.ifPresent(newest -> {
            throw new Refused("equipment of room " + files.room() + ": the tube's output was measured on " + newest
                    + " by what is in force, the file "
                    + written.map(day -> "has " + day).orElse("has none")
                    + ": bring equipment.yaml up to date, or enter older data over the interface");
        });
    }

    void publish(Clock then, RoomFiles files, VersionFiles version, Actor by, LocalDate reviewDue) {
        var part = version.version();
        var draft = new Draft(
                files.room(),
                latest(files),
                version.reading().content(),
                part.title(),
                part.reason(),
                MEANING,
                Optional.empty(),
                reviewDue);
        announce(files, version, charts.at(then).publish(by, draft));
    }

    private List<VersionFiles> notYetPublished(RoomFiles files) {
        int latest = latest(files);
        var published = charts.version(files.room(), latest).map(ChartVersion::content);
        for (int i = files.versions().size(); i > 0; i--) {
            var version = files.versions().get(i - 1);
            if (published.equals(Optional.of(version.reading().content()))) {
                say.accept("room " + files.room() + ": " + version.name() + " says what version " + latest
                        + " says, left out");
                return files.versions().subList(i, files.versions().size());
            }
        }
        return files.versions();
    }

    private int latest(RoomFiles files) {
        var heads = charts.versions(files.room());
        return heads.isEmpty() ? 0 : heads.get(0).number();
    }

    /** Before anything is written: a file of which a row could not be read might look like one published long ago. */
    static void requireReadable(List<RoomFiles> department) {
        department.forEach(files -> files.versions().forEach(DepartmentLoader::requireReadable));
    }

    private static void requireReadable(VersionFiles version) {
        version.reading().findings().stream().findFirst().ifPresent(finding -> {
            throw new Refused(version.name() + ": " + finding
                    + more(version.reading().findings().size()));
        });
    }

    private void announce(RoomFiles files, VersionFiles version, Publication publication) {
        if (publication instanceof Publication.Published published) {
            say.accept("room " + files.room() + ": version "
                    + published.version().head().number() + " published from " + version.name() + ", "
                    + published.cautions().size() + " cautions");
            return;
        }
        throw new Refused(version.name() + ": " + reason(publication));
    }

    private static String reason(Publication publication) {
        if (publication instanceof Publication.Refused refused) {
            var blocking =
                    refused.findings().stream().filter(Finding::isBlocking).toList();
            return blocking.get(0) + more(blocking.size());
        }
        return publication instanceof Publication.NotPermitted forbidden
                ? forbidden.reason()
                : "another version was published meanwhile: load again";
    }

    private static String more(int problems) {
        return problems > 1 ? " (and " + (problems - 1) + " more: see the check command)" : "";
    }
}
