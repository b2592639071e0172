package wallchart.browser;

/** The department at work while somebody looks at a room's page: a change proposed, handed in and signed, over the interface. */
final class NextVersion {

    private static final String PROPOSE =
            """
            async ([room, note]) => {
              const api = await import('/pages/api.js');
              const version = (await api.get(`/charts/${room}/versions`)).data.versions[0].version;
              const { adjustments } = (await api.get(`/charts/${room}/versions/${version}/rows`)).data;
              adjustments[0].notes = note;
              const opened = await api.post(`/charts/${room}/changes`, { title: note, reason: 'So that there is another version', baseVersion: version });
              const path = `/changes/${opened.data.id}`;
              const edited = await api.put(`${path}/adjustments`, { adjustments }, { ifMatch: opened.etag });
              await api.post(`${path}/submit`, undefined, { ifMatch: edited.etag });
              return path;
            }""";

    private static final String CONCUR =
            """
            async (path) => {
              const api = await import('/pages/api.js');
              const change = await api.get(path);
              await api.post(`${path}/concur`, { password: 'demo-physicist' }, { ifMatch: change.etag });
            }""";

    private static final String SIGN =
            """
            async (path) => {
              const api = await import('/pages/api.js');
              const change = await api.get(path);
              const { digest } = (await api.get(`${path}/impact`)).data;
              await api.post(`${path}/sign`, { password: 'demo-lead', meaning: 'Approved for use', impactDigest: digest }, { ifMatch: change.etag });
            }""";

    private NextVersion() {}

    /** The next version of the room's chart; the notes of an adjustment are another. */
    static void sign(DemoSite site, String room, String note) {
        Object change;
        try (var author = site.visit(Screen.SMALL).as("radiographer")) {
            change = author.open("/").evaluate(PROPOSE, new String[] {room, note});
        }
        try (var physicist =
                site.visit(Screen.SMALL).as("physicist")) { // a version of r1 waits, and would come into force with it
            physicist.open("/").evaluate(CONCUR, change);
        }
        try (var lead = site.visit(Screen.SMALL).as("lead")) {
            lead.open("/").evaluate(SIGN, change);
        }
    }
}
