package wallchart.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallchart.Validation;

/** What a workstation believes: a pack of this room, signed with the key it knows, no older than what it has; all else leaves the good one. */
class PackTrustBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    /** In the page: something else in place of the pack that the service gives out, from now on. */
    private static final String HANDS =
            """
            window.text = (value) => btoa(value).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
            window.swap = (sealed, place, by) => ({ ...sealed, [place]: by(sealed[place]) });
            window.oneOff = (value) => `${value.slice(0, 500)}${value[500] === 'A' ? 'B' : 'A'}${value.slice(501)}`;
            window.real ??= window.fetch.bind(window);
            window.forge = (change) => {
              window.fetch = async (address, options) => {
                const answer = await real(address, options);
                if (!String(address).endsWith('/pack')) return answer;
                const body = await change(await answer.json());
                return new Response(typeof body === 'string' ? body : JSON.stringify(body));
              };
            };
            window.resigned = async (sealed, changeHeader) => {
              const pair = window.pair ??= await crypto.subtle.generateKey({ name: 'Ed25519' }, true, ['sign', 'verify']);
              const header = changeHeader(JSON.parse(atob(sealed.protected)), await crypto.subtle.exportKey('jwk', pair.publicKey));
              const head = text(JSON.stringify(header));
              const signature = await crypto.subtle.sign({ name: 'Ed25519' }, pair.privateKey, new TextEncoder().encode(`${head}.${sealed.payload}`));
              return { payload: sealed.payload, protected: head, signature: text(String.fromCharCode(...new Uint8Array(signature))) };
            };
            window.given = (when, change = () => {}) => async (sealed) => {
              const { content } = await (await import('/pages/room/pack-seal.js')).opened(sealed, null);
              change(content);
              const zipped = await new Response(new Blob([JSON.stringify(content)]).stream().pipeThrough(new CompressionStream('gzip'))).arrayBuffer();
              const payload = text(new Uint8Array(zipped).reduce((all, one) => all + String.fromCharCode(one), ''));
              return resigned({ ...sealed, payload }, (header, jwk) => ({ ...header, jwk, issuedAt: new Date(Date.now() + when * 3600_000).toISOString() }));
            };
            window.begin = async (room, token) => {
              const { open } = await import('/pages/room/pack.js');
              window.pack = await open(room, token);
              await pack.renew();
            };
            window.found = () => pack.find({ bodyPart: 'KNEE', projection: 'ap', support: 'table-bucky', thicknessCm: 12 });
            window.outcome = async () => `${await pack.renew()} ${pack.trouble?.code} ${pack.head.room} ${found().kind}`;
            'ready';
            """;

    /** The kept pack of a room at a page that does nothing else with it. */
    private static Page opened(Visit visit, String room, String token) {
        var page = visit.open("/");
        page.evaluate(HANDS);
        page.evaluate("([room, token]) => begin(room, token)", List.of(room, token));
        return page;
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            textBlock =
                    """
            one letter of the payload    | (sealed) => swap(sealed, 'payload', oneOff)                                     | damaged
            one letter of the signature  | (sealed) => swap(sealed, 'signature', (value) => `A${value.slice(1)}`)         | damaged
            another instant              | (sealed) => swap(sealed, 'protected', (value) => text(atob(value).replace('"issuedAt":"20', '"issuedAt":"21'))) | damaged
            another kind of statement    | (sealed) => resigned(sealed, (header) => ({ ...header, typ: 'other+jws' }))     | damaged
            no algorithm                 | (sealed) => swap(sealed, 'protected', (value) => text(atob(value).replace('EdDSA', 'none'))) | damaged
            the known key, not its owner | (sealed) => resigned(sealed, (header) => header)                                | damaged
            a key of somebody else       | (sealed) => resigned(sealed, (header, jwk) => ({ ...header, jwk }))             | other-key
            nothing in it                | () => ({})                                                                      | damaged
            a download that was cut off  | (sealed) => JSON.stringify(sealed).slice(0, 100000)                             | unreachable
            a page of some proxy         | () => '<html>Sign in to the network</html>'                                     | unreachable
            another room's pack          | async () => (await real('/api/v1/rooms/r2/pack', { headers: { Authorization: 'Bearer demo-r2' } })).json() | other-room
            """)
    void what_is_not_to_be_believed_leaves_the_good_one(String what, String forge, String code) {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = opened(visit, "r1", "demo-r1");
            page.evaluate("forge(" + forge + ")");
            assertThat(page.evaluate("outcome()")).isEqualTo("false " + code + " r1 technique");
            page.evaluate("window.fetch = real");
            assertThat(page.evaluate("outcome()")).isEqualTo("false undefined r1 technique");
            visit.assertClean();
        }
    }

    @Test
    void an_older_pack_is_not_taken_back() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = opened(visit, "r3", "demo-r3");
            page.evaluate(
                    "async () => { window.older = await (await real('/api/v1/rooms/r3/pack',"
                            + " { headers: { Authorization: 'Bearer demo-r3' } })).json(); window.before = pack.head.chart.version; }");
            NextVersion.sign(SITE, "r3", "Said once more");
            assertThat(page.evaluate("async () => `${await pack.renew()} ${pack.head.chart.version - before}`"))
                    .isEqualTo("true 1");
            page.evaluate("forge(() => older)");
            assertThat(
                            page.evaluate(
                                    "async () => `${await pack.renew()} ${pack.trouble.code} ${pack.head.chart.version - before}`"))
                    .isEqualTo("false older 1");
        }
    }

    /** A page that got to know a service of the test's own, which gave out its first pack so many hours from now. */
    private static Page known(Visit visit, int hours) {
        var page = visit.open("/");
        page.evaluate(HANDS);
        page.evaluate("(hours) => { forge(given(hours)); return begin('r1', 'demo-r1'); }", hours);
        page.evaluate("window.renewed = async () => `${await pack.renew()} ${pack.trouble?.code} ${found().kind}`");
        return page;
    }

    @Test
    void a_pack_of_a_clock_that_ran_ahead_does_not_keep_the_right_ones_out_and_no_earlier_version_comes_in_by_that() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = known(visit, 24);
            assertThat(page.evaluate("pack.ageState()")).isEqualTo("red");
            page.evaluate("forge(given(0, (content) => { content.chart.version -= 1; }))");
            assertThat(page.evaluate("renewed()")).isEqualTo("false older technique");
            page.evaluate("forge(given(12))");
            assertThat(page.evaluate("renewed()")).as("ahead as well").isEqualTo("false older technique");
            page.evaluate("forge(given(0))");
            assertThat(page.evaluate("renewed()")).isEqualTo("true undefined technique");
            assertThat(page.evaluate("pack.ageState()")).isEqualTo("fresh");
            page.evaluate("forge(given(-1))");
            assertThat(page.evaluate("renewed()")).isEqualTo("false older technique");
            page.evaluate("begin('r1', 'demo-r1')");
            assertThat(page.evaluate("pack.ageState()"))
                    .as("it is what was kept")
                    .isEqualTo("fresh");
        }
    }

    @Test
    void a_lower_version_given_out_later_is_taken_and_said_until_a_version_as_high_comes() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = known(visit, -2);
            page.evaluate("forge(given(-1, (content) => { content.chart.version -= 1; }))");
            assertThat(page.evaluate("renewed()")).isEqualTo("true lower-version technique");
            assertThat((String) page.evaluate("pack.trouble.message"))
                    .contains("now gives out version 1", "has had version 2", "ask the lead radiographer");
            page.evaluate("begin('r1', 'demo-r1')");
            assertThat(page.evaluate("pack.trouble.code"))
                    .as("after a reload, too")
                    .isEqualTo("lower-version");
            page.evaluate("forge(given(0))");
            assertThat(page.evaluate("renewed()")).isEqualTo("true undefined technique");
        }
    }

    @Test
    void what_was_changed_where_it_is_kept_is_not_used_and_got_anew() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = opened(visit, "r1", "demo-r1");
            page.evaluate(
                    """
                    async () => {
                      const { read } = await import('/pages/room/pack-keep.js');
                      const record = await read('r1');
                      record.sealed.payload = oneOff(record.sealed.payload);
                      const opening = indexedDB.open('wallchart-packs');
                      await new Promise((done) => { opening.onsuccess = done; });
                      const transaction = opening.result.transaction('rooms', 'readwrite');
                      transaction.objectStore('rooms').put(record);
                      await new Promise((done) => { transaction.oncomplete = done; });
                      opening.result.close();
                    }""");
            page.evaluate("forge(() => ({}))");
            assertThat(page.evaluate("begin('r1', 'demo-r1').then(() => 'opened', (failed) => failed.code)"))
                    .isEqualTo("damaged");
            page.evaluate("window.fetch = real");
            page.evaluate("begin('r1', 'demo-r1')");
            assertThat(page.evaluate("outcome()")).isEqualTo("false undefined r1 technique");
        }
    }

    @Test
    void a_key_that_was_swapped_is_refused_until_somebody_gives_the_token_once_more() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var page = opened(visit, "r1", "demo-r1");
            page.evaluate("forge((sealed) => resigned(sealed, (header, jwk) => ({ ...header, jwk })))");
            page.evaluate("begin('r1', 'demo-r1')");
            assertThat(page.evaluate("outcome()")).isEqualTo("false other-key r1 technique");
            assertThat((String) page.evaluate("pack.trouble.message")).contains("ask the administrator");
            page.evaluate(
                    "async () => { await (await import('/pages/room/pack.js')).forget('r1'); await begin('r1', 'demo-r1'); }");
            assertThat(page.evaluate("`${pack.trouble?.code} ${found().kind}`")).isEqualTo("undefined technique");
        }
    }

    @Test
    void a_revoked_token_is_said_and_what_is_kept_goes_on_answering() {
        try (var visit = SITE.visit(Screen.SMALL);
                var administrator = SITE.visit(Screen.SMALL).as("admin")) {
            var token = administrator
                    .open("/")
                    .evaluate(
                            "async () => { const api = await import('/pages/api.js');"
                                    + "window.issued = await api.post('/room-tokens', { room: 'r1', label: 'Spare console' }); return issued.data.secret; }");
            var page = opened(visit, "r1", token.toString());
            administrator
                    .page()
                    .evaluate(
                            "async () => (await import('/pages/api.js')).post(`/room-tokens/${issued.data.id}/revoke`, undefined, { ifMatch: issued.etag })");
            assertThat(page.evaluate("outcome()")).isEqualTo("false token-refused r1 technique");
            assertThat((String) page.evaluate("pack.trouble.message")).contains("no longer accepts this room's token");
            page.evaluate("([room, token]) => begin(room, token)", List.of("r1", token.toString()));
            assertThat(page.evaluate("outcome()")).isEqualTo("false token-refused r1 technique");
            assertThat(
                            page.evaluate(
                                    "begin('r2', 'nonsense').then(() => 'opened', (failed) => `${failed.status} ${failed.code}`)"))
                    .as("with nothing kept, what the service says")
                    .isEqualTo("401 wrong-token");
        }
    }

    /** RFC 8037, appendix A.4 and A.5, in the browser's own implementation, asked by the page's own code. */
    @Validation
    @Test
    void the_browser_agrees_with_the_example_of_rfc_8037() {
        try (var visit = SITE.visit(Screen.SMALL)) {
            var verdict = visit.open("/")
                    .evaluate(
                            """
                            async () => {
                              const { bytes, fits } = await import('/pages/room/pack-seal.js');
                              const key = { kty: 'OKP', crv: 'Ed25519', x: '11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo' };
                              const signature = bytes('hgyY0il_MGCjP0JzlnLWG1PPOt7-09PGcvMg3AIbQR6dWbhijcNR4ki4iylGjg5BhVsPt9g7sVvpAr_MuM0KAg');
                              const signed = 'eyJhbGciOiJFZERTQSJ9.RXhhbXBsZSBvZiBFZDI1NTE5IHNpZ25pbmc';
                              const check = (text) => fits(key, signature, new TextEncoder().encode(text));
                              return `${await check(signed)} ${await check(`${signed}A`)}`;
                            }""");
            assertThat(verdict).isEqualTo("true false");
        }
    }
}
