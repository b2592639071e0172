package wallchart.technique;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallchart.chart.Row;
import wallchart.equipment.SupportKind;
import wallchart.quantity.Distance;
import wallchart.quantity.PartThickness;

/** Builds what a room asks: at first the lumbar spine AP of an adult of 21 cm, nothing changed against the row. */
public final class QueryBuilder {

    private String bodyPart = "LSPINE";
    private String projection = "ap";
    private String patientGroup = "adult";
    private PartThickness thickness = PartThickness.centimetres(21);
    private Optional<SupportKind> support = Optional.empty();
    private Optional<Distance> sid = Optional.empty();
    private Optional<String> grid = Optional.empty();
    private final List<String> adjustments = new ArrayList<>();

    public QueryBuilder of(String part, String view) {
        bodyPart = part;
        projection = view;
        return this;
    }

    /** The examination of a row, at its reference thickness. */
    public QueryBuilder of(Row row) {
        var examination = row.key().examination();
        thickness = row.referenceThickness();
        return of(examination.bodyPart(), examination.projection())
                .forGroup(examination.patientGroup())
                .at(examination.support());
    }

    public QueryBuilder forGroup(String group) {
        patientGroup = group;
        return this;
    }

    public QueryBuilder ofThickness(String cm) {
        thickness = PartThickness.centimetres(cm);
        return this;
    }

    public QueryBuilder at(SupportKind kind) {
        support = Optional.of(kind);
        return this;
    }

    public QueryBuilder atSid(String cm) {
        return atSid(Distance.centimetres(cm));
    }

    public QueryBuilder atSid(Distance distance) {
        sid = Optional.of(distance);
        return this;
    }

    public QueryBuilder withGrid(String id) {
        grid = Optional.of(id);
        return this;
    }

    public QueryBuilder with(String... names) {
        adjustments.addAll(List.of(names));
        return this;
    }

    public Query query() {
        return new Query(bodyPart, projection, patientGroup, thickness, support, sid, grid, adjustments);
    }
}
