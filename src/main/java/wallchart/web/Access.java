package wallchart.web;

import io.javalin.security.RouteRole;
import wallchart.people.Role;

/** Who may use a route. */
public enum Access implements RouteRole {
    /** Everybody, without credentials. */
    ANYBODY,
    /** A room's workstation, for its own room. */
    WORKSTATION,
    RADIOGRAPHER,
    LEAD,
    PHYSICIST,
    ADMINISTRATOR;

    static Access of(Role role) {
        return switch (role) {
            case WORKSTATION -> WORKSTATION;
            case RADIOGRAPHER -> RADIOGRAPHER;
            case LEAD -> LEAD;
            case PHYSICIST -> PHYSICIST;
            case ADMINISTRATOR -> ADMINISTRATOR;
        };
    }
}
