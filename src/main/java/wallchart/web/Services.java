package wallchart.web;

import java.time.Clock;
import wallchart.audit.AuditTrail;
import wallchart.audit.PackSeal;
import wallchart.chart.Charts;
import wallchart.equipment.Rooms;
import wallchart.grading.ChartPhysics;
import wallchart.people.People;
import wallchart.planning.ChartPlanner;
import wallchart.print.WallSheets;
import wallchart.signoff.SignoffDesk;
import wallchart.technique.TechniqueRules;
import wallchart.upkeep.EquipmentDesk;
import wallchart.upkeep.OutputDue;

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
        OutputDue outputDue,
        ChartPlanner planner,
        AuditTrail audit,
        PackSeal seal,
        WallSheets sheets,
        Clock clock) {}
