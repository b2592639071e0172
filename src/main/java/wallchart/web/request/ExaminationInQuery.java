package wallchart.web.request;

import java.util.Set;
import wallchart.chart.ExaminationKey;

/** One examination, named whole in the query of an address. */
public final class ExaminationInQuery {

    private static final Set<String> NAMES = Set.of("bodyPart", "projection", "patientGroup", "support");

    private ExaminationInQuery() {}

    /** @param text the query of the address, not decoded; null for none */
    public static ExaminationKey read(String text) {
        var parameters = Parameters.of(text, NAMES, Set.of());
        var bodyPart = parameters.require("bodyPart", Syntaxes.BODY_PART);
        var projection = parameters.require("projection", Syntaxes.SLUG);
        var patientGroup = parameters.require("patientGroup", Syntaxes.SLUG);
        var support = parameters.require("support", Syntaxes.SUPPORT);
        parameters.refuseMistakes();
        return new ExaminationKey(bodyPart, projection, patientGroup, support);
    }
}
