package wallchart.chart;

import java.time.Instant;

/**
 * Who answers for a version.
 *
 * @param personId the account that signed
 * @param printedName the signer's name as printed on sheets
 * @param role the signer's role at that time, as a slug
 * @param at when, in UTC
 * @param meaning what the signature states
 */
public record Signature(long personId, String printedName, String role, Instant at, String meaning) {}
