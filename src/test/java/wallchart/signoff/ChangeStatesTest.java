package wallchart.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.Method;
import java.time.Instant;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The six states and the steps between them: every step that exists, and no other. */
class ChangeStatesTest {

    private static final Signatory LEAD = new Signatory(2, "Lead");
    private static final Decision DECISION = new Decision(LEAD, Instant.EPOCH, "Decided for a good reason");
    private static final Concurrence CONCURRENCE =
            new Concurrence(new Signatory(4, "Physicist"), Instant.EPOCH, "d", 1);

    /** drafting -> submitted -> signed, returned or declined; returned is worked on like drafting; open or submitted -> withdrawn. */
    private static final Map<Class<? extends Change>, Set<String>> STEPS = Map.of(
            Change.Drafting.class, Set.of("with", "edited", "caughtUp", "renamed", "submitted", "withdrawn"),
            Change.Returned.class, Set.of("with", "edited", "caughtUp", "renamed", "submitted", "withdrawn"),
            Change.Submitted.class, Set.of("concurred", "returned", "declined", "withdrawn", "signed"),
            Change.Signed.class, Set.of("reviewed"),
            Change.Declined.class, Set.of(),
            Change.Withdrawn.class, Set.of());

    private static Change.Drafting drafting() {
        return new Change.Drafting(new ChangeHead(
                12,
                "r1",
                "Title",
                "A reason that is long enough",
                1,
                ChangeKind.ORDINARY,
                Optional.empty(),
                new Signatory(3, "Author"),
                Instant.EPOCH,
                1));
    }

    @Test
    void each_state_has_its_steps_and_no_other() {
        STEPS.forEach((state, steps) ->
                assertThat(steps(state)).as(state.getSimpleName()).isEqualTo(steps));
        assertThat(ChangeState.values()).hasSameSizeAs(STEPS.keySet());
    }

    private static Set<String> steps(Class<? extends Change> state) {
        return Arrays.stream(state.getMethods())
                .filter(method -> Change.class.isAssignableFrom(method.getReturnType()))
                .map(Method::getName)
                .collect(Collectors.toSet())
                .stream()
                .collect(Collectors.collectingAndThen(Collectors.toSet(), found -> {
                    found.addAll(Arrays.stream(state.getDeclaredMethods())
                            .filter(method -> Change.class.isAssignableFrom(method.getReturnType()))
                            .map(Method::getName)
                            .toList());
                    return found;
                }));
    }

    @Test
    void every_step_counts_the_revision_and_keeps_who_and_what() {
        var random = new Random(20_261_125);
        for (int i = 0; i < 1000; i++) {
            Change change = drafting();
            for (int step = 0; step < 12; step++) {
                var before = change;
                change = next(before, random);
                boolean ended = before == change;
                assertThat(change.head().revision()).isEqualTo(before.head().revision() + (ended ? 0 : 1));
                assertThat(change.id()).isEqualTo(12);
                assertThat(change.head().author()).isEqualTo(before.head().author());
            }
        }
    }

    private static Change next(Change change, Random random) {
        if (change instanceof Change.Open open) {
            return switch (random.nextInt(4)) {
                case 0 -> open.edited();
                case 1 -> open.withdrawn(DECISION);
                default -> open.submitted(Instant.EPOCH);
            };
        }
        if (change instanceof Change.Submitted submitted) {
            return switch (random.nextInt(5)) {
                case 0 -> submitted.concurred(CONCURRENCE);
                case 1 -> submitted.declined(DECISION);
                case 2 -> submitted.withdrawn(DECISION);
                case 3 -> submitted.signed(2, DECISION, Optional.empty(), Optional.empty());
                default -> submitted.returned(DECISION);
            };
        }
        return change;
    }

    @Test
    void a_concurrence_does_not_outlive_a_return() {
        var concurred = drafting().submitted(Instant.EPOCH).concurred(CONCURRENCE);
        assertThat(concurred.concurrence()).contains(CONCURRENCE);
        assertThat(concurred.returned(DECISION).submitted(Instant.EPOCH).concurrence())
                .isEmpty();
    }

    @Test
    void a_second_review_is_due_until_it_is_done() {
        var due = new SecondReview(Instant.EPOCH.plus(SecondReview.WITHIN), Optional.empty());
        var signed = drafting().submitted(Instant.EPOCH).signed(2, DECISION, Optional.empty(), Optional.of(due));
        assertThat(signed.secondReview().orElseThrow().isOpen()).isTrue();
        assertThat(signed.reviewed(DECISION).secondReview().orElseThrow().isOpen())
                .isFalse();
    }
}
