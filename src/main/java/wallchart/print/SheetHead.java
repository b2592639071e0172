package wallchart.print;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import wallchart.audit.Checkpoint;
import wallchart.chart.PatientGroup;
import wallchart.chart.RequiredFields;
import wallchart.chart.VersionHead;
import wallchart.equipment.RoomRevision;
import wallchart.print.Sheet.Head;
import wallchart.print.Sheet.Paragraph;
import wallchart.technique.StandingCaution;

/** What stands around the rows: which version, who signed it, for which equipment, who printed it when, and what to do with it. */
record SheetHead(SheetSite site, VersionHead version, RoomRevision equipment, Selection selection, Printing printing) {

    private static final int FIRST_DIGITS = 16;

    Head head() {
        var room = equipment.room();
        return new Head(
                room.id(),
                room.name(),
                site.name(),
                part(),
                site.lengthUnit().symbol(),
                facts(),
                printing.address(),
                StandingCaution.of(room.id()),
                printing.invented());
    }

    private String part() {
        if (selection.equals(Selection.WHOLE)) {
            return "The whole chart";
        }
        var parts = new ArrayList<String>();
        selection.region().ifPresent(region -> parts.add(region.label()));
        selection.patientGroup().ifPresent(id -> parts.add(label(id)));
        return "Part of the chart only: " + String.join("; ", parts);
    }

    private String label(String group) {
        return site.rules().findGroup(group).map(PatientGroup::label).orElse(group);
    }

    private List<String> facts() {
        return List.of(
                "Version " + version.number() + ", in force since " + SheetWords.moment(version.inForceFrom()) + ". "
                        + review(),
                "Signed " + SheetWords.moment(version.signature().at()) + " by "
                        + version.signature().printedName() + " ("
                        + version.signature().role() + ").",
                "Content " + beginning(version.digest()) + ", in full on the last page.",
                "Equipment revision " + equipment.number() + ", "
                        + equipment
                                .room()
                                .tube()
                                .output()
                                .map(output -> "tube output measured " + output.measuredOn())
                                .orElse("tube output not measured")
                        + ". " + checkpoint(),
                "Sheet " + printing.sheet().grouped() + ", printed " + SheetWords.moment(printing.at()) + " by "
                        + printing.by() + ".",
                printing.address()
                        .map(page -> "Still current? Scan the square, or open " + page)
                        .orElse(
                                "Still current? Look for this sheet on the service's page of sheets. It has no code to scan, because "
                                        + "the service's address is not set (site.address)."));
    }

    private String review() {
        boolean overdue = LocalDate.ofInstant(printing.at(), ZoneOffset.UTC).isAfter(version.reviewDue());
        return overdue
                ? "REVIEW OVERDUE since " + version.reviewDue() + ": ask the lead radiographer."
                : "Review due " + version.reviewDue() + ".";
    }

    private String checkpoint() {
        return printing.checkpoint()
                .map(signed -> "Checkpoint: event " + signed.seq() + ", hash " + beginning(signed.hash()) + ", key "
                        + signed.keyId() + ", " + SheetWords.moment(signed.at()) + ".")
                .orElse("No checkpoint of the ledger was signed yet.");
    }

    private static String beginning(String digest) {
        int hex = digest.indexOf(':') + 1;
        return digest.substring(0, Math.min(digest.length(), hex + FIRST_DIGITS)) + "…";
    }

    /** What stands once. */
    List<Paragraph> closing() {
        var paragraphs = new ArrayList<Paragraph>();
        paragraphs.add(new Paragraph(
                "How to read it",
                "Measure the part where the row says, positioned as for the exposure, calipers not compressing. A band goes from its "
                        + "first number up to, and not including, its second. kV and mAs hold as written at the thickness under "
                        + "\"Holds at\". Of a row with AEC, kV is what the row is meant for, and the back-up ends the exposure at "
                        + "the latest. Ray angles: plus is cephalad, minus is caudad, 0 where none is said."));
        paragraphs.add(new Paragraph(
                "Another thickness, distance or grid",
                "Ask the room page: it works out what this console can be set to, step by step, and says what to watch. Where it gives no "
                        + "answer to that, use distance and grid of the row and set what stands there, without adjustments; where the "
                        + "patient does not allow that, decide under local rules. Do not work it out from this sheet, and never go on "
                        + "beyond the bands."));
        paragraphs.add(new Paragraph(
                "When the service is down",
                "The room page answers from its own copy and says how old that is. Where it does not, or sends you here, take the row whose "
                        + "band holds the measured thickness, with its grid, distance and receptor, and set what stands in it. What is "
                        + "not on the sheet is decided under local rules, with the advice of the medical physicist."));
        paragraphs.add(new Paragraph("Required fields", ruleSets()));
        paragraphs.add(new Paragraph("Patient groups", groups()));
        paragraphs.add(new Paragraph("Signature", signature()));
        paragraphs.add(new Paragraph(
                "Ledger", printing.checkpoint().map(SheetHead::whole).orElse(checkpoint())));
        return paragraphs;
    }

    private String ruleSets() {
        var chosen = site.rules().requiredFields();
        return chosen.isEmpty()
                ? "The site has chosen no published rule set."
                : "The site has chosen "
                        + chosen.stream().sorted().map(RequiredFields::citation).collect(Collectors.joining("; "))
                        + ": no row is published without what they ask for.";
    }

    private String groups() {
        return site.rules().patientGroups().stream()
                .filter(group ->
                        selection.patientGroup().map(group.id()::equals).orElse(true))
                .map(group -> group.label() + " (by " + group.by().slug() + ")")
                .collect(Collectors.joining("; "));
    }

    private String signature() {
        var signed = version.signature();
        return "Version " + version.number() + " of room " + version.room() + ", signed by " + signed.printedName()
                + " ("
                + signed.role() + ") on " + SheetWords.moment(signed.at()) + ": \"" + signed.meaning()
                + "\". Reason: \"" + version.reason() + "\". Digest of the content: " + version.digest();
    }

    private static String whole(Checkpoint signed) {
        return "Checkpoint at printing: event " + signed.seq() + ", hash " + signed.hash() + ", key " + signed.keyId()
                + ", " + SheetWords.moment(signed.at()) + ".";
    }
}
