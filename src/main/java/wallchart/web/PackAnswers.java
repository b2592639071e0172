package wallchart.web;

import com.fasterxml.jackson.databind.util.RawValue;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wallchart.technique.Query;
import wallchart.technique.Refusal;
import wallchart.technique.Technique;
import wallchart.web.RoomAnswers.Standing;
import wallchart.web.problem.Failures;
import wallchart.web.problem.Problem;
import wallchart.web.view.AnswerForms;
import wallchart.web.view.Json;

/** Asks a room as {@link RoomAnswers} answers it live, and writes each answer down for the room's pack. */
final class PackAnswers {

    private static final Set<String> SAID_BY_THE_PACK = Set.of("room", "chart", "equipment", "row");
    private static final Set<String> OF_ONE_REQUEST = Set.of("requestId");

    private final RoomAnswers answers;
    private final Standing standing;
    private final AnswerForms forms = new AnswerForms();

    PackAnswers(RoomAnswers answers, Standing standing) {
        this.answers = answers;
        this.standing = standing;
    }

    AnswerForms forms() {
        return forms;
    }

    /** The answer, written. */
    RawValue ask(Query query) {
        return ask(query, UnaryOperator.identity());
    }

    /** The same, with blanks put into the words of a refusal. */
    RawValue ask(Query query, UnaryOperator<String> blanks) {
        return answers.answer(standing, query).either(this::technique, refusal -> refusal(refusal, blanks));
    }

    private RawValue technique(Technique technique) {
        var view = answers.view(standing, technique, Optional.empty(), Optional.empty());
        return forms.fill("technique", Json.bytes(view), SAID_BY_THE_PACK);
    }

    private RawValue refusal(Refusal refusal, UnaryOperator<String> blanks) {
        var problem = Failures.of(refusal);
        var told = new Problem(problem.code(), blanks.apply(problem.detail()), problem.members(), problem.headers());
        var body = told.body("/api/v1/rooms/" + standing.room() + "/technique", "");
        return forms.fill("refusal", Json.bytes(body), OF_ONE_REQUEST);
    }
}
