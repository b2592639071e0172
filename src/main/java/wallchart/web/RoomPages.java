package wallchart.web;

import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wallchart.chart.ChartVersion;
import wallchart.chart.VersionHead;
import wallchart.equipment.Room;
import wallchart.technique.Refusal;
import wallchart.technique.Technique;
import wallchart.web.problem.Failures;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;
import wallchart.web.request.TechniqueRequest;
import wallchart.web.view.RoomView;
import wallchart.web.view.SignedParts;
import wallchart.web.view.TechniqueView;

/** Rooms, and what to set in them. */
final class RoomPages {

    private final Services services;
    private final SignedParts signed = new SignedParts();

    RoomPages(Services services) {
        this.services = services;
    }

    void list(Context ctx) {
        Parameters.none(ctx.queryString());
        var caller = Doorkeeper.caller(ctx);
        var lines = services.rooms().list().stream()
                .filter(room -> caller.mayRead(room.id()))
                .map(room -> line(room))
                .toList();
        Answers.json(ctx, new RoomView.Lines(lines));
    }

    private RoomView.Line line(Room room) {
        var today = LocalDate.ofInstant(services.clock().instant(), ZoneOffset.UTC);
        return RoomView.Line.of(room, chartNow(room.id()), services.outputDue(), today);
    }

    void room(Context ctx) {
        Parameters.none(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms());
        Answers.json(ctx, RoomView.of(room, chartNow(room.id())));
    }

    private Optional<VersionHead> chartNow(String room) {
        return services.charts().inForce(room, services.clock().instant()).map(ChartVersion::head);
    }

    /** The main job. */
    void technique(Context ctx) {
        var id = RoomInPath.id(ctx, services.rooms());
        var asked = TechniqueRequest.read(ctx.queryString());
        var at = asked.at().orElseGet(services.clock()::instant);
        var equipment = services.rooms().revisionInForce(id, at).orElseThrow(() -> noChart(id, at));
        var chart = services.charts().inForce(id, at).orElseThrow(() -> noChart(id, at));
        var technique = services.rules()
                .answer(equipment.room(), chart, asked.query(), LocalDate.ofInstant(at, ZoneOffset.UTC))
                .either(Function.identity(), RoomPages::refuse);
        var notNow = asked.at().flatMap(past -> notNow(id, chart.head()));
        var moved = services.physics()
                .since(chart, equipment, services.rooms().revisions(id))
                .flatMap(output -> output.caution(technique.situation().row().key()));
        Answers.json(ctx, TechniqueView.of(technique, equipment, asked.at(), signed, first(notNow, moved)));
    }

    private static List<String> first(Optional<String> notNow, Optional<String> moved) {
        return Stream.concat(notNow.stream(), moved.stream()).toList();
    }

    /** Said where the answer comes from a version that was once in force, or will be. */
    private Optional<String> notNow(String room, VersionHead answering) {
        var now = chartNow(room);
        return now.filter(answering::equals).isPresent()
                ? Optional.empty()
                : Optional.of("Version " + answering.number() + " is not the chart in force now: "
                        + now.map(head -> "that is version " + head.number() + " since " + head.inForceFrom())
                                .orElse("there is none"));
    }

    private static Technique refuse(Refusal refusal) {
        throw new RequestRefused(Failures.of(refusal));
    }

    private static RequestRefused noChart(String room, Instant at) {
        return new RequestRefused(
                ProblemCode.NO_CHART_IN_FORCE,
                "room " + room + " has no chart in force at " + at + ": ask the lead radiographer to sign one");
    }
}
