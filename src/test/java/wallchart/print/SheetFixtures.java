package wallchart.print;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import wallchart.DemoRoom;
import wallchart.audit.Checkpoint;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartRules;
import wallchart.chart.ChartVersion;
import wallchart.chart.PatientGroup;
import wallchart.chart.RequiredFields;
import wallchart.chart.Signature;
import wallchart.chart.VersionHead;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.quantity.LengthUnit;

/** Sheets of the demo's rooms and of charts made up for a test, printed on 2 March 2026 by A. Reader. */
final class SheetFixtures {

    static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    static final SheetNumber NUMBER = new SheetNumber("CDFGHJKMNPQR");
    static final String ADDRESS = "https://wallchart.example.org/sheets/CDFGHJKMNPQR";
    static final String DIGEST = "sha256:0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";
    static final Checkpoint CHECKPOINT = new Checkpoint(41, "fedcba9876543210".repeat(4), NOW, "0011223344556677", "");
    static final List<PatientGroup> GROUPS = List.of(
            new PatientGroup("adult", "Adult", PatientGroup.Basis.AGE),
            new PatientGroup("preterm", "Preterm, under 2.5 kg", PatientGroup.Basis.WEIGHT),
            new PatientGroup("neonate", "Neonate, 2.5 kg or more, up to 4 weeks", PatientGroup.Basis.AGE),
            new PatientGroup("infant", "Infant, 4 weeks to under 1 year", PatientGroup.Basis.AGE),
            new PatientGroup("child-1-4", "Child 1 to 4 years", PatientGroup.Basis.AGE),
            new PatientGroup("child-5-9", "Child 5 to 9 years", PatientGroup.Basis.AGE),
            new PatientGroup("child-10-15", "Child 10 to 15 years", PatientGroup.Basis.AGE));

    private SheetFixtures() {}

    static SheetSite site(LengthUnit unit) {
        var rules = new ChartRules(GROUPS, Set.of(RequiredFields.values()));
        return new SheetSite("Test department", unit, rules, Optional.of("https://wallchart.example.org"));
    }

    static Printing printing() {
        return new Printing(NUMBER, Optional.of(ADDRESS), NOW, "A. Reader", Optional.of(CHECKPOINT), false);
    }

    static ChartVersion version(String room, ChartContent content) {
        var signature = new Signature(1, "A. Lead", "lead", NOW.minusSeconds(86_400), "Approved for use in this room");
        return new ChartVersion(
                new VersionHead(
                        room,
                        7,
                        DIGEST,
                        "Chart",
                        "made for the tests of sheets",
                        signature.at(),
                        LocalDate.parse("2027-02-02"),
                        signature),
                content);
    }

    static Sheet sheet(Room room, ChartContent content, LengthUnit unit, Selection selection) {
        var version = version(room.id(), content);
        var equipment = new RoomRevision(3, DIGEST, NOW.minusSeconds(90_000), "physicist", room);
        var head = new SheetHead(site(unit), version.head(), equipment, selection, printing());
        return new SheetComposer(site(unit), room).compose(version, head, selection);
    }

    static Sheet sheet(DemoRoom demo, LengthUnit unit) {
        return sheet(demo.room(), demo.versions().get(1).content(), unit, Selection.WHOLE);
    }

    static byte[] written(Sheet sheet, PaperSize paper) {
        return SheetWriter.write(LaidSheet.of(sheet, paper), NOW);
    }

    /** The same sheet with every block changed: how a test plants a mistake. */
    static Sheet with(Sheet sheet, UnaryOperator<Sheet.Block> change) {
        var sections = sheet.sections().stream()
                .map(section -> new Sheet.Section(
                        section.region(),
                        section.group(),
                        section.children(),
                        section.blocks().stream().map(change).toList()))
                .toList();
        return new Sheet(sheet.head(), sections, sheet.adjustments(), sheet.closing());
    }
}
