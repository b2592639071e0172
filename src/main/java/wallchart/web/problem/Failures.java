package wallchart.web.problem;

import static wallchart.web.problem.ProblemCode.*;

import io.javalin.http.HttpResponseException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import wallchart.audit.LedgerStopped;
import wallchart.chart.Band;
import wallchart.people.Registration;
import wallchart.signoff.Outcome;
import wallchart.store.StoreException;
import wallchart.technique.Refusal;
import wallchart.web.view.FindingView;
import wallchart.web.view.OfferView;

/** The one place where a "no" of the department, and a fault of the program, becomes a problem with a status. */
public final class Failures {

    private static final String SHORTLY = "5";

    /** A person has to look into it first. */
    private static final String LATER = "3600";

    private Failures() {}

    /** Why there is no technique. */
    public static Problem of(Refusal refusal) {
        var detail = refusal.detail();
        var choices = refusal.choices();
        return switch (refusal.kind()) {
            case UNKNOWN_BODY_PART -> Problem.of(UNKNOWN_BODY_PART, detail, "bodyParts", choices);
            case UNKNOWN_PROJECTION -> Problem.of(UNKNOWN_PROJECTION, detail, "projections", choices);
            case UNKNOWN_PATIENT_GROUP -> Problem.of(UNKNOWN_PATIENT_GROUP, detail, "patientGroups", choices);
            case SUPPORT_REQUIRED -> Problem.of(SUPPORT_REQUIRED, detail, "supports", choices);
            case UNKNOWN_GRID -> Problem.of(UNKNOWN_GRID, detail, "grids", choices);
            case UNKNOWN_ADJUSTMENT -> Problem.of(UNKNOWN_ADJUSTMENT, detail, "adjustments", choices);
            case THICKNESS_OUTSIDE_CHART -> new Problem(THICKNESS_OUTSIDE_CHART, detail, outside(refusal), Map.of());
            case NOT_ACHIEVABLE ->
                new Problem(
                        NOT_ACHIEVABLE,
                        detail,
                        Map.of(
                                "reasons",
                                refusal.reasons(),
                                "alternatives",
                                refusal.alternatives(),
                                "alternativeQuestions",
                                OfferView.questions(refusal.offers())),
                        Map.of());
        };
    }

    /** Supports stand there only where another one has a band. */
    private static Map<String, Object> outside(Refusal refusal) {
        var nearest = bands(refusal.nearestBands());
        return refusal.choices().isEmpty()
                ? Map.of("nearestBandsCm", nearest)
                : Map.of("nearestBandsCm", nearest, "supports", refusal.choices());
    }

    private static List<List<BigDecimal>> bands(List<Band> bands) {
        return bands.stream()
                .map(band -> List.of(band.from().centimetres(), band.to().centimetres()))
                .toList();
    }

    /**
     * Why an account is not given or not changed.
     *
     * @param password where the password stands in the body
     */
    public static Problem of(Registration.Refused refused, String password) {
        var detail = refused.text();
        return switch (refused.reason()) {
            case NAME_UNUSABLE -> wrongMember("/name", detail);
            case PRINTED_NAME_UNUSABLE -> wrongMember("/printedName", detail);
            case ROLE_NOT_FOR_PEOPLE -> wrongMember("/role", detail);
            case REASON_UNUSABLE -> wrongMember("/reason", detail);
            case PASSWORD_TOO_SHORT,
                    PASSWORD_TOO_LONG,
                    PASSWORD_NOT_NORMALIZED,
                    PASSWORD_COMMON,
                    PASSWORD_HAS_NAME,
                    PASSWORD_FOR_DEMONSTRATION -> wrongMember(password, detail);
            case NAME_TAKEN -> Problem.of(NAME_TAKEN, detail);
            case UNKNOWN_PERSON -> Problem.of(UNKNOWN_PERSON, detail);
            case CHANGED_MEANWHILE -> Problem.of(PRECONDITION_FAILED, detail);
            case LAST_ADMINISTRATOR -> Problem.of(LAST_ADMINISTRATOR, detail);
        };
    }

