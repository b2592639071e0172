/**
 * Files that people bring: a spreadsheet's rows become typed records with findings, each at its line and column.
 *
 * <p>Reading never throws for what a file holds, and never writes a chart: what is read goes to the checks and to sign-off like
 * anything typed by hand. What looks like a formula is text.
 */
package wallchart.intake;
