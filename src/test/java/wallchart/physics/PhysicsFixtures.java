package wallchart.physics;

import java.util.List;
import java.util.stream.IntStream;
import wallchart.quantity.FieldSize;
import wallchart.quantity.Filtration;
import wallchart.quantity.TubeVoltage;

/** Beams, fields and tables that the checks of this package share; all immutable. */
final class PhysicsFixtures {

    static final BeamPhysics PHYSICS = BeamPhysics.load();
    static final double ANODE = 12;
    static final Filtration THREE_MILLIMETRES = Filtration.aluminium("3");
    static final FieldSize THIRTY_BY_THIRTY = FieldSize.parse("30x30");

    private PhysicsFixtures() {}

    static Beam aBeam(double kilovolts) {
        return aBeam(kilovolts, THREE_MILLIMETRES);
    }

    static Beam aBeam(double kilovolts, Filtration total) {
        return PHYSICS.beam(TubeVoltage.kilovolts(Double.toString(kilovolts)), ANODE, total);
    }

    static ReceptorSignal aSignal(GridModel grid, ReceptorResponse response) {
        return PHYSICS.receptorSignal(ANODE, THREE_MILLIMETRES, grid, THIRTY_BY_THIRTY, response);
    }

    /** The direct sum behind the table of {@link #aSignal}. */
    static double directSum(GridModel grid, ReceptorResponse response, double kilovolts, double centimetres) {
        double equalAreaRadius = 30 / Math.sqrt(Math.PI);
        return new ReceptorSum(PHYSICS.tables(), THREE_MILLIMETRES, grid, equalAreaRadius, response)
                .perMAs(PHYSICS.fluence(kilovolts, ANODE), centimetres);
    }

    static double relativeError(double actual, double expected) {
        return Math.abs(actual / expected - 1);
    }

    /** The rows of a table on the test class path, each of them askable by column. */
    static List<Row> rows(String table) {
        var read = ResourceTable.read(table);
        return IntStream.range(0, read.size())
                .mapToObj(index -> new Row(read, index))
                .toList();
    }

    record Row(ResourceTable table, int index) {
        double number(String column) {
            return Double.parseDouble(text(column));
        }

        String text(String column) {
            return table.texts(column).get(index);
        }
    }
}
