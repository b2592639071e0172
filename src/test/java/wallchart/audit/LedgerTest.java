package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wallchart.store.Actor;
import wallchart.store.OnEveryDatabase;

class LedgerTest extends OnEveryDatabase {

    private static final Actor LEAD = Actor.person(7, "lead", "lead").during("req-1");
    private static final Act ACT =
            Act.inRoom("r1", "change-signed", "change/12", "Knee rows remeasured", Map.of("version", 3, "mAs", "12.5"));

    private final Ledger ledger = new Ledger();

    @Test
    void each_event_follows_the_one_before() {
        var first = append(ACT);
        var second = append(ACT);
        assertThat(first.seq()).isEqualTo(1);
        assertThat(first.prev()).isEqualTo(Event.NONE_BEFORE);
        assertThat(second.seq()).isEqualTo(2);
        assertThat(second.prev()).isEqualTo(first.hash());
        assertThat(read()).containsExactly(first, second);
    }

    @Test
    void what_is_read_back_has_the_hash_that_was_written() {
        append(ACT);
        var event = read().get(0);
        assertThat(LedgerEncoding.hash(event)).isEqualTo(event.hash());
        assertThat(LedgerEncoding.text(event))
                .isEqualTo("{\"action\":\"change-signed\",\"actor\":\"lead\",\"at\":\"2026-03-02T08:00:00Z\","
                        + "\"details\":{\"mAs\":\"12.5\",\"version\":3},\"object\":\"change/12\","
                        + "\"prev\":\"" + "0".repeat(64) + "\",\"reason\":\"Knee rows remeasured\","
                        + "\"requestId\":\"req-1\",\"role\":\"lead\",\"room\":\"r1\",\"seq\":1}");
    }

    @Test
    void an_act_that_fails_leaves_no_event() {
        assertThatThrownBy(() -> database().run(LEAD, tx -> {
                    ledger.append(tx, ACT);
                    throw new IllegalStateException("the act failed");
                }))
                .hasMessage("the act failed");
        assertThat(read()).isEmpty();
    }

    @Test
    void a_number_that_other_languages_would_write_otherwise_is_refused() {
        for (Object number : List.of(1.5, new BigDecimal("1.5"), 1L << 53)) {
            assertThatThrownBy(() -> append(Act.of("x", "y", "", Map.of("number", number))))
                    .hasMessageContaining("decimal text");
        }
    }

    private Event append(Act act) {
        return database().<Event>write(LEAD, tx -> ledger.append(tx, act));
    }

    private List<Event> read() {
        return database().read(tx -> tx.handle()
                .createQuery("SELECT * FROM audit_event ORDER BY seq")
                .map(EventStore::event)
                .list());
    }
}
