package wallchart.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Function;
import wallchart.chart.ChartVersion;
import wallchart.equipment.Room;
import wallchart.technique.Query;
import wallchart.technique.Refusal;
import wallchart.technique.Technique;
import wallchart.technique.TechniqueRules;
import wallchart.web.problem.Failures;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.TechniqueRequest;
import wallchart.web.view.Json;
import wallchart.web.view.TechniqueView;

/**
 * Techniques as JSON. A department asks the same few hundred questions all day, and an answer follows from the room as it is
 * equipped, the version, the question and the day alone: the ones asked lately are kept as they were written.
 *
 * <p>Thread-safe. Nothing has to be discarded when a chart or a room changes: their successors are other objects, so other keys.
 */
final class TechniqueAnswers {

    /** Some ten thousand answers. */
    private static final long MOST_BYTES_KEPT = 32L * 1024 * 1024;

    private static final int BYTES_OF_A_KEY = 400;

    private final TechniqueRules rules;
    private final Cache<Question, byte[]> kept = Caffeine.newBuilder()
            .maximumWeight(MOST_BYTES_KEPT)
            .weigher((Question question, byte[] answer) -> BYTES_OF_A_KEY + answer.length)
            .build();

    TechniqueAnswers(TechniqueRules rules) {
        this.rules = rules;
    }

    /** All that an answer follows from; rooms and versions never change, so the same object is the same content. */
    private record Question(Room room, ChartVersion chart, Query query, LocalDate on) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Question question
                    && room == question.room
                    && chart == question.chart
                    && on.equals(question.on)
                    && query.equals(question.query);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * System.identityHashCode(room) + System.identityHashCode(chart)) + query.hashCode();
        }
    }

    /** The answer to a question of that room and version, or the end of the request. */
    byte[] of(Room room, ChartVersion chart, TechniqueRequest asked) {
        var on = LocalDate.ofInstant(asked.at(), ZoneOffset.UTC);
        var question = new Question(room, chart, asked.query(), on);
        if (asked.isForAnInstant()) {
            return answer(question, asked);
        }
        var known = kept.getIfPresent(question);
        if (known != null) {
            return known;
        }
        var answer = answer(question, asked);
        kept.put(question, answer);
        return answer;
    }

    private byte[] answer(Question question, TechniqueRequest asked) {
        var technique = rules.answer(question.room(), question.chart(), question.query(), question.on())
                .either(Function.identity(), TechniqueAnswers::refuse);
        return Json.bytes(
                TechniqueView.of(technique, asked.isForAnInstant() ? Optional.of(asked.at()) : Optional.empty()));
    }

    private static Technique refuse(Refusal refusal) {
        throw new RequestRefused(Failures.of(refusal));
    }
}
