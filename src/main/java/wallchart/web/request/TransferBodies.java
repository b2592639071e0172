package wallchart.web.request;

import com.fasterxml.jackson.databind.ObjectReader;
import io.javalin.http.Context;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import wallchart.equipment.SupportKind;
import wallchart.planning.RoomTransfer;
import wallchart.planning.RoomTransfer.Scope;
import wallchart.web.request.Parameters.Syntax;
import wallchart.web.view.Json;

/** What somebody sends who wants rows of another room brought to theirs. */
public final class TransferBodies {

    private static final int MOST_NAMED = 200;
    private static final int LONGEST_EXAMINATION = 120;
    private static final ObjectReader BODY = Json.readerFor(TransferBody.class);

    private static final Syntax<Scope> ROWS = new Syntax<>(
            "one of missing (rows that this room's chart lacks; so where it is left out), all", Scope::find);

    private TransferBodies() {}

    record TransferBody(
            String title,
            String reason,
            Integer baseVersion,
            String fromRoom,
            Integer fromVersion,
            String bodyPart,
            List<String> examinations,
            String rows,
            Map<String, String> supports,
            Map<String, String> grids,
            Map<String, String> receptors) {}

    /** A transfer to look at. */
    public record Transfer(Optional<Integer> baseVersion, RoomTransfer transfer) {}

    /** A transfer that is to become a change. */
    public record Opening(String title, String reason, Optional<Integer> baseVersion, RoomTransfer transfer) {}

    /** A transfer to look at; title and reason are not looked at. */
    public static Transfer transfer(Context ctx) {
        TransferBody body = Bodies.readJson(ctx, BODY);
        return transfer(body, new Members());
    }

    /** A transfer with the words of its change. */
    public static Opening opening(Context ctx) {
        TransferBody body = Bodies.readJson(ctx, BODY);
        var members = new Members();
        PlanBodies.words(members, body.title(), body.reason());
        var asked = transfer(body, members);
        return new Opening(body.title(), body.reason(), asked.baseVersion(), asked.transfer());
    }

    private static Transfer transfer(TransferBody body, Members members) {
        var base = PlanBodies.baseVersion(members, body.baseVersion());
        members.given("/fromRoom", body.fromRoom(), Syntaxes.SLUG);
        members.number("/fromVersion", body.fromVersion(), 1, PlanBodies.MOST_VERSIONS);
        var bodyPart = members.find("/bodyPart", body.bodyPart(), Syntaxes.BODY_PART);
        var examinations = examinations(members, body.examinations());
        var scope = members.find("/rows", body.rows(), ROWS).orElse(Scope.MISSING);
        var supports = supports(members, names(members, "/supports", body.supports()));
        var grids = names(members, "/grids", body.grids());
        var receptors = names(members, "/receptors", body.receptors());
        members.refuseMistakes();
        return new Transfer(
                base,
                new RoomTransfer(
                        body.fromRoom(),
                        body.fromVersion(),
                        bodyPart,
                        examinations,
                        scope,
                        supports,
                        grids,
                        receptors));
    }

    private static List<String> examinations(Members members, List<String> given) {
        var examinations = given == null ? List.<String>of() : given;
        if (examinations.size() > MOST_NAMED) {
            members.wrong("/examinations", "are " + examinations.size() + ", at most " + MOST_NAMED + ": name fewer");
            return List.of();
        }
        for (int i = 0; i < examinations.size(); i++) {
            members.plainText("/examinations/" + i, examinations.get(i), LONGEST_EXAMINATION);
        }
        return examinations.stream().anyMatch(Objects::isNull) ? List.of() : examinations;
    }

    /** What stands for what, each a name of the site's. */
    private static Map<String, String> names(Members members, String pointer, Map<String, String> given) {
        var names = new LinkedHashMap<String, String>();
        if (given != null && given.size() > MOST_NAMED) {
            members.wrong(pointer, "names " + given.size() + ", at most " + MOST_NAMED + ": name fewer");
        } else if (given != null) {
            given.forEach((name, other) -> {
                if (Syntaxes.SLUG.read(name).isEmpty()) {
                    members.wrong(pointer, "names one that is no name of the site's: " + Syntaxes.SLUG.rule());
                } else {
                    members.given(pointer + "/" + name, other, Syntaxes.SLUG);
                    names.put(name, other);
                }
            });
        }
        return names;
    }

    private static Map<SupportKind, SupportKind> supports(Members members, Map<String, String> names) {
        var supports = new LinkedHashMap<SupportKind, SupportKind>();
        names.forEach((name, other) -> {
            var kind = SupportKind.find(name);
            var instead = Optional.ofNullable(other).flatMap(SupportKind::find);
            if (kind.isEmpty() || instead.isEmpty()) {
                members.wrong("/supports/" + name, Syntaxes.SUPPORT.rule());
            } else {
                supports.put(kind.get(), instead.get());
            }
        });
        return supports;
    }
}
