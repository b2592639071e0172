package wallchart.web;

import java.time.Clock;
import wallchart.audit.AuditTrail;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.grading.ChartPhysics;
import wallchart.people.People;
import wallchart.planning.ChartPlanner;
import wallchart.print.WallSheets;
import wallchart.signoff.SignoffDesk;
import wallchart.technique.TechniqueRules;
import wallchart.upkeep.EquipmentDesk;

/** What the handlers call; built once by the composition root. */
public record Services(
        SiteFacts site,
        Rooms rooms,
        Charts charts,
        People people,
        TechniqueRules rules,
        ChartPhysics physics,
        SignoffDesk desk,
        EquipmentDesk upkeep,
        ChartPlanner planner,
        AuditTrail audit,
        WallSheets sheets,
        Clock clock) {}
