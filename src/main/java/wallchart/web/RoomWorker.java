package wallchart.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import wallchart.store.Sha256;
import wallchart.web.view.Json;

/**
 * The script that keeps the room page at its workstation, with the list of what the page loads: found by following what HTML, style
 * sheets and scripts name, so nobody has to keep a list. Each file has its digest there, and their digest is the name of the build: a
 * new build is kept as a whole beside the old one, and old and new are never mixed. What is named but not there is not kept: the page
 * itself goes without it too.
 */
final class RoomWorker {

    /** An address that the screen has in every room; its HTML is the same for all. */
    static final String PAGE = "/rooms/-";

    private static final String FOLDER = "/pages/";
    private static final int BUILD_DIGITS = 16;

    /** What the page cannot do without when nobody answers, however it comes to load it. */
    private static final List<String> OFFLINE = List.of("/pages/room/pack.js", "/pages/room/install.js");

    /** A file by its address, as it stands in HTML, style sheets and scripts alike. */
    private static final Pattern NAMED = Pattern.compile("[\"'(](/pages/[a-z0-9/-]+\\.(?:js|css|svg|png))[\"')]");

    /** A neighbour that a script imports, as libraries do. */
    private static final Pattern NEIGHBOUR =
            Pattern.compile("(?:from|import)\\s*\\(?\\s*[\"']\\.(\\.?)/([a-z0-9/.-]+)[\"']");

    private final PageFiles files;
    private final Map<String, String> digests = new TreeMap<>();
    private final ArrayDeque<String> waiting = new ArrayDeque<>();

    private RoomWorker(PageFiles files) {
        this.files = files;
    }

    /** The script as it is served. */
    static Document script(PageFiles files) {
        var list = new String(Json.bytes(list(files)), StandardCharsets.UTF_8);
        var build = Sha256.hex(list.getBytes(StandardCharsets.UTF_8)).substring(0, BUILD_DIGITS);
        return Document.ours("room-worker.js", Document.JAVASCRIPT)
                .with(Map.of("{files}", list, "{build}", build, "{page}", PAGE));
    }

    /** Integrity of each file by its address (W3C Subresource Integrity). */
    static Map<String, String> list(PageFiles files) {
        var worker = new RoomWorker(files);
        worker.add(PAGE, files.plainScreen("room.html"));
        OFFLINE.forEach(worker::follow);
        while (!worker.waiting.isEmpty()) {
            var next = worker.waiting.remove();
            files.findPlain(next.substring(FOLDER.length())).ifPresent(file -> worker.add(next, file));
        }
        return worker.digests;
    }

    private void add(String address, Document file) {
        digests.put(address, "sha256-" + Base64.getEncoder().encodeToString(sha256(file.bytes())));
        named(address, new String(file.bytes(), StandardCharsets.UTF_8)).forEach(this::follow);
    }

    /** Addresses of the files that a file names. */
    static Stream<String> named(String address, String text) {
        return Stream.concat(
                NAMED.matcher(text).results().map(found -> found.group(1)),
                NEIGHBOUR.matcher(text).results().map(found -> folder(address, found.group(1)) + found.group(2)));
    }

    private void follow(String address) {
        if (!digests.containsKey(address) && !waiting.contains(address)) {
            waiting.add(address);
        }
    }

    /** The folder of a file, or the one above it; with the slash. */
    private static String folder(String address, String up) {
        var own = address.substring(0, address.lastIndexOf('/'));
        return (up.isEmpty() ? own : own.substring(0, own.lastIndexOf('/'))) + "/";
    }

    private static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
