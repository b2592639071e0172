/**
 * The sheet on the wall: a room's signed chart on paper, and the register of who printed which sheet, so that every sheet that no
 * longer holds can be found and taken down.
 *
 * <p>Uses {@code quantity}, {@code store}, {@code audit}, {@code equipment}, {@code chart} and {@code technique}. The libraries that
 * write PDF and QR codes are spoken here only.
 *
 * <p>What shaped it: paper cannot follow a new version. So each sheet has a number and an address of its own that says whether it is
 * still current, a register knows where sheets should be looked for, and what stands on paper is what was signed, row for row, with no
 * rule to compute by hand. Content ({@link wallchart.print.Sheet}) is composed without a library, laid out as marks on pages, and only
 * then written.
 */
package wallchart.print;
