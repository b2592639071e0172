package wallchart.audit;

import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.people.PeopleFixtures.aPerson;

import java.time.Period;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import wallchart.chart.ChartRules;
import wallchart.chart.Charts;
import wallchart.chart.Row;
import wallchart.chart.RowFields;
import wallchart.equipment.Rooms;
import wallchart.grading.ChartPhysics;
import wallchart.grading.PhysicsLimits;
import wallchart.people.People;
import wallchart.people.Role;
import wallchart.physics.BeamPhysics;
import wallchart.signoff.Change;
import wallchart.signoff.ChangeKind;
import wallchart.signoff.ImpactCalculation;
import wallchart.signoff.Outcome;
import wallchart.signoff.Preparation;
import wallchart.signoff.ReviewLimits;
import wallchart.signoff.SignoffDesk;
import wallchart.store.Actor;
import wallchart.store.Database;

/** Changes of the invented department, opened, edited and decided by lot. */
final class VariedChanges {

    private static final BeamPhysics PHYSICS = BeamPhysics.load();
    private static final ImpactCalculation IMPACTS = new ImpactCalculation(PHYSICS, ReviewLimits.DEFAULTS);
    private static final ChartPhysics GRADING = new ChartPhysics(PHYSICS, List.of(), PhysicsLimits.DEFAULTS);
    private static final String WORDS = "as was agreed in the department";

    private final Random random;
    private final Charts charts;
    private final SignoffDesk desk;
    private final Actor author;
    private final Actor deputy;
    private final Actor physicist;
    private final List<Change> changes = new ArrayList<>();

    VariedChanges(Database database, Rooms rooms, Charts charts, People people, Random random) {
        this.random = random;
        this.charts = charts;
        this.desk =
                new SignoffDesk(database, rooms, charts, ChartRules.adultsOnly(), IMPACTS, GRADING, Period.ofYears(1));
        this.author = aPerson(people, "author", Role.RADIOGRAPHER).asActor();
        this.deputy = aPerson(people, "deputy", Role.LEAD).asActor();
        this.physicist = aPerson(people, "physicist", Role.PHYSICIST).asActor();
    }

    /** Opens a change, or takes a step or two on one that there is; a refusal leaves no trace, as it happens in a department. */
    void act() {
        if (changes.isEmpty() || random.nextBoolean()) {
            open();
            return;
        }
        int place = random.nextInt(changes.size());
        for (int steps = 1 + random.nextInt(4); steps > 0; steps--) {
            if (step(changes.get(place)) instanceof Outcome.Done done) {
                changes.set(place, done.change());
            }
        }
    }

    private void open() {
        var room = "r" + (1 + random.nextInt(3));
        var versions = charts.versions(room);
        int newest = versions.isEmpty() ? 0 : versions.get(0).number();
        var title = "Change " + changes.size();
        var outcome =
                switch (random.nextInt(4)) {
                    case 0 -> desk.revertTo(author, room, 1 + random.nextInt(Math.max(1, newest - 1)), WORDS);
                    case 1 -> desk.prepare(author, room, title, WORDS, newest, prepared(room, newest));
                    case 2 -> desk.open(author, room, title, WORDS, newest, ChangeKind.ORDINARY);
                    default -> desk.open(author, room, title, WORDS, newest, ChangeKind.FAST_TRACK);
                };
        if (outcome instanceof Outcome.Done done) {
            changes.add(edited(done.change()));
        }
    }

    /** A new row, one that goes, and other notes for all that stay. */
    private Preparation prepared(String room, int newest) {
        var rows = charts.version(room, newest)
                .map(version -> version.content().rows())
                .orElse(List.of());
        var put = new ArrayList<Map<String, String>>();
        put.add(RowFields.of(aRow().withBand(33, 34 + random.nextInt(5)).row()));
        rows.stream().skip(1).map(this::noted).forEach(put::add);
        var gone = rows.stream().limit(1).map(Row::key).toList();
        return new Preparation(put, gone, Optional.empty());
    }

    private Map<String, String> noted(Row row) {
        var fields = new LinkedHashMap<>(RowFields.of(row));
        fields.put("notes", "edited, number " + random.nextInt(1000));
        return fields;
    }

    private Change edited(Change change) {
        var row = edit(change) instanceof Outcome.Done done ? done.change() : change;
        return random.nextInt(4) > 0 && adjust(row) instanceof Outcome.Done done ? done.change() : row;
    }

    private Outcome step(Change change) {
        long id = change.id();
        int seen = change.head().revision();
        return switch (change.state()) {
            case DRAFTING, RETURNED ->
                switch (random.nextInt(6)) {
                    case 0, 1 -> edit(change);
                    case 2 -> adjust(change);
                    case 3 -> random.nextInt(4) == 0 ? desk.withdraw(author, id, seen) : desk.catchUp(author, id, seen);
                    default -> desk.submit(author, id, seen);
                };
            case SUBMITTED ->
                switch (random.nextInt(6)) {
                    case 0 -> desk.giveBack(deputy, id, seen, WORDS);
                    case 1 -> desk.decline(deputy, id, seen, WORDS);
                    case 2 -> desk.concur(physicist, id, seen, Optional.empty());
                    default -> sign(id, seen);
                };
            case SIGNED -> desk.recordSecondReview(physicist, id, seen, WORDS);
            case DECLINED, WITHDRAWN -> desk.submit(author, id, seen);
        };
    }

    private Outcome sign(long id, int seen) {
        var impact = desk.assessment(id).orElseThrow().impact().digest();
        return desk.sign(deputy, id, seen, WORDS, Optional.empty(), impact, Optional.empty());
    }

    private Outcome edit(Change change) {
        var rows = desk.proposal(change.id()).orElseThrow().after().rows();
        Row row = rows.isEmpty() ? aRow().withBand(31, 33).row() : rows.get(random.nextInt(rows.size()));
        int seen = change.head().revision();
        if (rows.size() > 1 && random.nextInt(5) == 0) {
            return desk.withdrawRow(author, change.id(), seen, row.key());
        }
        return desk.putRow(author, change.id(), seen, row.key(), noted(row));
    }

    private Outcome adjust(Change change) {
        var cast = Map.of("name", "cast", "label", "Cast", "timesMas", "1." + (1 + random.nextInt(9)), "notes", "");
        return desk.putAdjustments(author, change.id(), change.head().revision(), List.of(cast));
    }
}
