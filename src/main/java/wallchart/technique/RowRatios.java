package wallchart.technique;

import wallchart.chart.Row;
import wallchart.physics.ReceptorResponse;
import wallchart.technique.RowUse.Usable;

/**
 * What an exposure with a row does after a change of the room's equipment over what it did before, each time as the console is set.
 *
 * @param automatic whether AEC ends the exposure; then at the same signal
 * @param output of the tube, at the row's kV and with all that filters the beam
 * @param exposure of the receptor; 1 where AEC ends it
 * @param kerma entrance air kerma
 */
record RowRatios(boolean automatic, OutputShift output, double exposure, double kerma) {

    /** Where nothing but the output of the tube differs. */
    static RowRatios ofOutput(ExposureModel model, Usable then, Usable now) {
        double kV = now.set().kV().inKilovolts();
        var output = output(model, then, now, kV);
        double ratio = output.ratio();
        boolean automatic = now.set() instanceof ConsoleSetting.Automatic;
        return new RowRatios(automatic, output, automatic ? 1 : ratio, automatic ? 1 : ratio);
    }

    /** Only where the model reaches both beams. */
    static OutputShift output(ExposureModel model, Usable then, Usable now, double kV) {
        return new OutputShift(
                kV, now.how().totalFiltration(), model.outputPerMAs(then.how(), kV), model.outputPerMAs(now.how(), kV));
    }

    /** Only where the model reaches both. */
    static RowRatios of(ExposureModel model, Row row, Usable then, Usable now) {
        var response = response(then, now);
        var before = Figures.of(model, row, then, response);
        var after = Figures.of(model, row, now, response);
        double exposure = after.signal() / before.signal();
        double kerma = after.entrance() / before.entrance();
        boolean automatic = now.set() instanceof ConsoleSetting.Automatic;
        return new RowRatios(
                automatic,
                output(model, then, now, row.setting().kV().inKilovolts()),
                automatic ? 1 : exposure,
                automatic ? kerma / exposure : kerma);
    }

    /** Two receptors that are made differently, and the chambers of an AEC, are compared by air kerma. */
    private static ReceptorResponse response(Usable then, Usable now) {
        boolean alike = then.how().response() == now.how().response();
        return alike && now.set() instanceof ConsoleSetting.Manual ? now.how().response() : ReceptorResponse.AIR_KERMA;
    }

    /** Of one exposure; with AEC, for the back-up. */
    private record Figures(double signal, double entrance) {

        static Figures of(ExposureModel model, Row row, Usable use, ReceptorResponse response) {
            double kV = use.set().kV().inKilovolts();
            double mAs = use.set().mAs().inMilliampereSeconds();
            double cm = row.referenceThickness().inCentimetres();
            return new Figures(
                    model.signalPerMAs(use.how(), response, kV, cm) * mAs,
                    model.entrancePerMAs(use.how(), kV, cm) * mAs);
        }
    }
}
