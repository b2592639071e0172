package wallchart.print;

import java.util.Optional;
import wallchart.chart.ChartRules;
import wallchart.quantity.LengthUnit;

/**
 * What every sheet of the site has in common.
 *
 * @param name of the department
 * @param lengthUnit what thickness, distance and receptor sizes are printed in
 * @param rules patient groups with their words, and the rule sets that the site has chosen
 * @param address where phones reach the service, such as {@code https://wallchart.example.org}; empty for the address that the service
 *     listens at
 */
public record SheetSite(String name, LengthUnit lengthUnit, ChartRules rules, Optional<String> address) {}
