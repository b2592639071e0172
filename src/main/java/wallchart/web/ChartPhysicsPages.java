package wallchart.web;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.function.Predicate;
import wallchart.chart.ChartVersion;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Finding;
import wallchart.equipment.RoomRevision;
import wallchart.technique.ConsoleCourses;
import wallchart.technique.OutputSinceSigning;
import wallchart.web.problem.ProblemCode;
import wallchart.web.problem.RequestRefused;
import wallchart.web.request.ExaminationFilter;
import wallchart.web.request.ExaminationInQuery;
import wallchart.web.request.PathParameters;
import wallchart.web.view.ChartPhysicsView;
import wallchart.web.view.CoursesView;

/** A version of a room's chart held against beam physics and taken to the console, in the room as it is equipped now. */
final class ChartPhysicsPages {

    private static final String ASK_AGAIN = "private, no-cache";

    private final Services services;

    private final ConsoleCourses courses;

    ChartPhysicsPages(Services services) {
        this.services = services;
        this.courses = new ConsoleCourses(services.rules());
    }

    /** A version never changes; equipment and settings may, so they stand in the entity tag beside it. */
    void physics(Context ctx) {
        var filter = ExaminationFilter.read(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var version = ChartPages.version(services, room, PathParameters.version(ctx));
        var equipment = equipment(room);
        requireRows(filter, version);
        if (!Answers.isKnown(ctx, tag(version, equipment), ASK_AGAIN)) {
            var report = services.physics().check(equipment.room(), version.content(), filter);
            var ofChart = new ArrayList<Finding>();
            services.physics()
                    .since(version, equipment, services.rooms().revisions(room))
                    .flatMap(OutputSinceSigning::finding)
                    .ifPresent(ofChart::add);
            ofChart.addAll(services.physics().unreachable(equipment.room(), version.content(), filter));
            Answers.json(ctx, ChartPhysicsView.of(version.head(), equipment, report, ofChart));
        }
    }

    /** What the console is set to along the thickness of one examination. */
    void courses(Context ctx) {
        var examination = ExaminationInQuery.read(ctx.queryString());
        var room = RoomInPath.find(ctx, services.rooms()).id();
        var version = ChartPages.version(services, room, PathParameters.version(ctx));
        var equipment = equipment(room);
        requireRows(examination::equals, version);
        if (!Answers.isKnown(ctx, tag(version, equipment), ASK_AGAIN)) {
            var today = LocalDate.ofInstant(services.clock().instant(), ZoneOffset.UTC);
            var found = courses.of(equipment.room(), version, examination, today);
            Answers.json(ctx, CoursesView.of(version.head(), equipment, examination, found));
        }
    }

    private RoomRevision equipment(String room) {
        var revisions = services.rooms().revisions(room);
        return revisions.get(revisions.size() - 1);
    }

    private String tag(ChartVersion version, RoomRevision equipment) {
        return VersionTags.of(version.head()) + "." + VersionTags.of(equipment) + "."
                + services.physics().settingsDigest();
    }

    private static void requireRows(Predicate<ExaminationKey> filter, ChartVersion version) {
        if (version.content().rows().stream()
                .noneMatch(row -> filter.test(row.key().examination()))) {
            throw new RequestRefused(
                    ProblemCode.UNKNOWN_ROW,
                    "version " + version.head().number() + " of room "
                            + version.head().room()
                            + " has no rows of that examination: leave parameters out, or see GET"
                            + " /api/v1/charts/" + version.head().room() + "/versions/"
                            + version.head().number() + "/rows");
        }
    }
}
