package wallchart.technique;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wallchart.equipment.FocalSpotName;
import wallchart.quantity.Distance;
import wallchart.technique.ConsoleAttempt.Achieved;
import wallchart.technique.ConsoleAttempt.Wish;

/**
 * What would do where a technique cannot be set. Each alternative is tried on the console before it is offered; it is an offer to
 * the operator's judgement, never an order.
 */
final class Alternatives {

    private static final double FIFTEEN_PERCENT = 1.15;
    private static final int SID_STEP_CM = 5;
    private static final int MOST_SID_STEPS = 60;

    private final Console console;
    private final Situation situation;
    private final Function<Situation, Working> derive;

    /** @param derive works out the exact technique of a situation, rules 2 to 5 */
    Alternatives(Console console, Situation situation, Function<Situation, Working> derive) {
        this.console = console;
        this.situation = situation;
        this.derive = derive;
    }

    List<String> of(Wish wish, boolean tooLittle) {
        var offers = new ArrayList<String>();
        largeFocalSpot(wish).ifPresent(offers::add);
        otherVoltage(wish, tooLittle).ifPresent(offers::add);
        otherDistance(wish, tooLittle).ifPresent(offers::add);
        if (offers.isEmpty()) {
            offers.add("another room or technique, by judgement and local rules");
        }
        return List.copyOf(offers);
    }

    private Optional<String> largeFocalSpot(Wish wish) {
        return wish.focalSpot() == FocalSpotName.LARGE
                ? Optional.empty()
                : tried("large focal spot", new Wish(wish.exact(), FocalSpotName.LARGE));
    }

    private Optional<String> otherVoltage(Wish wish, boolean tooLittle) {
        double kV =
                tooLittle ? wish.exact().kV() / FIFTEEN_PERCENT : wish.exact().kV() * FIFTEEN_PERCENT;
        if (kV < console.lowestKilovolts() || kV > console.highestKilovolts()) {
            return Optional.empty();
        }
        double mAs = wish.exact().mAs()
                * ExposureArithmetic.voltageFactor(wish.exact().kV(), kV);
        var words = tooLittle ? "15 % less kV (divided by 1.15) with double mAs" : "15 % more kV with half mAs";
        return tried(words, new Wish(new Working(kV, mAs), wish.focalSpot()));
    }

    private Optional<String> otherDistance(Wish wish, boolean tooLittle) {
        var step = Distance.centimetres(SID_STEP_CM).centimetres();
        for (int i = 1; i <= MOST_SID_STEPS; i++) {
            var change = step.multiply(BigDecimal.valueOf(i));
            var sid = tooLittle
                    ? situation.sid().centimetres().add(change)
                    : situation.sid().centimetres().subtract(change);
            if (sid.signum() <= 0) {
                return Optional.empty();
            }
            var moved = situation.at(new Distance(sid));
            if (!possible(moved)) {
                continue;
            }
            var offer = tried("SID " + moved.sid(), new Wish(derive.apply(moved), wish.focalSpot()));
            if (offer.isPresent()) {
                return offer;
            }
        }
        return Optional.empty();
    }

    private static boolean possible(Situation moved) {
        boolean inFocus = moved.grid()
                .flatMap(grid -> grid.focalRange())
                .map(range -> range.contains(moved.sid()))
                .orElse(true);
        return moved.support().sids().allows(moved.sid())
                && inFocus
                && moved.focusSkinCentimetres() >= Cautions.SHORT_FOCUS_SKIN_CM;
    }

    private Optional<String> tried(String words, Wish wish) {
        return console.attempt(wish) instanceof Achieved achieved
                ? Optional.of(words + ": " + setting(achieved.set()))
                : Optional.empty();
    }

    private static String setting(ConsoleSetting set) {
        if (set instanceof ConsoleSetting.Manual manual) {
            return manual.kV() + ", " + manual.mAs() + " (" + manual.mA() + ", " + manual.time() + ")";
        }
        return set.kV() + ", back-up " + set.mAs();
    }
}
