package wallchart;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import wallchart.DepartmentFolder.RoomFiles;
import wallchart.DepartmentFolder.VersionFiles;
import wallchart.people.Person;
import wallchart.store.Actor;

/**
 * Tells the demo's past: equipment, first versions and changes, each through the service that a user calls, in the order in which
 * they are said to have happened, as the ledger wants it.
 */
final class DemoHistory {

    private final Instant now;
    private final DepartmentLoader loader;
    private final Map<String, Person> people;
    private final List<Told> acts = new ArrayList<>();

    /** One act, so many days ago. */
    private record Told(int daysAgo, Runnable act) {}

    DemoHistory(Instant now, DepartmentLoader loader, Map<String, Person> people) {
        this.now = now;
        this.loader = loader;
        this.people = people;
    }

    /** At an instant that many days before another. */
    static Clock daysBefore(Instant now, int days) {
        return Clock.fixed(now.minus(Duration.ofDays(days)), ZoneOffset.UTC);
    }

    /** Rooms with the versions of their files, each signed by the person it names. */
    DemoHistory with(List<RoomFiles> department) {
        DepartmentLoader.requireReadable(department);
        department.forEach(this::with);
        return this;
    }

    private void with(RoomFiles files) {
        int installed = 1
                + files.versions().stream()
                        .mapToInt(version -> version.version().daysAgo())
                        .max()
                        .orElse(0);
        add(installed, () -> loader.install(daysBefore(now, installed), files, Actor.system("demo")));
        files.versions().forEach(version -> with(files, version));
    }

    private void with(RoomFiles files, VersionFiles version) {
        var part = version.version();
        var then = daysBefore(now, part.daysAgo());
        var reviewDue = LocalDate.ofInstant(then.instant(), ZoneOffset.UTC).plusDays(part.reviewAfterDays());
        var signer = people.get(part.signedBy()).asActor();
        add(part.daysAgo(), () -> loader.publish(then, files, version, signer, reviewDue));
    }

    /** Changes, step by step. */
    DemoHistory with(DemoChanges changes) {
        changes.steps().forEach(step -> add(step.daysAgo(), () -> step.take(daysBefore(now, step.daysAgo()), people)));
        return this;
    }

    /** Measurements of tubes, as they were entered. */
    DemoHistory with(DemoMeasurements measurements) {
        measurements
                .parts()
                .forEach(part -> add(
                        part.daysAgo(),
                        () -> measurements.enter(part, daysBefore(now, part.daysAgo()), people.get(part.by()))));
        return this;
    }

    private void add(int daysAgo, Runnable act) {
        acts.add(new Told(daysAgo, act));
    }

    /** Does it all; acts of one day in the order in which they were added. */
    void tell() {
        acts.stream().sorted(Comparator.comparingInt(Told::daysAgo).reversed()).forEach(told -> told.act()
                .run());
    }
}
