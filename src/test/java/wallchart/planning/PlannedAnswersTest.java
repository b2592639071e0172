package wallchart.planning;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wallchart.chart.ChartFixtures.aRow;
import static wallchart.planning.PlanningFixtures.MODEL;
import static wallchart.planning.PlanningFixtures.PHYSICS;
import static wallchart.planning.PlanningFixtures.ROOM;
import static wallchart.planning.PlanningFixtures.bands;
import static wallchart.planning.PlanningFixtures.drawn;
import static wallchart.planning.PlanningFixtures.plan;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import wallchart.chart.ChartContent;
import wallchart.chart.ChartVersion;
import wallchart.chart.Signature;
import wallchart.chart.VersionHead;
import wallchart.planning.BandPlan.Kind;
import wallchart.quantity.PartThickness;
import wallchart.technique.Answer;
import wallchart.technique.Arrangement;
import wallchart.technique.Query;
import wallchart.technique.Technique;
import wallchart.technique.TechniqueRules;

/** What a room is told once a plan is its chart, whatever technique it began with. */
class PlannedAnswersTest {

    private static final TechniqueRules ANSWERS = new TechniqueRules(PHYSICS, List.of());
    private static final Arrangement HOW = Arrangement.find(ROOM, aRow().row()).orElseThrow();

    private static ChartVersion signed(ChartProposal proposal) {
        var at = Instant.parse("2026-01-05T07:00:00Z");
        var head = new VersionHead(
                "r1",
                1,
                "sha256:0",
                "Planned",
                "made for a test",
                at,
                LocalDate.parse("2027-01-05"),
                new Signature(1, "A. Lead", "lead", at, "approved for use"));
        return new ChartVersion(
                head,
                new ChartContent(proposal.rows().stream().map(ProposedRow::row).toList(), List.of()));
    }

    private static Technique answer(ChartVersion chart, PartThickness thickness) {
        var query = new Query(
                "LSPINE", "ap", "adult", thickness, Optional.empty(), Optional.empty(), Optional.empty(), List.of());
        return ((Answer.Found) ANSWERS.answer(ROOM, chart, query, LocalDate.parse("2026-02-01"))).technique();
    }

    /** What a technique does at the receptor behind that much water. */
    private static double signal(double kV, double mAs, PartThickness thickness) {
        return MODEL.signalPerMAs(HOW, kV, thickness.inCentimetres()) * mAs;
    }

    @Property(tries = 60)
    void with_flat_exposure_every_thickness_of_a_band_gets_the_same_signal(
            @ForAll @IntRange(min = 55, max = 110) int kV,
            @ForAll @IntRange(min = 1, max = 6) int width,
            @ForAll @IntRange(min = 1500, max = 2699) int hundredths) {
        var proposal = drawn(plan(
                aRow().withKV(String.valueOf(kV)).withMAs("20"),
                bands(Kind.FLAT_EXPOSURE, "15", "27", String.valueOf(width))));
        var thickness = new PartThickness(BigDecimal.valueOf(hundredths, 2));
        var band = proposal.rows().stream()
                .filter(row -> row.row().key().band().holds(thickness))
                .findFirst();
        if (band.isEmpty()) {
            assertThat(proposal.leftOut()).isNotEmpty();
            return;
        }
        var exact = answer(signed(proposal), thickness).exact();
        double wanted = signal(kV, 20, PartThickness.centimetres(21))
                * Math.pow(10, band.get().roundingDeviation() / 10);
        assertThat(signal(exact.kV(), exact.mAs(), thickness)).isCloseTo(wanted, within(wanted * 1e-9));
    }

    @Property(tries = 40)
    void at_the_reference_thickness_of_a_band_the_console_is_set_as_planned(
            @ForAll Kind kind,
            @ForAll @IntRange(min = 55, max = 110) int kV,
            @ForAll @IntRange(min = 1, max = 4) int width) {
        var proposal = drawn(
                plan(aRow().withKV(String.valueOf(kV)).withMAs("20"), bands(kind, "15", "27", String.valueOf(width))));
        var chart = signed(proposal);
        for (var band : proposal.rows()) {
            var set = answer(chart, band.row().referenceThickness()).set();
            assertThat(set.kV()).isEqualTo(band.row().setting().kV());
            assertThat(set.mAs()).isEqualTo(band.row().setting().control().mAs());
        }
    }
}
