package wallchart.web.problem;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Every kind of problem an answer can report: its stable code, its status, its title, and what to do about it. */
public enum ProblemCode {
    INVALID_PARAMETER(
            400, "A parameter is missing or wrong", "Correct the parameters that errors names and ask again."),
    INVALID_BODY(400, "The request body is wrong", "Correct the members that errors points at and send it again."),
    INVALID_PATH(
            400,
            "The address is not well formed",
            "Write the path in plain letters, digits and hyphens, as documented."),
    INVALID_REQUEST(400, "The request is not well formed", "Send a well-formed HTTP request."),
    SIGN_IN_REQUIRED(401, "Credentials are needed", "Send the room's token, or sign in."),
    WRONG_TOKEN(401, "The room token is not valid", "Ask your administrator for a token of this room."),
    WRONG_NAME_OR_PASSWORD(401, "Not signed in", "Try again, or ask your administrator."),
    WRONG_ROOM(
            403,
            "The token is for another room",
            "Ask from the workstation of the room; a chart holds for its room only."),
    NOT_ALLOWED(403, "Not allowed", "Ask somebody who may do it: see detail."),
    CSRF_TOKEN(403, "The CSRF token is missing or wrong", "Send the csrfToken of the sign-in as X-CSRF-Token."),
    WRONG_PASSWORD(403, "The password is not right", "Try again, or ask your administrator for another."),
    NOT_FOUND(404, "There is nothing at this address", "Look up the address in /docs."),
    UNKNOWN_ROOM(404, "The room is not known", "Ask for a room that GET /api/v1/rooms lists."),
    UNKNOWN_VERSION(404, "The chart has no such version", "Ask for a version that the list of versions has."),
    UNKNOWN_REVISION(
            404, "The room's equipment has no such revision", "Ask for a revision that the list of revisions has."),
    UNKNOWN_EVENT(404, "The ledger has no such event", "Ask for an event that GET /api/v1/audit/events lists."),
    UNKNOWN_PART(404, "The room has no such part", "Name a part that the room's equipment has, or put all of it."),
    UNKNOWN_CHANGE(404, "There is no such change", "See GET /api/v1/changes."),
    UNKNOWN_SHEET(404, "No such sheet was printed", "Compare the number with the one on the sheet."),
    UNKNOWN_ROW(404, "There is no such row", "Name a row of the chart, or one that the change adds or edits."),
    UNKNOWN_PERSON(404, "There is no such person", "See GET /api/v1/people."),
    UNKNOWN_ROOM_TOKEN(404, "There is no such room token", "See GET /api/v1/room-tokens."),
    UNKNOWN_BODY_PART(404, "The chart has no such body part", "Ask for one of bodyParts."),
    UNKNOWN_PROJECTION(404, "The chart has no such projection", "Ask for one of projections, or propose a change."),
    UNKNOWN_PATIENT_GROUP(404, "The chart has no rows for this patient group", "Ask for one of patientGroups."),
    METHOD_NOT_ALLOWED(405, "The address does not take this method", "Use a method that Allow lists."),
    NO_CHART_IN_FORCE(409, "No chart is in force", "Ask the lead radiographer to sign a chart for the room."),
    NAME_TAKEN(409, "The name is taken", "Choose another name; names are never given twice."),
    WRONG_STATE(
            409,
            "The change does not stand where this is done",
            "Read the change again: its state says what can be done."),
    CONCURRENCE_NEEDED(
            409,
            "A medical physicist has to concur first",
            "Ask a medical physicist to look at the impact and to concur, then sign."),
    IMPACT_CHANGED(409, "The impact is not the one that was seen", "Read the impact again, then decide."),
    ROWS_MOVED(
            409,
            "Others changed the same rows meanwhile",
            "Its author looks at each of conflicts, puts or takes back the edit, and submits again."),
    LAST_ADMINISTRATOR(409, "Nobody else could give accounts", "Make somebody else administrator first."),
    PRECONDITION_FAILED(412, "It was changed meanwhile", "Look at it again, then decide."),
    BODY_TOO_LARGE(413, "The request body is too large", "Send at most 64 KiB."),
    URI_TOO_LONG(414, "The address is too long", "Shorten the address."),
    UNSUPPORTED_MEDIA_TYPE(415, "The body is not JSON", "Send it as application/json."),
    SUPPORT_REQUIRED(422, "The examination is charted at other supports", "Say which of supports."),
    THICKNESS_OUTSIDE_CHART(
            422,
            "No band of the chart holds this thickness",
            "Check the measurement; outside the chart decide under local rules and propose a change."),
    BLOCKING_FINDINGS(422, "The chart would have blocking findings", "Mend what findings names, then submit again."),
    QUESTIONED_MEASUREMENT(
            422,
            "A measurement is questioned",
            "Measure again what errors names, or confirm exactly these codes as confirmed."),
    OLDER_MEASUREMENT(
            422,
            "A newer measurement is in force",
            "Check the day; to put the older one in its place, name the newer one's day as replacesMeasuredOn."),
    UNKNOWN_GRID(422, "The grid cannot be used here", "Choose one of grids."),
    UNKNOWN_ADJUSTMENT(422, "The chart has no such adjustment", "Choose one of adjustments."),
    NOT_ACHIEVABLE(422, "This console cannot do it", "See alternatives."),
    PRECONDITION_REQUIRED(428, "If-Match is missing", "Send the ETag of what you saw as If-Match."),
    TOO_MANY_ATTEMPTS(429, "Too many wrong passwords", "Wait as long as Retry-After says."),
    HEADERS_TOO_LARGE(431, "The request headers are too large", "Send fewer or shorter headers."),
    FAULT(500, "A fault of the program", "Tell your administrator the request id; the log has it."),
    LEDGER_IN_DOUBT(
            503,
            "The ledger is in doubt, so nothing is changed",
            "Tell the medical physicist and your administrator; techniques go on being answered."),
    BUSY(503, "Others compute just now", "Try again after Retry-After; techniques go on being answered."),
    UNAVAILABLE(503, "Away for now", "Try again after Retry-After.");

    private final String slug = name().toLowerCase(Locale.ROOT).replace('_', '-');
    private final int status;
    private final String title;
    private final String nextStep;

    ProblemCode(int status, String title, String nextStep) {
        this.status = status;
        this.title = title;
        this.nextStep = nextStep;
    }

    /** The code for programs, also the last part of the problem's type. */
    public String slug() {
        return slug;
    }

    /** The HTTP status. */
    public int status() {
        return status;
    }

    /** The same for every problem of this kind. */
    public String title() {
        return title;
    }

    public String nextStep() {
        return nextStep;
    }

    /** The problem of that slug. */
    public static Optional<ProblemCode> find(String slug) {
        return Arrays.stream(values()).filter(code -> code.slug.equals(slug)).findFirst();
    }
}
