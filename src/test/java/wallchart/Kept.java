package wallchart;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a service says is signed: versions and signed changes of each room by version number, and what its ledger's check found.
 *
 * @param doubt what the ledger's check found to be wrong; empty where it is sound, which says too that no version is without its
 *     event and no event without its version
 */
record Kept(
        Map<String, Map<Integer, Version>> versions,
        Map<String, Map<Integer, String>> signedChanges,
        Optional<String> doubt) {

    /** The version that was loaded; no change made it. */
    private static final int LOADED = 1;

    private static final int PAGE = 500;

    /** What tells one version from another. */
    record Version(String title, String digest) {}

    static Kept ask(PersonAtWork physicist, List<String> rooms) throws IOException {
        var versions = new HashMap<String, Map<Integer, Version>>();
        var changes = new HashMap<String, Map<Integer, String>>();
        for (var room : rooms) {
            versions.put(room, versions(physicist, room));
            changes.put(room, signedChanges(physicist, room));
        }
        var check = physicist.get("/api/v1/audit/verification").expect(200);
        return new Kept(
                versions,
                changes,
                check.path("sound").asBoolean()
                        ? Optional.empty()
                        : Optional.of(check.path("firstBad").toString()));
    }

    private static Map<Integer, Version> versions(PersonAtWork physicist, String room) throws IOException {
        var versions = new TreeMap<Integer, Version>();
        for (var version : physicist
                .get("/api/v1/charts/" + room + "/versions")
                .expect(200)
                .path("versions")) {
            versions.put(
                    version.path("version").asInt(),
                    new Version(
                            version.path("title").asText(),
                            version.path("digest").asText()));
        }
        return versions;
    }

    private static Map<Integer, String> signedChanges(PersonAtWork physicist, String room) throws IOException {
        var titles = new TreeMap<Integer, String>();
        var before = "";
        do {
            var page = physicist
                    .get("/api/v1/changes?state=signed&room=" + room + "&limit=" + PAGE + before)
                    .expect(200);
            for (var change : page.path("changes")) {
                titles.put(
                        change.path("signedVersion").asInt(),
                        change.path("title").asText());
            }
            before = page.path("next").isNumber() ? "&before=" + page.path("next") : "";
        } while (!before.isEmpty());
        return titles;
    }

    int newest(String room) {
        return versions.get(room).keySet().stream()
                .max(Integer::compare)
                .orElseThrow(() -> new AssertionError("room " + room + " has no version any more"));
    }

    /** Which of these signatures are gone, or stand under something else now. */
    List<Acknowledged> lost(List<Acknowledged> acknowledged) {
        return acknowledged.stream().filter(signature -> !holds(signature)).toList();
    }

    private boolean holds(Acknowledged signature) {
        var kept = versions.get(signature.room()).get(signature.version());
        return kept != null
                && kept.title().equals(signature.title())
                && (signature.digest().isEmpty() || kept.digest().equals(signature.digest()));
    }

    /** All that does not fit together: the ledger, a change without its version, a version without its change. */
    List<String> doubts() {
        var doubts = new ArrayList<String>();
        doubt.ifPresent(what -> doubts.add("the ledger is in doubt: " + what));
        for (var room : new TreeSet<>(versions.keySet())) {
            var made = new TreeMap<Integer, String>();
            versions.get(room).forEach((number, version) -> made.put(number, version.title()));
            made.remove(LOADED);
            if (!made.equals(signedChanges.get(room))) {
                doubts.add("room " + room + " has versions " + made + " and signed changes " + signedChanges.get(room));
            }
        }
        return doubts;
    }
}
