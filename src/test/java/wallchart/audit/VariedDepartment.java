package wallchart.audit;

import static wallchart.equipment.EquipmentFixtures.aRoom;
import static wallchart.people.PeopleFixtures.ADMINISTRATOR;
import static wallchart.people.PeopleFixtures.aPerson;
import static wallchart.people.PeopleFixtures.peopleOf;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wallchart.chart.BodyRegion;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.Draft;
import wallchart.chart.Publication;
import wallchart.equipment.EquipmentDocument;
import wallchart.equipment.Rooms;
import wallchart.people.People;
import wallchart.people.Person;
import wallchart.people.Role;
import wallchart.print.PaperSize;
import wallchart.print.PrintedSheet;
import wallchart.print.Selection;
import wallchart.print.SheetNumber;
import wallchart.print.SheetRegister;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.SettableClock;

/** An invented department whose history is drawn by lot, one act of somebody after the other, through the services a user calls. */
final class VariedDepartment {

    private static final int KINDS_OF_ACTS = 18;
    private static final List<String> ROOMS = List.of("r1", "r2", "r3");

    private final SettableClock clock;
    private final Random random;
    private final VariedContent varied;
    private final AuditTrail trail;
    private final People people;
    private final Rooms rooms;
    private final Charts charts;
    private final Actor lead;
    private final VariedChanges changes;
    private final SheetRegister sheets;
    private final List<SheetNumber> hanging = new ArrayList<>();
    private final List<Integer> pack = new ArrayList<>();
    private final Map<String, ChartContent> contents = new HashMap<>();
    private int acts;

    VariedDepartment(Database database, SettableClock clock, Random random, AuditTrail trail) {
        this.clock = clock;
        this.random = random;
        this.varied = new VariedContent(random);
        this.trail = trail;
        this.people = peopleOf(database);
        this.rooms = new Rooms(database);
        this.charts = new Charts(database, rooms, ChartRules.adultsOnly());
        this.lead = aPerson(people, "lead", Role.LEAD).asActor();
        this.changes = new VariedChanges(database, rooms, charts, people, random);
        this.sheets = new SheetRegister(database);
        ROOMS.forEach(room -> rooms.install(lead, aRoom().withId(room).document()));
    }

    /** One act, some time after the one before. */
    void act() {
        acts++;
        clock.advance(Duration.ofSeconds(1 + random.nextInt(100_000)).plusNanos(1_000L * random.nextInt(1_000_000)));
        switch (drawn()) {
            case 0 -> equip(aRoom().withId(aRoomId()).withName("Room " + acts).document());
            case 1 -> aPerson(people, "person" + acts, Role.RADIOGRAPHER);
            case 2 -> changeSomebody();
            case 3 -> people.issueRoomToken(ADMINISTRATOR, aRoomId(), "console " + acts);
            case 4 -> people.revokeRoomToken(ADMINISTRATOR, 1 + random.nextInt(5));
            case 5 -> review();
            case 6, 7, 8, 9 -> changes.act();
            case 10, 11 -> ROOMS.forEach(this::print);
            default -> publish();
        }
    }

    /** From a file, or by somebody who saw the room as it is and says why. */
    private void equip(EquipmentDocument document) {
        int newest = rooms.revisions(document.room()).size();
        if (random.nextBoolean()) {
            rooms.install(lead, document);
        } else {
            rooms.replace(lead, newest, document, "because of act " + acts, Map.of("affectedRows", acts));
        }
    }

    /** As from a pack of cards, so that in a dozen acts every kind has its turn. */
    private int drawn() {
        if (pack.isEmpty()) {
            IntStream.range(0, KINDS_OF_ACTS).forEach(pack::add);
            Collections.shuffle(pack, random);
        }
        return pack.remove(pack.size() - 1);
    }

    private String aRoomId() {
        return ROOMS.get(random.nextInt(ROOMS.size()));
    }

    private void changeSomebody() {
        var all = people.list();
        var person = all.get(random.nextInt(all.size()));
        if (person.name().equals("lead")) {
            return;
        }
        change(person, person.revision());
    }

    private void change(Person person, int revision) {
        switch (random.nextInt(4)) {
            case 0 -> people.changeRole(ADMINISTRATOR, person.id(), revision, Role.PHYSICIST);
            case 1 -> people.disable(ADMINISTRATOR, person.id(), revision, "left the department");
            case 2 -> people.enable(ADMINISTRATOR, person.id(), revision, "came back");
            default -> people.setPassword(ADMINISTRATOR, person.id(), revision, "a long password, number " + acts);
        }
    }

    /** A sheet is printed, and one of those that hang is taken down; in a room without a chart there is none. */
    private void print(String room) {
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        charts.inForce(room, now).map(ChartVersion::head).ifPresent(head -> {
            var sheet = new PrintedSheet(
                    aNumber(),
                    room,
                    head.number(),
                    head.digest(),
                    rooms.revisions(room).size(),
                    random.nextBoolean() ? PaperSize.A4 : PaperSize.LETTER,
                    new Selection(
                            random.nextBoolean() ? Optional.of("adult") : Optional.empty(),
                            random.nextBoolean() ? Optional.of(BodyRegion.SPINE) : Optional.empty()),
                    now,
                    lead.name(),
                    "Pat Lead",
                    lead.role(),
                    Optional.empty());
            sheets.enter(lead, sheet);
            hanging.add(sheet.number());
            if (hanging.size() > 1) {
                sheets.takeDown(lead, hanging.remove(random.nextInt(hanging.size())));
            }
        });
    }

    private SheetNumber aNumber() {
        var letters = "CDFGHJKMNPQR";
        return new SheetNumber(IntStream.range(0, letters.length())
                .mapToObj(i -> String.valueOf(letters.charAt(random.nextInt(letters.length()))))
                .collect(Collectors.joining()));
    }

    private void review() {
        var now = clock.instant();
        var filter = new EventFilter(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.of(now.minus(Duration.ofDays(30))),
                Optional.of(now));
        trail.review(lead, new Review(filter, "nothing unusual was found"));
    }

    private void publish() {
        var room = aRoomId();
        var versions = charts.versions(room);
        var content = varied.changed(contents.getOrDefault(room, ChartContent.EMPTY), "as of act " + acts);
        var inForceFrom = random.nextInt(4) == 0
                ? Optional.of(clock.instant().plusSeconds(random.nextInt(200_000)))
                : Optional.<Instant>empty();
        var draft = new Draft(
                room,
                versions.isEmpty() ? 0 : versions.get(0).number(),
                content,
                "Chart after act " + acts,
                "because act " + acts + " asked for it",
                random.nextBoolean() ? "approved for use" : "approved after review",
                inForceFrom,
                LocalDate.parse("2030-01-01").plusDays(random.nextInt(300)));
        if (charts.publish(lead, draft) instanceof Publication.Published) {
            contents.put(
                    room, content); // anything else is a refusal that leaves no trace, as it happens in a department
        }
    }
}
