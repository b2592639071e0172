package wallchart.print;

import java.util.List;

/**
 * What is shown of the register at once, and how much of it is not.
 *
 * @param toTakeDown superseded sheets that nobody has taken down: those to look for on the walls; room after room, newest first
 * @param moreToTakeDown how many more of them there are, which move up as these are noted
 * @param newest the newest sheets, newest first
 * @param moreSheets how many older ones there are
 */
public record ListedSheets(
        List<PrintedSheet> toTakeDown, int moreToTakeDown, List<PrintedSheet> newest, int moreSheets) {}
