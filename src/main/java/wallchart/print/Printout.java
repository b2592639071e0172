package wallchart.print;

/** What comes of asking for a sheet. */
public sealed interface Printout {

    /** The sheet as PDF, with its line in the register. */
    record Printed(PrintedSheet sheet, int pages, byte[] file) implements Printout {}

    /** How many pages it would have, if it were printed now. */
    record Foreseen(int pages) implements Printout {}

    /** The room has no chart in force: there is nothing to print. */
    record NoChart() implements Printout {}

    /** The chart has no row for what was selected. */
    record NothingSelected() implements Printout {}
}
