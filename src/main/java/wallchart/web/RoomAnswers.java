package wallchart.web;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.ChartVersion;
import wallchart.equipment.RoomRevision;
import wallchart.technique.Answer;
import wallchart.technique.Query;
import wallchart.technique.Technique;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.view.SignedParts;
import wallchart.web.view.TechniqueView;

/**
 * What a room answers: version, equipment, rules and the watch over the tube brought together. Whoever asks now and whoever takes the
 * answers along for later asks here, so both get the same.
 */
final class RoomAnswers {

    private final Services services;
    private final SignedParts signed = new SignedParts();

    RoomAnswers(Services services) {
        this.services = services;
    }

    /**
     * Chart and equipment of a room, and the day on which they answer.
     *
     * @param on for the review date
     */
    record Standing(RoomRevision equipment, ChartVersion chart, LocalDate on) {

        String room() {
            return equipment.room().id();
        }
    }

    /** What answers in the room at an instant, or the end of the request. */
    Standing at(String room, Instant at) {
        var equipment = services.rooms().revisionInForce(room, at).orElseThrow(() -> noChart(room, at));
        var chart = services.charts().inForce(room, at).orElseThrow(() -> noChart(room, at));
        return new Standing(equipment, chart, LocalDate.ofInstant(at, ZoneOffset.UTC));
    }

    /** A technique, or why there is none. */
    Answer answer(Standing standing, Query query) {
        return services.rules().answer(standing.equipment().room(), standing.chart(), query, standing.on());
    }

    /**
     * A technique as it goes out.
     *
     * @param at the instant asked for, where one was
     * @param first a caution that goes before all others
     */
    TechniqueView view(Standing standing, Technique technique, Optional<Instant> at, Optional<String> first) {
        var equipment = standing.equipment();
        var moved = services.physics()
                .since(standing.chart(), equipment, services.rooms().revisions(standing.room()))
                .flatMap(output -> output.caution(technique.situation().row().key()));
        return TechniqueView.of(technique, equipment, at, signed, both(first, moved));
    }

    private static List<String> both(Optional<String> first, Optional<String> moved) {
        return Stream.concat(first.stream(), moved.stream()).toList();
    }

    private static RequestRefused noChart(String room, Instant at) {
        return new RequestRefused(
                ProblemCode.NO_CHART_IN_FORCE,
                "room " + room + " has no chart in force at " + at + ": ask the lead radiographer to sign one");
    }
}
