package wallchart.browser;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
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
              window.packs ??= {};
              const pack = { find: (question) => packs[room].find(question), ...(packs[room] ??= await open(room, 'demo-' + room)), rows: packs[room].rows };
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
        assertSame(compared(room, "(pack) => [...steps(pack)].map(([, question]) => question)"), 900);
    }

    @ParameterizedTest
    @ValueSource(strings = {"r1", "r2", "r3"})
    void answers_with_an_adjustment_or_another_grid_are_those_of_the_service(String room) {
        var some =
                """
                (pack) => [...steps(pack)].flatMap(([row, question]) => [
                  ...pack.head.adjustments.map(({ name }) => ({ ...question, adjust: [name] })),
                  ...['none', ...pack.head.grids.map(({ id }) => id)].map((grid) => ({ ...question, grid })),
                ]).filter((question, index) => index % 61 === 0)""";
        assertSame(compared(room, some), 100);
    }

    @ParameterizedTest
    @ValueSource(strings = {"r1", "r2", "r3"})
    void refusals_beside_the_bands_and_at_other_supports_are_those_of_the_service(String room) {
        var beside =
                """
                (pack) => pack.rows.filter((row, index) => index % 3 === 0).flatMap(({ bandCm: [from, to], ...row }) => {
                  const { bodyPart, projection, patientGroup, support } = row;
                  const at = (thicknessCm) => ({ bodyPart, projection, patientGroup, support, thicknessCm });
                  const charted = (cm) => pack.rows.some((other) => other.key.startsWith(`${bodyPart}/${projection}/${patientGroup}/${support}/`)
                    && other.bandCm[0] <= cm && cm < other.bandCm[1]);
                  return [0.01, from - 0.01, to, to + 0.01, 60].map((cm) => Math.round(cm * 100) / 100)
                    .filter((cm) => cm > 0 && !charted(cm)).map(at)
                    .concat(['tabletop', 'table-bucky', 'wall-bucky', 'mobile']
                      .filter((other) => pack.find({ ...at(from), support: other }).problem?.code === 'support-required')
                      .map((other) => ({ ...at(from), support: other })))
                    .concat(pack.find({ ...at(from), support: undefined }).kind === 'refusal' ? [{ ...at(from), support: undefined }] : []);
                })""";
        var compared = compared(room, beside);
        assertSame(compared, 100);
        assertThat((int) compared.get("refusals")).isGreaterThan(100);
    }

    @Test
    void a_difference_in_one_number_is_noticed() {
        var changed =
                """
                (pack) => {
                  const find = pack.find.bind(pack);
                  pack.find = (question) => {
                    const found = find(question);
                    found.technique.set.kV += 1;
                    return found;
                  };
                  return [[...steps(pack)][0][1]];
                }""";
        assertThat(compared("r1", changed)).containsEntry("differing", 1);
    }

    private static Object asked(String question) {
        return page.evaluate(
                "async () => {"
                        + "const { open } = await import('/pages/room/pack.js');"
                        + "window.r1 ??= await open('r1', 'demo-r1');"
                        + "const found = r1.find({ bodyPart: 'KNEE', projection: 'ap', support: 'table-bucky', "
                        + question + " });"
                        + "return found.kind === 'technique'"
                        + " ? `${found.technique.row.key} at ${found.technique.asked.thicknessCm} = ${found.answeredCm}` : found.problem.detail; }");
    }

    @Test
    void between_the_steps_the_nearest_of_the_same_band_answers_and_of_two_as_near_the_thinner() {
        assertThat(asked("thicknessCm: 12.4")).isEqualTo("KNEE/ap/adult/table-bucky/10-13 at 12.5 = 12.5");
        assertThat(asked("thicknessCm: 12.25")).isEqualTo("KNEE/ap/adult/table-bucky/10-13 at 12 = 12");
        assertThat(asked("thicknessCm: 12.26")).isEqualTo("KNEE/ap/adult/table-bucky/10-13 at 12.5 = 12.5");
        assertThat(asked("thicknessCm: 12.99"))
                .as("nearer to 13, which is of the next band")
                .isEqualTo("KNEE/ap/adult/table-bucky/10-13 at 12.5 = 12.5");
        assertThat(asked("thicknessCm: 13")).isEqualTo("KNEE/ap/adult/table-bucky/13-16 at 13 = 13");
    }

    @Test
    void in_between_what_is_kept_on_the_other_side_is_told_too() {
        var both = "({ thicknessCm, ...more }) => { const at = (cm) => r1.find({ bodyPart: 'KNEE', projection: 'ap',"
                + " support: 'table-bucky', thicknessCm: cm }); const { otherSide } = at(thicknessCm);"
                + " return otherSide ? `${otherSide.cm} ${JSON.stringify(otherSide.set) === JSON.stringify(at(otherSide.cm).technique.set)}` : 'none'; }";
        asked("thicknessCm: 12");
        assertThat(page.evaluate(both, Map.of("thicknessCm", 12.4))).isEqualTo("12 true");
        assertThat(page.evaluate(both, Map.of("thicknessCm", 12.25))).isEqualTo("12.5 true");
        assertThat(page.evaluate(both, Map.of("thicknessCm", 12.5))).isEqualTo("none");
        assertThat(page.evaluate(both, Map.of("thicknessCm", 12.99)))
                .as("13 is of the next band")
                .isEqualTo("none");
    }

    @Test
    void what_only_the_service_can_tell_is_refused_with_what_to_do() {
        var instead = ": use the sheet on the wall, or ask again when the service is back";
        var both = ": ask with one of them, or wait until the service is back; local rules for anything else";
        assertThat(asked("thicknessCm: 12, sidCm: 112"))
                .isEqualTo("only the SID of the row, 110 cm, is kept here, and on the wall: set the row's SID, 110 cm,"
                        + " or wait until the service is back; local rules for anything else");
        assertThat(asked("thicknessCm: 12, sidCm: 110")).isEqualTo("KNEE/ap/adult/table-bucky/10-13 at 12 = 12");
        assertThat(asked("thicknessCm: 12, adjust: ['plaster-dry', 'bone-loss']"))
                .isEqualTo("only one adjustment, or one other grid, is kept here, not both" + both);
        assertThat(asked("thicknessCm: 12, adjust: 'plaster-dry', grid: 'none'"))
                .isEqualTo("only one adjustment, or one other grid, is kept here, not both" + both);
        assertThat(asked("thicknessCm: 12, adjust: 'mud'"))
                .isEqualTo("the chart kept here has no adjustment mud" + instead);
        assertThat(asked("thicknessCm: 12, patientGroup: 'giants'"))
                .isEqualTo("the chart kept here has no KNEE ap for giants" + instead);
        assertThat(asked("thicknessCm: 90"))
                .isEqualTo("90 cm is no thickness that the chart can be asked for" + instead);
        assertThat(asked("thicknessCm: 'thick'"))
                .isEqualTo("thick cm is no thickness that the chart can be asked for" + instead);
    }
}
