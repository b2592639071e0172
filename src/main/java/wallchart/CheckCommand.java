package wallchart;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wallchart.DepartmentFolder.RoomFiles;
import wallchart.chart.ChartCheck;
import wallchart.chart.ChartRules;
import wallchart.chart.Finding;
import wallchart.equipment.EquipmentReader;
import wallchart.equipment.EquipmentReading;

/** Checks a department folder and writes nothing. */
@Command(
        name = "check",
        description = {
            "Checks the equipment and charts of a department folder against the site's rules; writes nothing.",
            "Exit code 1 if anything would keep a chart from being published."
        },
        mixinStandardHelpOptions = true)
final class CheckCommand implements Callable<Integer> {

    @Mixin
    private ConfigOption config;

    @Parameters(
            paramLabel = "FOLDER",
            description = "One folder for each room, with equipment.yaml, chart.yaml and its CSV files.")
    private Path folder;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        var rules = config.settings().chartRules();
        boolean blocked = false;
        for (var files : new DepartmentFolder(folder).rooms()) {
            blocked |= check(files, rules);
        }
        spec.commandLine().getOut().flush();
        return blocked ? 1 : 0;
    }

    private boolean check(RoomFiles files, ChartRules rules) {
        var reading = EquipmentReader.read(files.equipment());
        if (reading instanceof EquipmentReading.Refused refused) {
            refused.problems().forEach(problem -> say("room " + files.room() + " equipment " + problem));
            return true;
        }
        var room = ((EquipmentReading.Accepted) reading).room();
        boolean blocked = false;
        for (var version : files.versions()) {
            var findings = new ArrayList<>(version.reading().findings());
            findings.addAll(ChartCheck.check(version.reading().content(), room, rules));
            findings.forEach(finding -> say(version.name() + ": " + finding));
            say(version.name() + ": " + version.reading().content().rows().size() + " rows, " + summary(findings));
            blocked |= ChartCheck.blocks(findings);
        }
        return blocked;
    }

    private static String summary(List<Finding> findings) {
        long blocking = findings.stream().filter(Finding::isBlocking).count();
        return blocking + " blocking, " + (findings.size() - blocking) + " other findings";
    }

    private void say(String line) {
        spec.commandLine().getOut().println(line);
    }
}
