package wallchart.web.view;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import wallchart.chart.BodyRegion;
import wallchart.print.PrintedSheet;
import wallchart.print.SheetStanding;

/**
 * What anybody who stands before a sheet is told of it: whether it still holds, and what to do. Names nobody.
 *
 * @param sheet its number, in groups as it is read aloud
 * @param patientGroup the only group that stands on it; null for all
 * @param region the only region that stands on it; null for all
 * @param state {@code current}, {@code superseded} or {@code equipment-moved}
 * @param since when it ceased to hold, or the equipment moved; null while it is current
 * @param until when it will cease to hold, where that is known
 */
public record SheetView(
        String sheet,
        String site,
        String room,
        String roomName,
        int version,
        String patientGroup,
        String region,
        Instant printedAt,
        String state,
        Instant since,
        Instant until,
        LocalDate reviewOverdueSince,
        Integer versionInForce,
        Instant takenDownAt,
        String say,
        String nextStep) {

    /** A line of the register, for people who signed in. */
    public record Line(
            String sheet,
            String room,
            int version,
            String digest,
            int equipmentRevision,
            String paper,
            String patientGroup,
            String region,
            Instant printedAt,
            String printedBy,
            String role,
            String state,
            Instant since,
            Instant takenDownAt,
            String takenDownBy) {
        public static Line of(PrintedSheet sheet, SheetStanding standing) {
            return new Line(
                    sheet.number().grouped(),
                    sheet.room(),
                    sheet.version(),
                    sheet.digest(),
                    sheet.equipment(),
                    sheet.paper().slug(),
                    sheet.selection().patientGroup().orElse(null),
                    sheet.selection().region().map(BodyRegion::slug).orElse(null),
                    sheet.printedAt(),
                    sheet.printedName(),
                    sheet.role(),
                    standing.slug(),
                    begin(standing),
                    sheet.takenDown().map(PrintedSheet.TakenDown::at).orElse(null),
                    sheet.takenDown().map(PrintedSheet.TakenDown::by).orElse(null));
        }
    }

    /** Superseded sheets that nobody has taken down, and the newest of all; of each list, how many more there are. */
    public record Register(List<Line> toTakeDown, int moreToTakeDown, List<Line> sheets, int moreSheets) {}

    /** @param group words of the only patient group on it; null for all */
    public static SheetView of(PrintedSheet sheet, SheetStanding standing, String site, String roomName, String group) {
        var words = SheetAnswer.of(sheet, standing);
        var current = standing instanceof SheetStanding.Current now ? now : null;
        return new SheetView(
                sheet.number().grouped(),
                site,
                sheet.room(),
                roomName,
                sheet.version(),
                group,
                sheet.selection().region().map(BodyRegion::label).orElse(null),
                sheet.printedAt(),
                standing.slug(),
                begin(standing),
                current == null ? null : current.until().orElse(null),
                current == null ? null : current.reviewOverdueSince().orElse(null),
                standing instanceof SheetStanding.Superseded superseded ? superseded.by() : sheet.version(),
                sheet.takenDown().map(PrintedSheet.TakenDown::at).orElse(null),
                words.say(),
                words.nextStep());
    }

    private static Instant begin(SheetStanding standing) {
        if (standing instanceof SheetStanding.Superseded superseded) {
            return superseded.since();
        }
        return standing instanceof SheetStanding.EquipmentMoved moved ? moved.since() : null;
    }
}