    /**
     * Why a step on a change is not taken.
     *
     * @param missing what there is none of, where there is none
     */
    public static Problem of(Outcome.Refused refused, ProblemCode missing) {
        var detail = refused.detail();
        return switch (refused.kind()) {
            case NOT_FOUND -> Problem.of(missing, detail);
            case STALE -> Problem.of(PRECONDITION_FAILED, detail);
            case WRONG_STATE -> Problem.of(WRONG_STATE, detail);
            case NOT_ALLOWED -> Problem.of(NOT_ALLOWED, detail);
            case BLOCKED ->
                Problem.of(
                        BLOCKING_FINDINGS,
                        detail,
                        "findings",
                        refused.findings().stream().map(FindingView::of).toList());
            case CONCURRENCE_NEEDED -> Problem.of(CONCURRENCE_NEEDED, detail);
            case IMPACT_CHANGED -> Problem.of(IMPACT_CHANGED, detail);
            case CONFLICT -> Problem.of(ROWS_MOVED, detail, "conflicts", refused.conflicts());
            case UNREADABLE -> unreadable(refused);
        };
    }

    private static Problem unreadable(Outcome.Refused refused) {
        return Problem.wrongFields(
                INVALID_BODY,
                refused.problems().stream()
                        .map(problem -> new Problem.FieldError(null, "/" + problem.field(), null, problem.message()))
                        .toList());
    }

    private static Problem wrongMember(String pointer, String detail) {
        return Problem.wrongFields(INVALID_BODY, List.of(new Problem.FieldError(null, pointer, null, detail)));
    }

    /** What went wrong while a request was handled. */
    public static Problem of(Throwable thrown) {
        if (thrown instanceof RequestRefused refused) {
            return refused.problem();
        }
        if (thrown instanceof HttpResponseException response) {
            return of(response);
        }
        if (thrown instanceof StoreException store) {
            return of(store);
        }
        if (thrown
                instanceof
                LedgerStopped) { // what is in doubt may name files of this machine: the verification and the log say it
            return Problem.of(
                            LEDGER_IN_DOUBT,
                            "nothing was done, because the ledger is in doubt: the medical physicist sees what is in doubt "
                                    + "under Audit, the administrator in the service's log")
                    .withHeader("Retry-After", LATER);
        }
        return fault();
    }

    /** What the server library says by itself: no such address, not this method, body too large. */
    private static Problem of(HttpResponseException response) {
        var problem = ofStatus(response.getStatus());
        var methods = response.getDetails().get("availableMethods");
        return methods == null ? problem : problem.withHeader("Allow", methods);
    }

    private static Problem of(StoreException store) {
        return switch (store.kind()) {
            case UNAVAILABLE, CONFLICT -> unavailable("the database does not answer: try again shortly");
            case CANNOT_OPEN, CONSTRAINT, FAULT -> fault();
        };
    }

    public static Problem unavailable(String detail) {
        return Problem.of(ProblemCode.UNAVAILABLE, detail).withHeader("Retry-After", SHORTLY);
    }

    /** Says nothing of what it was; the log does. */
    public static Problem fault() {
        return Problem.of(FAULT, "the program failed on this request: tell your administrator the request id");
    }

    /** A request the HTTP layer refused before anybody read it. */
    public static Problem ofStatus(int status) {
        return switch (status) {
            case 404 -> Problem.of(NOT_FOUND, "there is nothing at this address: look it up in /docs");
            case 405 -> Problem.of(METHOD_NOT_ALLOWED, "this address does not take this method: see the header Allow");
            case 413 -> Problem.of(BODY_TOO_LARGE, "the request body is over 64 KiB: nothing here needs that much");
            case 414 -> Problem.of(URI_TOO_LONG, "the address is longer than this server reads: shorten it");
            case 415 -> Problem.of(UNSUPPORTED_MEDIA_TYPE, "the body has another media type: send application/json");
            case 431 -> Problem.of(HEADERS_TOO_LARGE, "the request headers are over 8 KiB: send less");
            case 503 -> unavailable("the service is not taking requests now: try again shortly");
            case 500 -> fault();
            default -> Problem.of(INVALID_REQUEST, "the request is not well formed: check address, headers and method");
        };
    }
}
