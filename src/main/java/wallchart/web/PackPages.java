package wallchart.web;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Weigher;
import io.javalin.http.Context;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.Optional;
import wallchart.chart.VersionHead;
import wallchart.web.RoomAnswers.Standing;
import wallchart.web.request.Parameters;
import wallchart.web.view.Json;

/**
 * What a room's page keeps for the time when nobody answers. What a pack says is worked out once for each version, state of the
 * equipment and day; giving it out again costs a signature.
 */
final class PackPages {

    /** Also how much younger than stated a pack may look. */
    private static final Duration SERVED_FROM_MEMORY = Duration.ofMinutes(5);

    /** Longer than a room waits before it asks again. */
    private static final Duration KEPT = Duration.ofMinutes(40);

    private static final long MOST_BYTES = 100_000_000;

    private final Services services;
    private final RoomAnswers answers;
    private final Cache<Subject, Document> contents = keeping((subject, packed) -> packed.bytes().length);
    private final Cache<Subject, Issue> issues =
            keeping((subject, issue) -> issue.packed().bytes().length);

    PackPages(Services services, RoomAnswers answers) {
        this.services = services;
        this.answers = answers;
    }

    /** Everything that the contents depend on; settings last as long as this object. */
    private record Subject(
            String room, VersionHead chart, String equipment, Optional<VersionHead> next, LocalDate on) {}

    private record Issue(Instant at, Document packed) {

        /** Not where the clock was set back, either. */
        boolean serves(Instant now) {
            return !now.isBefore(at) && now.isBefore(at.plus(SERVED_FROM_MEMORY));
        }
    }

    private static <T> Cache<Subject, T> keeping(Weigher<Subject, T> bytes) {
        return Caffeine.newBuilder()
                .maximumWeight(MOST_BYTES)
                .weigher(bytes)
                .expireAfterAccess(KEPT)
                .build();
    }

    /** Whether nothing has to be worked out for it. */
    boolean isReady(Context ctx) {
        var now = services.clock().instant();
        return contents.getIfPresent(subject(standing(ctx, now), now)) != null;
    }

    void pack(Context ctx) {
        Parameters.none(ctx.queryString());
        var now = services.clock().instant();
        var standing = standing(ctx, now);
        var issue = issues.asMap()
                .compute(
                        subject(standing, now),
                        (subject, kept) -> kept != null && kept.serves(now) ? kept : issue(subject, standing, now));
        Document.answer(ctx, issue::packed, () -> issue.packed().unpacked());
    }

    private Standing standing(Context ctx, Instant now) {
        return answers.at(RoomInPath.id(ctx, services.rooms()), now);
    }

    private Subject subject(Standing standing, Instant now) {
        return new Subject(
                standing.room(),
                standing.chart().head(),
                standing.equipment().digest(),
                next(standing.chart().head(), now),
                standing.on());
    }

    /** The version that answers after this one; a version with a lower number never does. */
    private Optional<VersionHead> next(VersionHead answering, Instant now) {
        return services.charts().versions(answering.room()).stream()
                .filter(head -> head.number() > answering.number())
                .filter(head -> head.inForceFrom().isAfter(now))
                .min(Comparator.comparing(VersionHead::inForceFrom)
                        .thenComparing(VersionHead::number, Comparator.reverseOrder()));
    }

    private Issue issue(Subject subject, Standing standing, Instant now) {
        var packed = contents.get(subject, any -> packed(standing, subject.next()));
        var sealed = services.seal().seal(packed.bytes(), now);
        return new Issue(now, Document.json(Json.bytes(sealed)).packed());
    }

    private Document packed(Standing standing, Optional<VersionHead> next) {
        return Document.json(PackContents.json(answers, standing, next, services.site()))
                .packed();
    }
}
