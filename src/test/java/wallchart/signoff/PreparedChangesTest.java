package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;
import static wallchart.signoff.DeskFixtures.REASON;
import static wallchart.signoff.DeskFixtures.done;
import static wallchart.signoff.DeskFixtures.fields;
import static wallchart.signoff.DeskFixtures.row;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wallchart.audit.Verification;
import wallchart.chart.RowBuilder;
import wallchart.chart.RowKey;
import wallchart.chart.RowReading.Problem;
import wallchart.signoff.Outcome.Kind;
import wallchart.signoff.Outcome.Refused;
import wallchart.store.Actor;

/** Changes that are opened with all their edits at once. */
class PreparedChangesTest extends OnADesk {

    private static final Map<String, String> CAST = Map.of("name", "cast", "label", "Dry cast", "timesMas", "1.5");

    private Outcome prepare(Preparation wanted) {
        return desk.prepare(department.author, "r1", "Thick patients", REASON, 1, wanted);
    }

    private static Preparation rows(RowBuilder... rows) {
        return new Preparation(List.of(rows).stream().map(DeskFixtures::fields).toList(), List.of(), Optional.empty());
    }

    private static RowKey key(int from, int to) {
        return row(from, to).row().key();
    }

    private long storedEdits() {
        return database().<Long>read(tx -> tx.handle()
                .createQuery("SELECT COUNT(*) FROM chart_change_row")
                .mapTo(Long.class)
                .one());
    }

    @Test
    void a_change_is_opened_with_rows_added_amended_and_withdrawn_and_the_ledger_stays_sound() {
        var wanted = new Preparation(
                List.of(fields(row(18, 24).withMAs("28")), fields(row(30, 34))),
                List.of(key(12, 18)),
                Optional.of(List.of(CAST)));
        var change = done(prepare(wanted));
        assertThat(change.head().revision()).isEqualTo(1);
        var proposal = desk.proposal(change.id()).orElseThrow();
        assertThat(proposal.edits().rows())
                .extracting(edit -> edit.kind().slug() + " " + edit.key().band())
                .containsExactly("amend 18-24", "add 30-34", "withdraw 12-18");
        assertThat(proposal.after().rows())
                .contains(row(18, 24).withMAs("28").row(), row(30, 34).row())
                .doesNotContain(row(12, 18).row());
        assertThat(proposal.after().adjustments()).hasSize(1);
        LedgerSoundness.assertSound(database());
    }

    @Test
    void what_was_prepared_is_edited_handed_in_and_signed_like_any_change() {
        var change = done(prepare(rows(row(18, 24).withMAs("26"), row(12, 18).withMAs("26"))));
        change = department.put(change, row(18, 24).withMAs("27"));
        var signed = done(department.sign(department.lead, department.submitted(change)));
        assertThat(signed.state()).isEqualTo(ChangeState.SIGNED);
        assertThat(department.charts.version("r1", 2).orElseThrow().content().rows())
                .contains(row(18, 24).withMAs("27").row());
        LedgerSoundness.assertSound(database());
    }

    @Test
    void its_one_event_says_of_each_row_what_differs() throws Exception {
        done(prepare(rows(row(18, 24).withMAs("28"))));
        var details = database().<String>read(tx -> tx.handle()
                .createQuery("SELECT details FROM audit_event WHERE action = 'change-opened'")
                .mapTo(String.class)
                .one());
        assertThat(details)
                .contains("\"edits\":[{\"after\":{\"mAs\":\"28\"},\"before\":{\"mAs\":\"25\"},\"edit\":\"amend\","
                        + "\"row\":\"LSPINE/ap/adult/table-bucky/18-24\"}]");
    }

    @Test
    void an_edit_changed_by_hand_after_the_opening_is_found() {
        done(prepare(rows(row(18, 24).withMAs("28"))));
        database().run(Actor.system("somebody"), tx -> tx.handle().execute("UPDATE chart_change_row SET based_on = 0"));
        assertThat(LedgerSoundness.verify(database())).isInstanceOf(Verification.Doubtful.class);
    }

