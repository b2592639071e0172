package wallchart.web.request;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Pattern;
import wallchart.equipment.EquipmentDocument;
import wallchart.equipment.EquipmentDocument.GridFactorPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.OutputPointPart;
import wallchart.equipment.EquipmentDocument.RangePart;
import wallchart.equipment.EquipmentEdit;
import wallchart.upkeep.EquipmentEntry;

/** What a physicist sends about a room's equipment. Whether it describes a possible room is for the desk to say. */
public final class EquipmentBodies {

    private static final int LONGEST_REASON = 2000;
    private static final int MOST_CONFIRMED = 100;
    private static final Pattern CODE = Pattern.compile("[a-z0-9.-]{1,40}");

    private EquipmentBodies() {}

    /** {@code PUT …/equipment}. */
    record WholeBody(EquipmentDocument document, String reason, List<String> confirmed, LocalDate replacesMeasuredOn) {}

    /** {@code PUT …/equipment/tube/output}. */
    record OutputBody(
            LocalDate measuredOn,
            BigDecimal totalFiltrationMmAl,
            BigDecimal totalFiltrationMmCu,
            BigDecimal hvlMmAl,
            BigDecimal hvlAtKV,
            BigDecimal uncertaintyPercent,
            List<OutputPointPart> microGyPerMAsAtOneMetre,
            String reason,
            List<String> confirmed,
            LocalDate replacesMeasuredOn) {}

    /** {@code PUT …/equipment/grids/{grid}}. */
    record GridBody(RangePart focalRangeCm, List<GridFactorPart> factors, String reason) {}

    /** All of the equipment. */
    public static EquipmentEntry whole(Context ctx) {
        var body = Bodies.readDocument(ctx, WholeBody.class);
        var members = new Members();
        if (body.document() == null) {
            members.wrong("/document", "is missing: send the whole equipment, as GET …/equipment has it");
        }
        var confirmed = confirmed(members, body.confirmed());
        members.refuseMistakes();
        return entry(
                members,
                new EquipmentEdit.Whole(body.document()),
                body.reason(),
                confirmed,
                Optional.ofNullable(body.replacesMeasuredOn()));
    }

    /** A measurement of the tube's output. */
    public static EquipmentEntry output(Context ctx) {
        var body = Bodies.readDocument(ctx, OutputBody.class);
        var members = new Members();
        var confirmed = confirmed(members, body.confirmed());
        var measured = new OutputPart(
                body.measuredOn(),
                body.totalFiltrationMmAl(),
                body.totalFiltrationMmCu(),
                body.hvlMmAl(),
                body.hvlAtKV(),
                body.uncertaintyPercent(),
                body.microGyPerMAsAtOneMetre());
        return entry(
                members,
                new EquipmentEdit.Output(measured),
                body.reason(),
                confirmed,
                Optional.ofNullable(body.replacesMeasuredOn()));
    }

    /** Factors and focal range of the grid that the address names. */
    public static EquipmentEntry grid(Context ctx) {
        var body = Bodies.readDocument(ctx, GridBody.class);
        var edit = new EquipmentEdit.MeasuredGrid(ctx.pathParam("grid"), body.focalRangeCm(), body.factors());
        return entry(new Members(), edit, body.reason(), List.of(), Optional.empty());
    }

    /** No reason is one of no letters: trying out needs none. */
    private static EquipmentEntry entry(
            Members members,
            EquipmentEdit edit,
            String reason,
            List<String> confirmed,
            Optional<LocalDate> replacesMeasuredOn) {
        if (reason != null && !reason.isEmpty()) {
            members.plainText("/reason", reason, LONGEST_REASON);
        }
        members.refuseMistakes();
        return new EquipmentEntry(edit, reason == null ? "" : reason, confirmed, replacesMeasuredOn);
    }

    private static List<String> confirmed(Members members, List<String> given) {
        var codes = given == null ? List.<String>of() : given;
        if (codes.size() > MOST_CONFIRMED) {
            members.wrong("/confirmed", "has " + codes.size() + " entries: at most " + MOST_CONFIRMED);
            return List.of();
        }
        for (int i = 0; i < codes.size(); i++) {
            if (codes.get(i) == null || !CODE.matcher(codes.get(i)).matches()) {
                members.wrong("/confirmed/" + i, "is no code of a question: write it as the refusal names it");
            }
        }
        return codes.stream().filter(Objects::nonNull).toList();
    }
}
