package wallchart.chart;

import java.util.Map;
import java.util.TreeMap;
import wallchart.audit.Act;

/** The event of a signature: everything that the version's head says, so that neither can be changed without the other. */
final class VersionEvent {

    static final String ACTION = "version-signed";

    private VersionEvent() {}

    /** Name of the detail that {@link RecordsDigestStore} works out. */
    static final String RECORDS_DIGEST = "recordsDigest";

    /**
     * @param recordsDigest over everything that the version wrote
     * @param evidence what else led to the signature, such as the change and its impact
     */
    static Act of(VersionHead head, String recordsDigest, Map<String, ?> evidence) {
        var details = new TreeMap<String, Object>(evidence);
        details.putAll(details(head));
        details.put(RECORDS_DIGEST, recordsDigest);
        return Act.inRoom(head.room(), ACTION, object(head), head.reason(), details);
    }

    static String object(VersionHead head) {
        return VersionNumber.of(head).object();
    }

    /** The head's part of the details. */
    static Map<String, Object> details(VersionHead head) {
        var signature = head.signature();
        return Map.of(
                "number", head.number(),
                "digest", head.digest(),
                "title", head.title(),
                "inForceFrom", head.inForceFrom().toString(),
                "reviewDue", head.reviewDue().toString(),
                "signedBy", signature.personId(),
                "printedName", signature.printedName(),
                "role", signature.role(),
                "signedAt", signature.at().toString(),
                "meaning", signature.meaning());
    }
}
