package wallchart.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static wallchart.store.StoreFixtures.asOwner;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallchart.store.Actor;
import wallchart.store.ConstraintViolated;
import wallchart.store.OnEveryDatabase;
import wallchart.store.StoreException;

class AuditTrailTest extends OnEveryDatabase {

    @TempDir
    private Path folder;

    private final Ledger ledger = new Ledger();
    private AuditTrail trail;

    @BeforeEach
    void four_events_an_hour_apart() {
        trail = new AuditTrail(database(), new Checkpoints(folder.resolve("ledger")), List.of());
        append("lead", Act.inRoom("r1", "version-signed", "r1/version/1", "First", Map.of()));
        append("physicist", Act.inRoom("r2", "equipment-installed", "r2/equipment/1", "", Map.of()));
        append("lead", Act.inRoom("r2", "version-signed", "r2/version/1", "Second", Map.of()));
        append("office", Act.of("account-added", "person/3", "", Map.of()));
    }

    private void append(String actor, Act act) {
        database().run(Actor.person(1, actor, "lead"), tx -> ledger.append(tx, act));
        clock().advance(Duration.ofHours(1));
    }

    @Test
    void pages_follow_each_other_without_a_gap() {
        assertThat(numbers(EventFilter.ALL, 0, 3)).containsExactly(1L, 2L, 3L);
        assertThat(numbers(EventFilter.ALL, 3, 3)).containsExactly(4L);
        assertThat(numbers(EventFilter.ALL, 4, 3)).isEmpty();
    }

    @Test
    void the_newest_first_pages_follow_each_other_backwards() {
        assertThat(back(EventFilter.ALL, 0, 3)).containsExactly(4L, 3L, 2L);
        assertThat(back(EventFilter.ALL, 2, 3)).containsExactly(1L);
        assertThat(back(EventFilter.ALL, 1, 3)).isEmpty();
        assertThat(back(filter("r2", null, null, null, null), 0, 9)).containsExactly(3L, 2L);
        assertThat(back(filter(null, "lead", null, null, null), 3, 9)).containsExactly(1L);
    }

    @Test
    void an_event_is_shown_with_its_neighbours_and_whether_its_hash_is_that_of_its_text() {
        var first = trail.findWhole(1).orElseThrow();
        assertThat(first.fits()).isTrue();
        assertThat(first.before()).isEmpty();
        assertThat(first.next()).contains(2L);
        assertThat(trail.findWhole(4).orElseThrow().next()).isEmpty();
        assertThat(trail.findWhole(5)).isEmpty();
        var event = first.event();
        var other = new Event(
                1,
                event.at(),
                "somebody else",
                "lead",
                "version-signed",
                "r1/version/1",
                event.room(),
                "First",
                "{}",
                event.requestId(),
                event.prev(),
                event.hash());
        assertThat(new WholeEvent(other, LedgerEncoding.findText(other), Optional.empty(), Optional.empty()).fits())
                .isFalse();
    }

    @Test
    void an_event_whose_details_are_no_json_has_no_text_and_does_not_fit() {
        var event = trail.findWhole(1).orElseThrow().event();
        var broken = new Event(
                1,
                event.at(),
                "lead",
                "lead",
                "version-signed",
                "r1/version/1",
                event.room(),
                "First",
                "{oops",
                event.requestId(),
                event.prev(),
                event.hash());
        assertThat(LedgerEncoding.findText(broken)).isEmpty();
        assertThat(new WholeEvent(broken, Optional.empty(), Optional.empty(), Optional.empty()).fits())
                .isFalse();
    }

    @Test
    void each_filter_narrows_and_all_of_them_together() {
        assertThat(numbers(filter("r2", null, null, null, null), 0, 9)).containsExactly(2L, 3L);
        assertThat(numbers(filter(null, "lead", null, null, null), 0, 9)).containsExactly(1L, 3L);
        assertThat(numbers(filter(null, null, "account-added", null, null), 0, 9))
                .containsExactly(4L);
        var start = Instant.parse(START);
        assertThat(numbers(filter(null, null, null, start.plusSeconds(3600), start.plusSeconds(7200)), 0, 9))
                .containsExactly(2L);
        assertThat(numbers(filter("r2", "lead", "version-signed", start, null), 0, 9))
                .containsExactly(3L);
        assertThat(numbers(filter("r1", "physicist", null, null, null), 0, 9)).isEmpty();
    }

