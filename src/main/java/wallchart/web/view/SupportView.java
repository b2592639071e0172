package wallchart.web.view;

import java.math.BigDecimal;
import java.util.List;
import wallchart.equipment.AllowedDistances;
import wallchart.equipment.Chamber;
import wallchart.equipment.Support;
import wallchart.quantity.Distance;

/** Where receptor and patient are; has either a range of SIDs or stops. */
public record SupportView(
        String support,
        BigDecimal receptorGapCm,
        List<BigDecimal> sidRangeCm,
        List<BigDecimal> sidStopsCm,
        List<String> grids,
        List<String> receptors,
        List<String> aecChambers) {

    static SupportView of(Support support) {
        return new SupportView(
                support.kind().slug(),
                support.receptorGap().centimetres(),
                support.sids() instanceof AllowedDistances.Within within ? GridView.ends(within.range()) : null,
                support.sids() instanceof AllowedDistances.Stops stops
                        ? stops.stops().stream().map(Distance::centimetres).toList()
                        : null,
                support.grids(),
                support.receptors(),
                support.chambers().stream().sorted().map(Chamber::slug).toList());
    }
}
