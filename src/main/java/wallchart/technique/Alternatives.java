package wallchart.technique;

import java.math.BigDecimal;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wallchart.equipment.AllowedDistances;
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

    List<Offer> of(Wish wish) {
        var offers = Stream.of(
                        asInRow(wish), largeFocalSpot(wish), moreVoltage(wish), lessVoltage(wish), otherDistance(wish))
                .flatMap(Optional::stream)
                .toList();
        return offers.isEmpty()
                ? List.of(Offer.words("another room or technique, by judgement and local rules"))
                : offers;
    }

    /** The row's own grid and distance, where the question asked for others. */
    private Optional<Offer> asInRow(Wish wish) {
        var own = situation.asInRow();
        return own.equals(situation)
                ? Optional.empty()
                : tried(
                                "grid " + own.gridName() + " and SID " + own.sid() + " as in the row",
                                new Wish(derive.apply(own), wish.focalSpot()))
                        .map(text -> Offer.of(text, own));
    }

    private Optional<Offer> largeFocalSpot(Wish wish) {
        return wish.focalSpot() == FocalSpotName.LARGE
                ? Optional.empty()
                : tried("large focal spot", new Wish(wish.exact(), FocalSpotName.LARGE))
                        .map(Offer::words);
    }

    private Optional<Offer> moreVoltage(Wish wish) {
        return otherVoltage("15 % more kV with half mAs", wish, wish.exact().kV() * FIFTEEN_PERCENT);
    }

    private Optional<Offer> lessVoltage(Wish wish) {
        return otherVoltage(
                "15 % less kV (divided by 1.15) with double mAs",
                wish, wish.exact().kV() / FIFTEEN_PERCENT);
    }

    private Optional<Offer> otherVoltage(String words, Wish wish, double kV) {
        if (kV < console.lowestKilovolts() || kV > console.highestKilovolts()) {
            return Optional.empty();
        }
        double mAs = wish.exact().mAs()
                * ExposureArithmetic.voltageFactor(wish.exact().kV(), kV);
        return tried(words, new Wish(new Working(kV, mAs), wish.focalSpot())).map(Offer::words);
    }

    /** The nearest distance that would do, shorter or longer. */
    private Optional<Offer> otherDistance(Wish wish) {
        return otherDistances()
                .map(situation::at)
                .filter(Alternatives::possible)
                .map(moved -> tried("SID " + moved.sid(), new Wish(derive.apply(moved), wish.focalSpot()))
                        .map(text -> Offer.of(text, moved)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    /** The support's stops, or steps of 5 cm either way; the nearest first. */
    private Stream<Distance> otherDistances() {
        var here = situation.sid().centimetres();
        if (situation.support().sids() instanceof AllowedDistances.Stops fixed) {
            return fixed.stops().stream()
                    .filter(stop -> !stop.equals(situation.sid()))
                    .sorted(Comparator.comparing(
                            stop -> stop.centimetres().subtract(here).abs()));
        }
        return IntStream.rangeClosed(1, MOST_SID_STEPS)
                .mapToObj(step -> BigDecimal.valueOf((long) step * SID_STEP_CM))
                .flatMap(change -> Stream.of(here.subtract(change), here.add(change)))
                .filter(sid -> sid.signum() > 0)
                .map(Distance::new);
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
