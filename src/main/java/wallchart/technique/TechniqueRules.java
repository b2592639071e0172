package wallchart.technique;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallchart.chart.ChartVersion;
import wallchart.equipment.Room;
import wallchart.physics.BeamPhysics;
import wallchart.technique.ConsoleAttempt.Achieved;
import wallchart.technique.ConsoleAttempt.Impossible;
import wallchart.technique.ConsoleAttempt.Wish;
import wallchart.technique.RowSearch.Outcome;

/**
 * The rules, in their order: row, thickness, adjustments, grid, distance, kV limits, stations, mA and time, dose.
 *
 * <p>Thread-safe; one instance serves every room.
 */
public final class TechniqueRules {

    private final PhantomSignal phantom;
    private final Effects effects;
    private final DoseRule doseRule;

    /** @param levels the site's reference levels, at most one for each body part, projection and patient group */
    public TechniqueRules(BeamPhysics physics, List<ReferenceLevel> levels) {
        var model = new ExposureModel(physics);
        this.phantom = new PhantomSignal(model);
        this.effects = new Effects(phantom);
        this.doseRule = new DoseRule(model, levels);
    }

    /**
     * What to set in this room for this query.
     *
     * @param room the room as it is equipped at the instant asked
     * @param chart the version in force at the instant asked; of the same room
     * @param on the day asked, for the review date
     */
    public Answer answer(Room room, ChartVersion chart, Query query, LocalDate on) {
        if (!room.id().equals(chart.head().room())) {
            throw new IllegalArgumentException("chart of room " + chart.head().room() + " asked for room " + room.id());
        }
        var search = RowSearch.search(room, chart, query);
        return search instanceof Outcome.Found found
                ? derive(found.situation(), chart, on)
                : new Answer.Refused(((Outcome.Refused) search).refusal());
    }

    private Answer derive(Situation situation, ChartVersion chart, LocalDate on) {
        var objection = geometryObjection(situation);
        if (objection.isPresent()) {
            return new Answer.Refused(objection.get());
        }
        var applied = effects.of(situation);
        var wanted = Working.of(situation.row(), applied);
        if (wanted.kV() <= 0) {
            return new Answer.Refused(withoutVoltage(wanted));
        }
        var console = new Console(situation.room(), situation.row());
        var wish = new Wish(wanted, situation.row().setting().focalSpot());
        var attempt = console.attempt(wish);
        return attempt instanceof Achieved achieved
                ? new Answer.Found(technique(situation, chart, on, applied, wanted, achieved))
                : new Answer.Refused(notAchievable(situation, console, wish, (Impossible) attempt));
    }

    /** What no console can mend: the support cannot be used at that SID, the patient does not fit, the model ends. */
    private Optional<Refusal> geometryObjection(Situation situation) {
        var sids = situation.support().sids();
        if (!sids.allows(situation.sid())) {
            var reason = "SID " + situation.sid() + " is not possible at "
                    + situation.support().kind().slug() + " in room "
                    + situation.room().id() + ", which allows " + sids;
            var nearest = situation.at(sids.nearest(situation.sid()));
            return refuse(reason, Offer.of("SID " + nearest.sid(), nearest));
        }
        if (situation.focusSkinCentimetres() <= 0) {
            var reason = "SID " + situation.sid() + " leaves no room for " + situation.thickness()
                    + " and a receptor gap of " + situation.support().receptorGap();
            return refuse(reason, Offer.words("a longer SID"));
        }
        if (!phantom.reaches(situation)) {
            var reason = "the attenuation model does not reach "
                    + situation.row().setting().kV() + " behind " + situation.thickness();
            return refuse(reason, Offer.words("a row with another thickness method: propose a change"));
        }
        return Optional.empty();
    }

    private static Optional<Refusal> refuse(String reason, Offer offer) {
        return Optional.of(Refusal.notAchievable(reason + ": " + offer.text(), List.of(reason), List.of(offer)));
    }

    private static Refusal withoutVoltage(Working wanted) {
        var reason = "the rules arrive at " + Words.number(wanted.kV()) + " kV";
        return Refusal.notAchievable(
                reason + ": check the row", List.of(reason), List.of(Offer.words("propose a change")));
    }

    private Refusal notAchievable(Situation situation, Console console, Wish wish, Impossible attempt) {
        var offers = new Alternatives(console, situation, moved -> Working.of(moved.row(), effects.of(moved))).of(wish);
        return Refusal.notAchievable(
                String.join("; ", attempt.reasons()) + ". What would do: "
                        + offers.stream().map(Offer::text).collect(Collectors.joining("; ")),
                attempt.reasons(),
                offers);
    }

    private Technique technique(
            Situation situation,
            ChartVersion chart,
            LocalDate on,
            List<Effect> applied,
            Working wanted,
            Achieved achieved) {
        var dose = doseRule.estimate(situation, achieved.set());
        var set = achieved.set();
        return new Technique(
                chart.head(),
                situation,
                achieved.limited(),
                set,
                achieved.roundingDeviation(),
                situation.room().generator().waveform().heatUnits(set.kV(), set.mAs()),
                new Derivation(situation).steps(applied, wanted, achieved, dose),
                dose,
                Cautions.of(situation, wanted, achieved, dose, chart.head(), on));
    }
}
