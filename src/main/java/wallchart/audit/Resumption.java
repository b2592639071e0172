package wallchart.audit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wallchart.audit.Checkpoints.PutAside;

/**
 * A ledger that goes on after a doubt: what was in doubt, who acknowledged it and why, and a digest of every event as it stood
 * then, so that the doubt stays on record and nothing before it can be changed unseen once more.
 *
 * @param event the one that says so
 * @param doubt what was in doubt
 * @param events how many stood before it
 * @param digest of those, as {@link Standing} takes it
 */
record Resumption(Event event, String doubt, long events, String digest) {

    static final String ACTION = "ledger-resumed";

    private static final JsonMapper MAPPER = new JsonMapper();

    /** @param checkpoints the file of checkpoints that is put aside with it */
    static Act act(String reason, String doubt, Standing before, Optional<PutAside> checkpoints) {
        var details = new TreeMap<String, Object>();
        details.put("doubt", doubt);
        details.put("events", before.events());
        details.put("digest", before.digest());
        checkpoints.ifPresent(file -> details.put("checkpoints", Map.of("file", file.name(), "digest", file.digest())));
        long newest = before.last().map(Event::seq).orElse(0L);
        return Act.of(ACTION, "ledger/" + newest, reason, details);
    }

    /** What an event of this action says; empty for every other event. */
    static Optional<Resumption> find(Event event) {
        if (!event.action().equals(ACTION)) {
            return Optional.empty();
        }
        try {
            var details = MAPPER.readTree(event.details());
            return Optional.of(new Resumption(
                    event,
                    details.path("doubt").asText(),
                    details.path("events").asLong(),
                    details.path("digest").asText()));
        } catch (JsonProcessingException notJson) {
            return Optional.empty();
        }
    }

    /** What whoever checks the ledger is to be told of it. */
    String note() {
        return "event " + event.seq() + ": in doubt was that " + doubt + "; " + event.actor() + " (" + event.role()
                + ") resumed the ledger at " + event.at() + ": " + event.reason();
    }

    /** What is otherwise with the events before than it was then. */
    Optional<String> findDifference(Standing now) {
        return events == now.events() && digest.equals(now.digest())
                ? Optional.empty()
                : Optional.of("the events before event " + event.seq()
                        + " are not those that stood there when it resumed the ledger");
    }
}
