package wallchart.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.Function;
import wallchart.chart.ChartVersion;
import wallchart.chart.VersionHead;
import wallchart.equipment.Room;
import wallchart.technique.Refusal;
import wallchart.technique.Technique;
import wallchart.web.problem.Failures;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.Parameters;
import wallchart.web.request.TechniqueRequest;
import wallchart.web.view.RoomView;

/** Rooms, and what to set in them. */
final class RoomPages {

    private final Services services;
    private final RoomAnswers answers;

    RoomPages(Services services, RoomAnswers answers) {
        this.services = services;
        this.answers = answers;
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
        var room = RoomInPath.revision(ctx, services.rooms());
        Answers.json(ctx, RoomView.of(room, chartNow(room.room().id())));
    }

    private Optional<VersionHead> chartNow(String room) {
        return services.charts().inForce(room, services.clock().instant()).map(ChartVersion::head);
    }

    /** The main job. */
    void technique(Context ctx) {
        var id = RoomInPath.id(ctx, services.rooms());
        var asked = TechniqueRequest.read(ctx.queryString());
        var standing = answers.at(id, asked.at().orElseGet(services.clock()::instant));
        var technique = answers.answer(standing, asked.query()).either(Function.identity(), RoomPages::refuse);
        var notNow = asked.at().flatMap(past -> notNow(id, standing.chart().head()));
        Answers.json(ctx, answers.view(standing, technique, asked.at(), notNow));
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
}
