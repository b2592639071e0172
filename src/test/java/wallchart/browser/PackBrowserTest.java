package wallchart.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a room's pack answers is what the service answers, member by member. */
class PackBrowserTest {

    @RegisterExtension
    static final DemoSite SITE = new DemoSite();

    private static Visit visit;
    private static Page page;

    /** In the page: the same question to both, and where they differ. */
    private static final String COMPARE =
            """
            window.comparison = async (room, choose) => {
              const { open } = await import('/pages/room/pack.js');
              const pack = await open(room, 'demo-' + room);
              const canonical = (value) => JSON.stringify(value, (name, inner) => inner && typeof inner === 'object' && !Array.isArray(inner)
                ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1))) : inner);
              const live = async ({ adjust, ...question }) => {
                const query = new URLSearchParams(Object.entries(question).filter(([, value]) => value !== undefined));
                for (const name of adjust ?? []) query.append('adjust', name);
                const answer = await fetch(`/api/v1/rooms/${room}/technique?${query}`.replaceAll('+', '%20'),
                  { headers: { Authorization: `Bearer demo-${room}` } });
                const { requestId, ...body } = await answer.json();
                return answer.ok ? { technique: body } : { problem: body };
              };
              const differences = [];
              const counts = { techniques: 0, refusals: 0 };
              const questions = [...choose(pack)];
              const worker = async () => {
                for (let next = questions.pop(); next; next = questions.pop()) {
                  const { kind, technique, problem, answeredCm } = pack.find(next);
                  const told = await live(next);
                  counts[kind === 'technique' ? 'techniques' : 'refusals'] += 1;
                  if (kind === 'technique' && answeredCm !== next.thicknessCm) differences.push(`answered for ${answeredCm}: ${canonical(next)}`);
                  if (canonical(kind === 'technique' ? { technique } : { problem }) !== canonical(told)) {
                    differences.push(`${canonical(next)}\\n  pack ${canonical(technique ?? problem)}\\n  live ${canonical(told)}`);
                  }
                }
              };
              await Promise.all([worker(), worker(), worker(), worker()]);
              return { ...counts, differing: differences.length, differences: differences.slice(0, 3) };
            };
            window.steps = function* (pack) {
              for (const row of pack.rows) {
                const [from, to] = row.bandCm;
                const { bodyPart, projection, patientGroup, support } = row;
                const question = (thicknessCm) => ({ bodyPart, projection, patientGroup, support, thicknessCm });
                yield [row, question(from)];
                for (let half = Math.floor(from * 2) + 1; half / 2 < to; half += 1) yield [row, question(half / 2)];
              }
            };
            """;

    @BeforeAll
    static void open() {
        visit = SITE.visit(Screen.SMALL);
        page = visit.open("/pages/base.css"); // any address of the service; nothing else runs there
        page.evaluate(COMPARE);
    }

    @AfterAll
    static void close() {
        visit.assertClean();
        visit.close();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> compared(String room, String choose) {
        return (Map<String, Object>) page.evaluate("(room) => comparison(room, " + choose + ")", room);
    }

    private static void assertSame(Map<String, Object> compared, int least) {
        assertThat(compared.get("differences"))
                .asInstanceOf(org.assertj.core.api.InstanceOfAssertFactories.LIST)
                .isEmpty();
        assertThat((int) compared.get("techniques") + (int) compared.get("refusals"))
                .isGreaterThanOrEqualTo(least);
    }

    @ParameterizedTest
    @ValueSource(strings = {"r1", "r2", "r3"})
    void every_plain_answer_is_that_of_the_service(String room) {
        var compared = compared(room, "(pack) => [...steps(pack)].map(([, question]) => question)");
        assertSame(compared, 500);
        System.out.println(room + compared);
    }
}
