package wallchart.web;

import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import wallchart.chart.VersionHead;

/** The Link header of a version (RFC 8288) with the relations of RFC 5829. */
final class VersionLinks {

    private final String room;
    private final List<String> links = new ArrayList<>();

    private VersionLinks(String room) {
        this.room = room;
    }

    static VersionLinks ofHistory(String room, List<VersionHead> heads) {
        return new VersionLinks(room).toLatest(heads);
    }

    static VersionLinks of(VersionHead head, List<VersionHead> heads) {
        var links = toPredecessor(head);
        int next = head.number() + 1;
        if (heads.stream().anyMatch(other -> other.number() == next)) {
            links.add(next, "successor-version");
        }
        return links.toLatest(heads);
    }

    static VersionLinks toPredecessor(VersionHead head) {
        var links = new VersionLinks(head.room());
        if (head.number() > 1) {
            links.add(head.number() - 1, "predecessor-version");
        }
        return links;
    }

    private VersionLinks toLatest(List<VersionHead> heads) {
        heads.stream().mapToInt(VersionHead::number).max().ifPresent(number -> add(number, "latest-version"));
        return this;
    }

    private void add(int number, String relation) {
        links.add("</api/v1/charts/" + room + "/versions/" + number + ">; rel=\"" + relation + "\"");
    }

    /** Writes the header; none where there is nothing to link to. */
    void write(Context ctx) {
        if (!links.isEmpty()) {
            ctx.header("Link", String.join(", ", links));
        }
    }
}
