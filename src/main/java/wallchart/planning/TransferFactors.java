package wallchart.planning;

import java.util.List;
import java.util.Optional;
import wallchart.equipment.Grid;
import wallchart.physics.ReceptorResponse;
import wallchart.quantity.Decimals;
import wallchart.technique.Arrangement;
import wallchart.technique.ExposureModel;

/**
 * The factors between the mAs of a row in its own room and in another, at one thickness: one thing is exchanged after the other, so
 * their product is the ratio of the receptor signals in both rooms, each against its target.
 *
 * <p>Receptors of one modelled response are compared by it, others by the air kerma that reaches them, which is what an exposure index
 * is calibrated to (IEC 62494-1:2008: EI = 100 x K_CAL in uGy at RQA 5).
 *
 * @param before the row in its own room
 * @param after the row in the other room
 * @param kV of the row
 * @param set tube voltage that the other room's console is set to
 * @param targetBefore target exposure index in the room the row comes from
 * @param targetAfter in the other
 */
record TransferFactors(
        Models models,
        Arrangement before,
        Arrangement after,
        double kV,
        double set,
        int targetBefore,
        int targetAfter) {

    /** Why there are none behind so many cm; empty where there are. */
    Optional<String> findObjection(double thickness) {
        return model().findObjection(before, kV, thickness)
                .or(() -> model().findObjection(after, kV, thickness))
                .or(() -> model().findObjection(after, set, thickness));
    }

    /** All of them, in order, behind so many cm. */
    List<Factor> all(double thickness) {
        var tube = withTube();
        double own = signal(before, kV, thickness);
        double behindTube = signal(tube, kV, thickness);
        double behindGrid = signal(tube.with(after.grid()), kV, thickness);
        double there = signal(after, kV, thickness);
        double outputBefore = model().outputPerMAs(before, kV);
        double outputAfter = model().outputPerMAs(after, kV);
        return List.of(
                new Factor("output", outputBefore / outputAfter, outputWords(outputBefore, outputAfter)),
                new Factor("beam", own / outputBefore * outputAfter / behindTube, beamWords()),
                new Factor("grid", behindTube / behindGrid, gridWords()),
                new Factor("distance", behindGrid / there, distanceWords()),
                new Factor("target", (double) targetAfter / targetBefore, targetWords()),
                new Factor("voltage", there / signal(after, set, thickness), voltageWords()));
    }

    private ExposureModel model() {
        return models.exposure();
    }

    private double signal(Arrangement how, double kilovolts, double thickness) {
        return model().signalPerMAs(how, response(), kilovolts, thickness);
    }

    /** Of receptors that are modelled alike their own response, else air kerma. */
    private ReceptorResponse response() {
        return before.response() == after.response() ? before.response() : ReceptorResponse.AIR_KERMA;
    }

    /** The other room's tube with everything behind it as in the row's own room. */
    private Arrangement withTube() {
        return new Arrangement(
                after.room(),
                after.support(),
                after.receptor(),
                before.grid(),
                after.added(),
                before.field(),
                before.sid());
    }

    private String outputWords(double outputBefore, double outputAfter) {
        return Figures.number(outputBefore) + " uGy/mAs at 1 m (" + model().outputSource(before, kV) + ") over "
                + Figures.number(outputAfter) + " (" + model().outputSource(after, kV) + "), at " + Figures.number(kV)
                + " kV";
    }

    private String beamWords() {
        return "signal behind the patient for each uGy in front: of a beam of " + beam(before) + " over that of "
                + beam(after);
    }

    private String beam(Arrangement how) {
        var tube = how.room().tube();
        boolean fitted = models.calibrations().find(tube).isPresent();
        var filtration = fitted
                ? model().inBeam(how) + " fitted to the measured half-value layer (" + how.totalFiltration()
                        + " on paper)"
                : how.totalFiltration() + " on paper, not fitted";
        return filtration + ", anode " + Decimals.plain(tube.anodeAngleDegrees()) + " degrees";
    }

    boolean kindsDiffer() {
        return before.receptor().kind() != after.receptor().kind();
    }

    private String targetWords() {
        return "target exposure index from " + targetBefore + " to " + targetAfter
                + (kindsDiffer() ? ", receptors of different kinds: prove it on a phantom" : "");
    }

    /** What the grids' own factors, which answers use, make of the exchange. */
    double gridByOwnFactors() {
        return factor(after) / factor(before);
    }

    /** What the model makes of it behind so many cm. */
    double gridByModel(double thickness) {
        var tube = withTube();
        return signal(tube, kV, thickness) / signal(tube.with(after.grid()), kV, thickness);
    }

    private String gridWords() {
        var words = name(after) + " for " + name(before) + ", modelled";
        return before.grid().equals(after.grid())
                ? words
                : words + " (the grids' own factors: x " + Figures.number(gridByOwnFactors()) + ")";
    }

    private static String name(Arrangement how) {
        return how.grid()
                .map(grid -> "grid " + grid.id() + " " + Decimals.plain(grid.ratio()) + ":1")
                .orElse("no grid");
    }

    private double factor(Arrangement how) {
        return how.grid().map((Grid grid) -> grid.factorAt(kV)).orElse(1.0);
    }

    private String distanceWords() {
        return "SID " + after.sid() + " instead of " + before.sid() + ", inverse square";
    }

    private String voltageWords() {
        return "kV station " + Figures.number(set) + " kV instead of " + Figures.number(kV) + " kV, modelled";
    }
}
