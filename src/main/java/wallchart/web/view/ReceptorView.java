package wallchart.web.view;

import java.util.List;
import wallchart.equipment.Receptor;
import wallchart.quantity.FieldSize;

/** An image receptor; sizes as shorter x longer side. */
public record ReceptorView(String id, String name, String kind, List<String> sizesCm, int targetExposureIndex) {

    static ReceptorView of(Receptor receptor) {
        return new ReceptorView(
                receptor.id(),
                receptor.name(),
                receptor.kind().slug(),
                receptor.sizes().stream().map(FieldSize::toString).toList(),
                receptor.targetExposureIndex());
    }
}