    @Test
    void one_row_that_cannot_be_read_refuses_the_whole_and_names_row_and_field() {
        var unreadable = new HashMap<>(fields(row(30, 34)));
        unreadable.put("kV", "eighty");
        unreadable.put("colour", "red");
        var outcome = prepare(
                new Preparation(List.of(fields(row(18, 24).withMAs("28")), unreadable), List.of(), Optional.empty()));
        assertThat(outcome).isInstanceOfSatisfying(Refused.class, refused -> {
            assertThat(refused.kind()).isEqualTo(Kind.UNREADABLE);
            assertThat(refused.problems()).extracting(Problem::field).containsExactly("rows/1/colour", "rows/1/kV");
            assertThat(refused.problems().get(1).message())
                    .contains("LSPINE/ap/adult/table-bucky/30-34")
                    .contains("eighty");
        });
        assertThat(desk.list(new ChangeFilter(Optional.empty(), Optional.empty(), Optional.empty(), 10)))
                .isEmpty();
        assertThat(storedEdits()).isZero();
    }

    @Test
    void a_row_given_twice_or_withdrawn_and_given_is_refused_and_so_is_one_unknown() {
        var wanted = new Preparation(
                List.of(fields(row(18, 24).withMAs("28")), fields(row(18, 24).withMAs("29")), fields(row(12, 18))),
                List.of(key(12, 18), key(1, 2)),
                Optional.empty());
        assertThat(prepare(wanted)).isInstanceOfSatisfying(Refused.class, refused -> assertThat(refused.problems())
                .extracting(Problem::field)
                .containsExactly("rows/1", "withdrawn/0", "withdrawn/1"));
    }

    @Test
    void what_the_version_says_already_is_nothing_to_propose() {
        assertRefused(prepare(rows(row(18, 24), row(12, 18))), Kind.BLOCKED);
    }

    @Test
    void five_hundred_rows_are_taken_and_one_more_is_refused_naming_the_limit() {
        var rows = IntStream.rangeClosed(1, 501)
                .mapToObj(i -> {
                    var fields = new HashMap<>(fields(row(18, 24)));
                    fields.put("projection", "p" + i);
                    return Map.copyOf(fields);
                })
                .toList();
        var all = prepare(new Preparation(rows, List.of(), Optional.empty()));
        assertThat(all).isInstanceOfSatisfying(Refused.class, refused -> assertThat(
                        refused.problems().get(0).message())
                .contains("at most 500 rows, these are 501"));
        var change = done(prepare(new Preparation(rows.subList(0, 500), List.of(), Optional.empty())));
        assertThat(desk.proposal(change.id()).orElseThrow().edits().rows()).hasSize(500);
        LedgerSoundness.assertSound(database());
    }

    @Test
    void more_text_than_an_event_keeps_is_refused_and_nothing_is_left() {
        var rows = IntStream.rangeClosed(1, 500)
                .mapToObj(i -> {
                    var fields = new HashMap<>(fields(row(18, 24)));
                    fields.put("projection", "p" + i);
                    fields.put("notes", "n".repeat(2000));
                    return Map.copyOf(fields);
                })
                .toList();
        assertRefused(prepare(new Preparation(rows, List.of(), Optional.empty())), Kind.UNREADABLE);
        assertThat(storedEdits()).isZero();
    }

    @Test
    void it_needs_a_proposer_a_room_a_version_and_words_as_any_change_does() {
        var wanted = rows(row(18, 24).withMAs("28"));
        assertRefused(desk.prepare(department.author, "r9", "Title", REASON, 1, wanted), Kind.NOT_FOUND);
        assertRefused(desk.prepare(department.author, "r1", "Title", REASON, 2, wanted), Kind.NOT_FOUND);
        assertRefused(desk.prepare(department.author, "r1", "Title", "short", 1, wanted), Kind.UNREADABLE);
        assertRefused(desk.prepare(Actor.system("demo"), "r1", "Title", REASON, 1, wanted), Kind.NOT_ALLOWED);
    }
}
