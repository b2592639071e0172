package wallchart.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.javalin.http.Context;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import wallchart.chart.VersionHead;
import wallchart.web.RoomAnswers.Standing;
import wallchart.web.request.Parameters;

/** What a room's page keeps for the time when nobody answers. */
final class PackPages {

    private static final Duration SERVED_FROM_MEMORY = Duration.ofMinutes(5);
    private static final int MOST_ROOMS = 200;

    private final Services services;
    private final RoomAnswers answers;
    private final Cache<Subject, Document> contents =
            Caffeine.newBuilder().maximumSize(MOST_ROOMS).build();
    private final Cache<Subject, Issue> issues =
            Caffeine.newBuilder().maximumSize(MOST_ROOMS).build();

    PackPages(Services services, RoomAnswers answers) {
        this.services = services;
        this.answers = answers;
    }

    /** Everything that the contents depend on; settings last as long as this object. */
    private record Subject(String room, String chart, String equipment, Optional<VersionHead> next, LocalDate on) {}

    private record Issue(Instant at, PageFiles.Both document) {

        /** Also not where the clock was set back. */
        boolean serves(Instant now) {
            return !now.isBefore(at) && now.isBefore(at.plus(SERVED_FROM_MEMORY));
        }
    }

    /** Whether nothing has to be worked out for it. */
    boolean isReady(Context ctx) {
        var id = RoomInPath.id(ctx, services.rooms());
        var now = services.clock().instant();
        return contents.getIfPresent(subject(answers.at(id, now), now)) != null;
    }

    void pack(Context ctx) {
        Parameters.none(ctx.queryString());
        var id = RoomInPath.id(ctx, services.rooms());
        var now = services.clock().instant();
        var standing = answers.at(id, now);
        var subject = subject(standing, now);
        var issue = issues.asMap()
                .compute(
                        subject,
                        (same, kept) -> kept != null && kept.serves(now) ? kept : issue(subject, standing, now));
        PageFiles.answer(ctx, issue.document());
    }

    private Subject subject(Standing standing, Instant now) {
        var head = standing.chart().head();
        return new Subject(
                standing.room(),
                head.digest() + head.number(),
                standing.equipment().digest(),
                next(standing, now),
                standing.on());
    }

    private Optional<VersionHead> next(Standing standing, Instant now) {
        return services.charts().versions(standing.room()).stream()
                .filter(head -> head.inForceFrom().isAfter(now))
                .min(Comparator.comparing(VersionHead::inForceFrom));
    }

    private Issue issue(Subject subject, Standing standing, Instant now) {
        var content = contents.get(
                subject, any -> Document.json(PackContents.json(answers, standing, subject.next(), services.site())));
        var issued =
                "{\"issuedAt\":\"" + now + "\"," + new String(content.bytes(), StandardCharsets.UTF_8).substring(1);
        return new Issue(now, PageFiles.Both.of(Document.json(issued.getBytes(StandardCharsets.UTF_8))));
    }
}
