package wallchart.web;

import java.time.Clock;
import wallchart.audit.AuditTrail;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.people.People;
import wallchart.planning.ChartPlanner;
import wallchart.signoff.SignoffDesk;
import wallchart.technique.TechniqueRules;

/** What the handlers call; built once by the composition root. */
public record Services(
        Rooms rooms,
        Charts charts,
        People people,
        TechniqueRules rules,
        SignoffDesk desk,
        ChartPlanner planner,
        AuditTrail audit,
        Clock clock) {}
