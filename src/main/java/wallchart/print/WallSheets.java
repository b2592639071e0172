package wallchart.print;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    /** How many lines of each list are shown at once. */
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
     * @param ownAddress the address that the service itself knows it listens at, empty where a proxy hides it from phones; the site's
     *     own address goes before it. Never what the one who prints claims to have asked
     */
    public record Wanted(
            Actor by, String name, String room, Selection selection, PaperSize paper, Optional<String> ownAddress) {}

    /** How many pages that would be: what {@link #print} would say, with nothing made and nothing entered. */
    public Printout foresee(Wanted wanted) {
        return composed(
                        wanted,
                        clock.instant().truncatedTo(ChronoUnit.MICROS),
                        made -> Optional.<Printout>of(
                                new Printout.Foreseen(made.laid().pages().size())))
                .orElseThrow();
    }

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
        return composed(wanted, clock.instant().truncatedTo(ChronoUnit.MICROS), made -> {
            boolean entered = register.enter(
                    wanted.by(),
                    made.sheet(),
                    tx -> !onlyIfItHolds || holds(tx, made.version().head(), made.equipment()));
            return entered ? Optional.of(made.printed()) : Optional.empty();
        });
    }

    /** A sheet before it is entered, with what it was made from. */
    private record Made(PrintedSheet sheet, LaidSheet laid, ChartVersion version, RoomRevision equipment) {
        Printout printed() {
            return new Printout.Printed(sheet, laid.pages().size(), SheetWriter.write(laid, sheet.printedAt()));
        }
    }

    private Optional<Printout> composed(Wanted wanted, Instant now, Function<Made, Optional<Printout>> then) {
        var version = charts.inForce(wanted.room(), now);
        var equipment = rooms.revisionInForce(wanted.room(), now);
        if (version.isEmpty() || equipment.isEmpty()) {
            return Optional.of(new Printout.NoChart());
        }
        if (version.get().content().rows().stream().noneMatch(wanted.selection()::takes)) {
            return Optional.of(new Printout.NothingSelected());
        }
        return then.apply(made(wanted, version.get(), equipment.get(), now));
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

    private Made made(Wanted wanted, ChartVersion version, RoomRevision equipment, Instant now) {
        var number = SheetNumber.drawn();
        var address = site.address().or(wanted::ownAddress).map(own -> own + "/sheets/" + number.text());
        var printing = new Printing(number, address, now, wanted.name(), audit.findNewestCheckpoint(), invented);
        var head = new SheetHead(site, version.head(), equipment, wanted.selection(), printing);
        var sheet = new SheetComposer(site, equipment.room()).compose(version, head, wanted.selection());
        return new Made(
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
                LaidSheet.of(sheet, wanted.paper()),
                version,
                equipment);
    }

    public Optional<PrintedSheet> find(SheetNumber number) {
        return register.find(number);
    }

    /** The register of all rooms, as much as is shown at once. */
    public ListedSheets listed() {
        return register.listed(versionsInForce(rooms.list().stream().map(Room::id)), MOST_LINES);
    }

    /** The same of one room. */
    public ListedSheets listed(String room) {
        return register.listed(room, versionsInForce(Stream.of(room)), MOST_LINES);
    }

    private Map<String, Integer> versionsInForce(Stream<String> ids) {
        var now = clock.instant();
        return ids.flatMap(room -> charts.inForce(room, now).stream())
                .collect(Collectors.toMap(version -> version.head().room(), version -> version.head()
                        .number()));
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
