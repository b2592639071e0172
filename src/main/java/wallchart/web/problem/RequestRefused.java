package wallchart.web.problem;

/** Thrown while a request is read or a caller is checked; ends the request with its problem. Carries no stack trace. */
public final class RequestRefused extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Problem problem;

    public RequestRefused(Problem problem) {
        super(problem.detail(), null, false, false);
        this.problem = problem;
    }

    public RequestRefused(ProblemCode code, String detail) {
        this(Problem.of(code, detail));
    }

    public Problem problem() {
        return problem;
    }
}
