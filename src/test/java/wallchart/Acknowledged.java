package wallchart;

/**
 * A signature that the service has acknowledged, as the one who signed wrote it down.
 *
 * @param title of the change; no other change has it
 * @param digest of the version's content; empty where the service was killed before it was asked for
 */
record Acknowledged(String room, int version, String title, String digest) {}
