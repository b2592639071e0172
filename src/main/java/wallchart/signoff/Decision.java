package wallchart.signoff;

import java.time.Instant;

/**
 * What somebody decided about a change.
 *
 * @param by who decided
 * @param at when
 * @param reason why it is returned or declined; what the signature means; empty where it is withdrawn
 */
public record Decision(Signatory by, Instant at, String reason) {}
