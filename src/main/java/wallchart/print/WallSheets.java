package wallchart.print;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import wallchart.audit.AuditTrail;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.chart.VersionHead;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.equipment.Rooms;
import wallchart.store.Actor;
import wallchart.store.Database;
import wallchart.store.Mode;
import wallchart.store.ReadTx;

/** Prints sheets, keeps the register of them, and says of each whether it still holds. Safe for many threads. */
public final class WallSheets {

    /** How many lines of the register are shown at once. */
    public static final int MOST_LINES = 300;

    private static final int MOST_TRIES = 3;

    private final Rooms rooms;
    private final Charts charts;
    private final AuditTrail audit;
    private final SheetSite site;
    private final SheetRegister register;
    private final Clock clock;
    private final boolean invented;

    public WallSheets(Database database, Rooms rooms, Charts charts, AuditTrail audit, SheetSite site) {
        this.rooms = rooms;
        this.charts = charts;
        this.audit = audit;
        this.site = site;
        this.register = new SheetRegister(database);
        this.clock = database.clock();
        this.invented = database.mode() == Mode.DEMO;
    }

    /**
     * What is to be printed, by whom.
     *
     * @param name of the one who prints, as the sheet shows it
     * @param usualAddress where the one who prints reached the service; the site's own address goes before it
     */
    public record Wanted(
            Actor by, String name, String room, Selection selection, PaperSize paper, String usualAddress) {}

    /**
     * Prints a sheet and enters it in the register. A chart or equipment that changes meanwhile is put on paper as it is then, so no
     * sheet is out of date before it leaves the printer.
     */
    public Printout print(Wanted wanted) {
        for (int tries = 1; tries < MOST_TRIES; tries++) {
            var printout = printed(wanted, true);
            if (printout.isPresent()) {
                return printout.get();
            }
            charts.refresh(wanted.room());
        }
        return printed(wanted, false).orElseThrow();
    }

    /** @return empty where what stands on the sheet was not to be any more before it could be entered */
    private Optional<Printout> printed(Wanted wanted, boolean onlyIfItHolds) {
        var now = clock.instant().truncatedTo(ChronoUnit.MICROS);
        var version = charts.inForce(wanted.room(), now);
        var equipment = rooms.revisionInForce(wanted.room(), now);
        if (version.isEmpty() || equipment.isEmpty()) {
            return Optional.of(new Printout.NoChart());
        }
        if (version.get().content().rows().stream().noneMatch(wanted.selection()::takes)) {
            return Optional.of(new Printout.NothingSelected());
        }
        var printed = written(wanted, version.get(), equipment.get(), now);
        boolean entered = register.enter(
                wanted.by(),
                printed.sheet(),
                tx -> !onlyIfItHolds || holds(tx, version.get().head(), equipment.get()));
        return entered ? Optional.of(printed) : Optional.empty();
    }

    /** Whether nobody signed or measured while the sheet was made. */
    private boolean holds(ReadTx tx, VersionHead version, RoomRevision equipment) {
        int newest = charts.versions(version.room()).stream()
                .mapToInt(VersionHead::number)
                .max()
                .orElse(0);
        return charts.newest(tx, version.room()) == newest
                && charts.inForce(version.room(), tx.at())
                        .filter(now -> now.head().number() == version.number())
                        .isPresent()
                && rooms.revisionInForce(tx, version.room(), tx.at())
                        .filter(now -> now.number() == equipment.number())
                        .isPresent();
    }

    private Printout.Printed written(Wanted wanted, ChartVersion version, RoomRevision equipment, Instant now) {
        var number = SheetNumber.drawn();
        var address = site.address().orElse(wanted.usualAddress()) + "/sheets/" + number.text();
        var printing = new Printing(number, address, now, wanted.name(), audit.findNewestCheckpoint(), invented);
        var head = new SheetHead(site, version.head(), equipment, wanted.selection(), printing);
        var sheet = new SheetComposer(site, equipment.room()).compose(version, head, wanted.selection());
        return new Printout.Printed(
                new PrintedSheet(
                        number,
                        wanted.room(),
                        version.head().number(),
                        version.head().digest(),
                        equipment.number(),
                        wanted.paper(),
                        wanted.selection(),
                        now,
                        wanted.by().name(),
                        wanted.name(),
                        wanted.by().role(),
                        Optional.empty()),
                SheetWriter.write(sheet, wanted.paper(), now));
    }

    public Optional<PrintedSheet> find(SheetNumber number) {
        return register.find(number);
    }

    /** The newest sheets of all rooms, newest first. */
    public List<PrintedSheet> newest() {
        return register.newest(MOST_LINES);
    }

    /** The newest sheets of one room, newest first. */
    public List<PrintedSheet> newest(String room) {
        return register.newest(room, MOST_LINES);
    }

    /** Superseded sheets of all rooms that nobody has taken down: those to look for on the walls. */
    public List<PrintedSheet> toTakeDown() {
        return rooms.list().stream()
                .map(Room::id)
                .flatMap(room -> toTakeDown(room).stream())
                .toList();
    }

    /** The same of one room. */
    public List<PrintedSheet> toTakeDown(String room) {
        return charts.inForce(room, clock.instant())
                .map(now -> register.hangingOfOthers(room, now.head().number(), MOST_LINES))
                .orElse(List.of());
    }

    /** Notes that a sheet was taken from the wall. */
    public Optional<PrintedSheet> takeDown(Actor by, SheetNumber number) {
        return register.takeDown(by, number);
    }

    /** Whether a sheet still holds now. */
    public SheetStanding standing(PrintedSheet sheet) {
        var now = clock.instant();
        var later = charts.versions(sheet.room()).stream()
                .filter(head -> head.number() > sheet.version())
                .toList();
        var since = later.stream()
                .map(VersionHead::inForceFrom)
                .filter(from -> !from.isAfter(now))
                .min(Instant::compareTo);
        if (since.isPresent()) {
            int by = charts.inForce(sheet.room(), now).orElseThrow().head().number();
            return new SheetStanding.Superseded(since.get(), by);
        }
        return equipmentAfter(sheet, now).orElseGet(() -> current(sheet, later, now));
    }

    private Optional<SheetStanding> equipmentAfter(PrintedSheet sheet, Instant now) {
        var after = rooms.revisions(sheet.room()).stream()
                .filter(revision -> revision.number() > sheet.equipment())
                .filter(revision -> !revision.inForceFrom().isAfter(now))
                .toList();
        return after.isEmpty()
                ? Optional.empty()
                : Optional.of(new SheetStanding.EquipmentMoved(
                        after.get(0).inForceFrom(), after.get(after.size() - 1).number()));
    }

    private SheetStanding current(PrintedSheet sheet, List<VersionHead> later, Instant now) {
        var reviewDue = charts.version(sheet.room(), sheet.version())
                .orElseThrow()
                .head()
                .reviewDue();
        boolean overdue = LocalDate.ofInstant(now, ZoneOffset.UTC).isAfter(reviewDue);
        return new SheetStanding.Current(
                later.stream().map(VersionHead::inForceFrom).min(Instant::compareTo),
                overdue ? Optional.of(reviewDue) : Optional.empty());
    }
}
