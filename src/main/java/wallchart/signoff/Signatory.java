package wallchart.signoff;

/**
 * Somebody who took a step on a change.
 *
 * @param personId their account
 * @param printedName their name as it was printed then
 */
public record Signatory(long personId, String printedName) {}
