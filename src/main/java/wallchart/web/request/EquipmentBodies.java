package wallchart.web.request;

import io.javalin.http.Context;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.equipment.EquipmentDocument;
import wallchart.equipment.EquipmentDocument.GridFactorPart;
import wallchart.equipment.EquipmentDocument.OutputPart;
import wallchart.equipment.EquipmentDocument.OutputPointPart;
import wallchart.equipment.EquipmentDocument.RangePart;
import wallchart.equipment.EquipmentEdit;
import wallchart.quantity.TubeVoltage;
import wallchart.upkeep.EquipmentEntry;

/** What a physicist sends about a room's equipment. Whether it describes a possible room is for the desk to say. */
public final class EquipmentBodies {

    private static final int LONGEST_REASON = 2000;
    private static final int MOST_CONFIRMED = 100;

    private EquipmentBodies() {}

    /** {@code PUT …/equipment}. */
    record WholeBody(
            EquipmentDocument document, String reason, List<BigDecimal> confirmedKV, LocalDate replacesMeasuredOn) {}

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
            List<BigDecimal> confirmedKV,
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
        var confirmed = confirmed(members, body.confirmedKV());
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
        var confirmed = confirmed(members, body.confirmedKV());
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
            List<TubeVoltage> confirmed,
            Optional<LocalDate> replacesMeasuredOn) {
        if (reason != null && !reason.isEmpty()) {
            members.plainText("/reason", reason, LONGEST_REASON);
        }
        members.refuseMistakes();
        return new EquipmentEntry(edit, reason == null ? "" : reason, confirmed, replacesMeasuredOn);
    }

    private static List<TubeVoltage> confirmed(Members members, List<BigDecimal> given) {
        var confirmed = new ArrayList<TubeVoltage>();
        var values = given == null ? List.<BigDecimal>of() : given;
        if (values.size() > MOST_CONFIRMED) {
            members.wrong("/confirmedKV", "has " + values.size() + " entries: at most " + MOST_CONFIRMED);
            return List.of();
        }
        for (int i = 0; i < values.size(); i++) {
            var kV = Optional.ofNullable(values.get(i)).flatMap(EquipmentBodies::voltage);
            kV.ifPresent(confirmed::add);
            if (kV.isEmpty()) {
                members.wrong("/confirmedKV/" + i, "is no tube voltage: write it as the measurement does");
            }
        }
        return confirmed;
    }

    private static Optional<TubeVoltage> voltage(BigDecimal kilovolts) {
        try {
            return Optional.of(new TubeVoltage(kilovolts));
        } catch (IllegalArgumentException impossible) {
            return Optional.empty();
        }
    }
}
