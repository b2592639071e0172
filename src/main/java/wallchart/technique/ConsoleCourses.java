package wallchart.technique;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.LongStream;
import wallchart.chart.ChartVersion;
import wallchart.chart.ExaminationKey;
import wallchart.chart.Row;
import wallchart.equipment.Room;
import wallchart.quantity.PartThickness;

/**
 * Asks the rules along the thickness of an examination, so that people see the steps which a console makes of a chart. Every point is
 * an answer that the room would get. Pure and thread-safe.
 */
public final class ConsoleCourses {

    /** What people read off a caliper, in hundredths of a centimetre. */
    private static final long STEP = 10;

    /** No query asks beyond 60 cm: a band that goes on was miswritten. */
    private static final long THICKEST = 6000;

    private final TechniqueRules rules;

    public ConsoleCourses(TechniqueRules rules) {
        this.rules = rules;
    }

    /**
     * The courses of the examination's rows, by ascending band; none where the version does not have it.
     *
     * @param room the room as it is equipped
     * @param chart a version of the same room's chart, in force or not
     * @param on the day asked, as for an answer
     */
    public List<ConsoleCourse> of(Room room, ChartVersion chart, ExaminationKey examination, LocalDate on) {
        return chart.content().rows().stream()
                .filter(row -> row.key().examination().equals(examination))
                .sorted(Comparator.comparing(row -> row.key().band().from()))
                .map(row -> of(room, chart, row, on))
                .toList();
    }

    private ConsoleCourse of(Room room, ChartVersion chart, Row row, LocalDate on) {
        return new ConsoleCourse(
                row,
                thicknesses(row).stream()
                        .map(thickness -> new ConsoleCourse.Point(
                                thickness, rules.answer(room, chart, query(row, thickness), on)))
                        .toList());
    }

    private static Query query(Row row, PartThickness thickness) {
        var examination = row.key().examination();
        return new Query(
                examination.bodyPart(),
                examination.projection(),
                examination.patientGroup(),
                thickness,
                Optional.of(examination.support()),
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    /** Within the half-open band; nobody measures nothing at all. */
    static List<PartThickness> thicknesses(Row row) {
        long from = hundredths(row.key().band().from());
        long to = hundredths(row.key().band().to());
        var found = new TreeSet<Long>();
        found.add(from);
        found.add(hundredths(row.referenceThickness()));
        LongStream.range(from / STEP + 1, Math.min(to, THICKEST + 1) / STEP + 1)
                .map(step -> step * STEP)
                .forEach(found::add);
        return found.stream()
                .filter(at -> at > 0 && at < to)
                .map(at -> new PartThickness(BigDecimal.valueOf(at, 2)))
                .toList();
    }

    private static long hundredths(PartThickness thickness) {
        return thickness.centimetres().movePointRight(2).longValueExact();
    }
}
