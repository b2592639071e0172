package wallchart.web.request;

import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import wallchart.chart.PatientGroup;
import wallchart.quantity.Distance;
import wallchart.technique.Query;

/**
 * What a room asks, read from the query of its address.
 *
 * @param query the question itself
 * @param at the instant it is asked for; absent for now
 */
public record TechniqueRequest(Query query, Optional<Instant> at) {

    private static final Set<String> ONCE =
            Set.of("bodyPart", "projection", "thicknessCm", "patientGroup", "support", "sidCm", "sidIn", "grid", "at");
    private static final Set<String> OFTEN = Set.of("adjust");

    /**
     * Reads the query.
     *
     * @param text the query of the address, not decoded; null for none
     */
    public static TechniqueRequest read(String text) {
        var parameters = Parameters.of(text, ONCE, OFTEN);
        var bodyPart = parameters.require("bodyPart", Syntaxes.BODY_PART);
        var projection = parameters.require("projection", Syntaxes.SLUG);
        var thickness = parameters.require("thicknessCm", Syntaxes.THICKNESS);
        var group = parameters.find("patientGroup", Syntaxes.SLUG).orElse(PatientGroup.ADULT);
        var support = parameters.find("support", Syntaxes.SUPPORT);
        var sid = sid(parameters);
        var grid = parameters.find("grid", Syntaxes.SLUG);
        var adjustments = parameters.list("adjust", Syntaxes.SLUG);
        var at = parameters.find("at", Syntaxes.INSTANT);
        parameters.refuseMistakes();
        var query = new Query(bodyPart, projection, group, thickness, support, sid, grid, adjustments);
        return new TechniqueRequest(query, at);
    }

    private static Optional<Distance> sid(Parameters parameters) {
        if (parameters.has("sidCm") && parameters.has("sidIn")) {
            parameters.wrong("sidIn", null, "stands beside sidCm: give the SID in one unit");
        }
        return parameters
                .find("sidCm", Syntaxes.SID_CENTIMETRES)
                .or(() -> parameters.find("sidIn", Syntaxes.SID_INCHES));
    }
}