    /** Several stretches of events; every hundred of them the clock is set back by half an hour, now and then to last year. */
    @Test
    void a_period_is_found_page_by_page_wherever_a_clock_was_set_back() {
        var random = new Random(7);
        var at = new ArrayList<Instant>(
                trail.page(EventFilter.ALL, 0, 9).stream().map(Event::at).toList());
        for (int i = 0; i < 700; i++) {
            clock().set((random.nextInt(60) == 0 ? "2025-01-01T00:00:00Z" : after(at, i % 100 == 0 ? -1800 : 60)));
            at.add(clock().instant());
            var act = Act.inRoom("r" + i % 3, "act-done", "thing/" + i, "", Map.of());
            database().run(Actor.system("test"), tx -> ledger.append(tx, act));
        }
        for (int i = 0; i < 60; i++) {
            var from = at.get(random.nextInt(at.size()));
            var to = from.plusSeconds(random.nextInt(20_000));
            var room = random.nextBoolean() ? null : "r1";
            var expected = trail.page(EventFilter.ALL, 0, 500).stream()
                    .filter(event -> !event.at().isBefore(from) && event.at().isBefore(to))
                    .filter(event -> room == null || event.room().equals(Optional.of(room)))
                    .map(Event::seq)
                    .toList();
            var found = new ArrayList<Long>();
            List<Long> page;
            do {
                page = numbers(
                        filter(room, null, null, from, to), found.isEmpty() ? 0 : found.get(found.size() - 1), 7);
                found.addAll(page);
            } while (page.size() == 7 && found.get(found.size() - 1) < 500);
            assertThat(found.stream().filter(seq -> seq <= 500)).isEqualTo(expected);
            var all = filter(room, null, null, from, to);
            assertThat(allBack(all)).isEqualTo(reversed(allForward(all)));
        }
    }

    private List<Long> allBack(EventFilter filter) {
        var found = new ArrayList<Long>();
        List<Long> page;
        do {
            page = back(filter, found.isEmpty() ? 0 : found.get(found.size() - 1), 7);
            found.addAll(page);
        } while (page.size() == 7);
        return found;
    }

    private List<Long> allForward(EventFilter filter) {
        var found = new ArrayList<>(numbers(filter, 0, 500));
        found.addAll(found.size() < 500 ? List.of() : numbers(filter, found.get(499), 500));
        return found;
    }

    private static List<Long> reversed(List<Long> numbers) {
        var reversed = new ArrayList<>(numbers);
        Collections.reverse(reversed);
        return reversed;
    }

    private static String after(List<Instant> at, int seconds) {
        return at.get(at.size() - 1).plusSeconds(seconds).toString();
    }

    @Test
    void an_export_has_every_event_in_the_form_that_was_hashed() {
        var lines = new ArrayList<String>();
        trail.export(lines::add);
        assertThat(lines).hasSize(4);
        assertThat(lines.get(0)).startsWith("{\"action\":\"version-signed\",\"actor\":\"lead\",");
    }

    @Test
    void a_stopped_ledger_takes_nothing_more_and_the_act_does_not_happen() {
        database().run(Actor.system("check"), tx -> ledger.stop(tx, "event 2 is missing"));
        assertThatThrownBy(() -> append("lead", Act.of("account-added", "person/4", "", Map.of())))
                .isInstanceOf(LedgerStopped.class)
                .hasMessage("event 2 is missing");
        assertThat(numbers(EventFilter.ALL, 0, 9)).hasSize(4);
    }

    @Test
    void the_program_itself_cannot_change_or_remove_an_event() {
        for (var statement : List.of("UPDATE audit_event SET reason = ''", "DELETE FROM audit_event")) {
            assertThatThrownBy(() ->
                            database().run(Actor.system("x"), tx -> tx.handle().execute(statement)))
                    .isInstanceOf(StoreException.class);
            assertThatThrownBy(() -> asOwner(database(), statement)).hasMessageContaining("never changed");
        }
        assertThat(trail.verify()).isInstanceOf(Verification.Sound.class);
    }

    @Test
    void no_two_events_follow_the_same_one() {
        assertThatThrownBy(() -> database().run(Actor.system("x"), tx -> tx.handle()
                        .execute(
                                "INSERT INTO audit_event SELECT 9, at, actor, role, action, object, room, reason, details,"
                                        + " request_id, prev, REPEAT('a', 64) FROM audit_event WHERE seq = 2")))
                .isInstanceOf(ConstraintViolated.class);
    }

    private List<Long> back(EventFilter filter, long before, int limit) {
        return trail.page(filter, EventOrder.NEWEST, before, limit).stream()
                .map(Event::seq)
                .toList();
    }

    private List<Long> numbers(EventFilter filter, long after, int limit) {
        return trail.page(filter, after, limit).stream().map(Event::seq).toList();
    }

    private static EventFilter filter(String room, String actor, String action, Instant from, Instant to) {
        return new EventFilter(
                Optional.ofNullable(room),
                Optional.ofNullable(actor),
                Optional.ofNullable(action),
                Optional.ofNullable(from),
                Optional.ofNullable(to));
    }
}
