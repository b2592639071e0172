package wallchart.browser;

import com.microsoft.playwright.Page;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What a test does to changes beside the page, as whoever is signed in at the screen: opens one, writes to it, asks what it has. */
final class ChangeDesk {

    static final String REASON = "Exposure index a step under target in eight weeks";
    static final String SKULL = "SKULL/pa/adult/table-bucky/";

    private static final String CALL =
            """
            const call = async (method, path, body, ifMatch) => {
              const headers = { 'X-CSRF-Token': JSON.parse(localStorage.getItem('wallchart.session')).csrfToken };
              if (body) headers['Content-Type'] = 'application/json';
              if (ifMatch) headers['If-Match'] = ifMatch;
              const answer = await fetch('/api/v1' + path, { method, headers, body: body ? JSON.stringify(body) : undefined });
              return { status: answer.status, data: await answer.json(), etag: answer.headers.get('ETag') };
            };
            """;

    private final Page page;

    ChangeDesk(Page page) {
        this.page = page;
    }

    private Object run(String body, Map<String, Object> given) {
        return page.evaluate("async (given) => {" + CALL + body + "}", given);
    }

    /** Opens a change on the newest version of the room's chart. The page has to show a screen of the service already. */
    int open(String room, String title) {
        return open(room, title, "ordinary");
    }

    int open(String room, String title, String kind) {
        var id = run(
                """
                const versions = (await call('GET', `/charts/${given.room}/versions`)).data.versions;
                const made = await call('POST', `/charts/${given.room}/changes`,
                  { title: given.title, reason: given.reason, kind: given.kind, baseVersion: versions[0].version });
                return made.data.id;
                """,
                Map.of("room", room, "title", title, "reason", REASON, "kind", kind));
        return ((Number) id).intValue();
    }

    /** Writes one field of a row, as another window of the author would. */
    void write(int change, String room, String row, String field, Object value) {
        run(
                """
                const seen = await call('GET', `/changes/${given.change}`);
                const version = await call('GET', `/charts/${given.room}/versions/${seen.data.baseVersion}/rows`);
                const row = version.data.rows.find((one) => one.key === given.row);
                row[given.field] = given.value;
                const done = await call('PUT', `/changes/${given.change}/rows/${given.row}`, row, seen.etag);
                if (done.status !== 200) throw new Error(JSON.stringify(done.data));
                """,
                Map.of("change", change, "room", room, "row", row, "field", field, "value", value));
    }

    /** A step without a body. */
    void step(int change, String step) {
        run(
                """
                const seen = await call('GET', `/changes/${given.change}`);
                const done = await call('POST', `/changes/${given.change}/${given.step}`, undefined, seen.etag);
                if (done.status !== 200) throw new Error(JSON.stringify(done.data));
                """,
                Map.of("change", change, "step", step));
    }

    /** What the service has in a field of a row that the change edits; empty where it does nothing to the row. */
    Optional<String> has(int change, String row, String field) {
        var given = new HashMap<String, Object>(Map.of("change", change, "row", row, "field", field));
        var value = run(
                """
                const { data } = await call('GET', `/changes/${given.change}`);
                const edit = data.edits.find((one) => one.key === given.row);
                return edit ? String(edit.row[given.field]) : null;
                """,
                given);
        return Optional.ofNullable((String) value);
    }

    /** What the change does to each row, as "amend KNEE/…". */
    @SuppressWarnings("unchecked")
    List<String> edits(int change) {
        return (List<String>) run(
                "return (await call('GET', `/changes/${given.change}`)).data.edits.map((one) => `${one.kind} ${one.key}`);",
                Map.of("change", change));
    }

    String state(int change) {
        return (String)
                run("return (await call('GET', `/changes/${given.change}`)).data.state;", Map.of("change", change));
    }
}
