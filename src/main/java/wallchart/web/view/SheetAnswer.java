package wallchart.web.view;

import wallchart.print.PrintedSheet;
import wallchart.print.SheetStanding;

/** How a sheet stands, and what to do about it, in words for whoever stands before it. */
record SheetAnswer(String say, String nextStep) {

    private static final String PRINT = "Take it down, note that on the page of sheets, and print a new one.";

    static SheetAnswer of(PrintedSheet sheet, SheetStanding standing) {
        if (standing instanceof SheetStanding.Superseded superseded) {
            return new SheetAnswer(
                    "Superseded: version " + superseded.by()
                            + " of the chart is in force, on this sheet stands version " + sheet.version() + ".",
                    sheet.takenDown().isPresent()
                            ? "It was noted as taken down. If it hangs here, take it down now."
                            : PRINT);
        }
        if (standing instanceof SheetStanding.EquipmentMoved) {
            return new SheetAnswer(
                    "The rows are those of the chart in force, but the room's equipment was changed or measured anew after printing.",
                    "Ask the room page, and print a new sheet.");
        }
        return current(sheet, (SheetStanding.Current) standing);
    }

    private static SheetAnswer current(PrintedSheet sheet, SheetStanding.Current current) {
        var say = "Current: version " + sheet.version() + " of the chart is in force."
                + (current.until().isPresent() ? " A newer version is signed and comes into force later." : "")
                + (current.reviewOverdueSince().isPresent() ? " Its review is overdue." : "");
        if (sheet.takenDown().isPresent()) {
            return new SheetAnswer(say, "It was noted as taken down. If it hangs here, print a new one in its place.");
        }
        return new SheetAnswer(
                say,
                current.reviewOverdueSince().isPresent()
                        ? "Use it for this room only, and ask the lead radiographer about the review."
                        : "Use it for this room only.");
    }
}
