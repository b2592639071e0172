package wallchart.physics;

import static wallchart.physics.TungstenConstants.*;

/**
 * The target of one tube at one tube voltage: what it emits before any filter.
 *
 * <p>Tucker, Barnes and Chakraborty, Medical Physics 18:211 (1991): electrons slow down in the tungsten, radiate on the way, and
 * the tungsten above them absorbs part of it; K lines come on top. Constant potential, no heel effect, no tube window.
 */
final class TungstenTarget {

    /** Places within an energy bin, as shares of its width, at which the continuous spectrum is averaged. */
    private static final double[] WITHIN_BIN = {1 / 6.0, 3 / 6.0, 5 / 6.0};

    private final double kilovolts;
    private final double sineOfAnode;
    private final double thomsonWhiddington;
    private final PerEnergy massAttenuation;

    /** @param massAttenuation of tungsten, cm2/g */
    TungstenTarget(double kilovolts, double anodeAngleDegrees, PerEnergy massAttenuation) {
        this.kilovolts = kilovolts;
        this.sineOfAnode = Math.sin(Math.toRadians(anodeAngleDegrees));
        this.thomsonWhiddington =
                THOMSON_WHIDDINGTON_SCALE * THOMSON_WHIDDINGTON_KV.interpolate(kilovolts, THOMSON_WHIDDINGTON);
        this.massAttenuation = massAttenuation;
    }

    /** Photons per cm2 and mAs in each bin at one metre in vacuum. */
    PerEnergy fluenceAtOneMetre() {
        double perMAs = OUTPUT_SCALE
                * Math.pow(kilovolts / OUTPUT_REFERENCE_KV, OUTPUT_EXPONENT)
                * ELECTRONS_PER_MAS
                / SPHERE_OF_ONE_METRE;
        var lines = kLines();
        return PerEnergy.of(bin -> perMAs * (continuous(bin) + lines[bin]));
    }

    /** Photons per electron in the bin from slowing down. The topmost bin ends at the tube voltage. */
    private double continuous(int bin) {
        double from = EnergyBins.energyOf(bin) - 0.5;
        double width = Math.min(1, kilovolts - from);
        if (width <= 0) {
            return 0;
        }
        double sum = 0;
        for (double place : WITHIN_BIN) {
            sum += photonsPerElectronAndKev(from + width * place, massAttenuation.at(bin));
        }
        return sum / WITHIN_BIN.length * width;
    }

    private double photonsPerElectronAndKev(double photon, double attenuation) {
        return YIELD
                / photon
                * GaussLegendre.integrate(photon, kilovolts, electron -> emitted(photon, electron, attenuation));
    }

    private double emitted(double photon, double electron, double attenuation) {
        double stopping = S_A + S_B * Math.exp(-S_C * electron);
        double depth = (kilovolts * kilovolts - electron * electron) / thomsonWhiddington;
        double escape = Math.exp(-attenuation * depth / sineOfAnode);
        return photonYield(photon / electron) * (electron + ELECTRON_REST_ENERGY) / electron * escape / stopping;
    }

    private double photonYield(double r) {
        double shape = B[0] + r * (B[1] + r * (B[2] + r * (B[3] + r * B[4])));
        return (A0 + A1 * kilovolts) * shape;
    }

    /** Photons per electron in each bin from the K lines. */
    private double[] kLines() {
        var lines = new double[EnergyBins.COUNT];
        if (kilovolts > K_EDGE) {
            for (int line = 0; line < K_ENERGIES.length; line++) {
                lines[EnergyBins.binOf((int) Math.round(K_ENERGIES[line]))] += kLine(line);
            }
        }
        return lines;
    }

    /** The K photons are born down to the depth at which the electrons fall below the K edge, most of them near the surface. */
    private double kLine(int line) {
        double range = (kilovolts * kilovolts - K_EDGE * K_EDGE) / thomsonWhiddington;
        double absorption = attenuationBelowEdge(K_ENERGIES[line]) * range / sineOfAnode;
        double escape = GaussLegendre.integrate(0, 1, x -> 1.5 * (1 - x * x) * Math.exp(-absorption * x));
        return K_YIELD * Math.pow(kilovolts / K_EDGE - 1, K_EXPONENT) * K_SHARES[line] * escape;
    }

    /** Log-log between whole keV; held above the last of them below the K edge, across which nothing may be interpolated. */
    private double attenuationBelowEdge(double energy) {
        if (energy >= LAST_KEV_BELOW_K_EDGE) {
            return massAttenuation.at(EnergyBins.binOf(LAST_KEV_BELOW_K_EDGE));
        }
        int below = (int) energy;
        double fraction = Math.log(energy / below) / Math.log((below + 1.0) / below);
        double start = Math.log(massAttenuation.at(EnergyBins.binOf(below)));
        double end = Math.log(massAttenuation.at(EnergyBins.binOf(below + 1)));
        return Math.exp(Axis.between(start, end, fraction));
    }
}
