package wallchart.upkeep;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallchart.chart.ChartVersion;
import wallchart.chart.Charts;
import wallchart.equipment.Calibrations;
import wallchart.equipment.Room;
import wallchart.equipment.RoomRevision;
import wallchart.equipment.Rooms;
import wallchart.physics.BeamPhysics;
import wallchart.store.Actor;
import wallchart.technique.EquipmentEffects;
import wallchart.technique.ExposureModel;
import wallchart.technique.GridShift;
import wallchart.technique.OutputWatch;
import wallchart.upkeep.Drafting.Sound;
import wallchart.upkeep.Drafting.Unsound;
import wallchart.upkeep.EffectsReport.OfVersion;
import wallchart.upkeep.EffectsReport.SinceSigning;
import wallchart.upkeep.EquipmentOutcome.Entered;
import wallchart.upkeep.EquipmentOutcome.Possible;
import wallchart.upkeep.EquipmentOutcome.Stale;

/**
 * Where the medical physicist enters a room's equipment and measurements, and sees what they do to its charts. Safe for many threads.
 * What is entered is one transaction with its event, and cannot be called inside another.
 */
public final class EquipmentDesk {

    /** Where a day begins first: whoever measured this morning did not measure tomorrow, wherever the department lies. */
    private static final ZoneOffset FIRST_TO_SEE_A_DAY = ZoneOffset.ofHours(14);

    private final Rooms rooms;
    private final Charts charts;
    private final Drafting drafting;
    private final CalibrationReports calibrations;
    private final EquipmentEffects effects;
    private final Clock clock;

    /** The desk of these rooms and charts, with the beam model that the answers use. */
    public EquipmentDesk(Rooms rooms, Charts charts, BeamPhysics physics, Clock clock) {
        this(rooms, charts, physics, new Calibrations(physics), clock);
    }

    private EquipmentDesk(Rooms rooms, Charts charts, BeamPhysics physics, Calibrations calibrations, Clock clock) {
        this(rooms, charts, physics, calibrations, new EquipmentEffects(new ExposureModel(physics)), clock);
    }

    private EquipmentDesk(
            Rooms rooms,
            Charts charts,
            BeamPhysics physics,
            Calibrations calibrations,
            EquipmentEffects effects,
            Clock clock) {
        this(
                rooms,
                charts,
                new Drafting(
                        rooms, new MeasurementChecks(calibrations, new FittedTubes(physics, calibrations), effects)),
                new CalibrationReports(rooms, physics, calibrations),
                effects,
                clock);
    }

    private EquipmentDesk(
            Rooms rooms,
            Charts charts,
            Drafting drafting,
            CalibrationReports calibrations,
            EquipmentEffects effects,
            Clock clock) {
        this.rooms = rooms;
        this.charts = charts;
        this.drafting = drafting;
        this.calibrations = calibrations;
        this.effects = effects;
        this.clock = clock;
    }

    /** The same desk at the instants of another clock: for a history that is told afterwards. */
    public EquipmentDesk at(Clock other) {
        return new EquipmentDesk(rooms.at(other), charts, drafting, calibrations, effects, other);
    }

    /**
     * Puts what is entered in force from now on, in place of a revision that its author saw; what equals that one changes nothing.
     *
     * @param room id of a room that has equipment
     */
    public EquipmentOutcome enter(Actor by, String room, int seen, EquipmentEntry entry) {
        var base = newest(room);
        if (base.number() != seen) {
            return new Stale(base);
        }
        var draft = drafting.draft(base, entry, true, today());
        return draft instanceof Sound sound ? enter(by, base, sound, entry) : ((Unsound) draft).why();
    }

    private EquipmentOutcome enter(Actor by, RoomRevision base, Sound sound, EquipmentEntry entry) {
        var report = report(base, sound, entry);
        if (sound.document().canonical().digest().equals(base.digest())) {
            return new Entered(base, base, report);
        }
        var known = EntryDetails.of(base, sound, entry, report);
        return rooms.replace(by, base.number(), sound.document(), entry.reason(), known)
                .<EquipmentOutcome>map(revision -> new Entered(base, revision, report))
                .orElseGet(() -> new Stale(newest(base.room().id())));
    }

    /** What entering it now would do; writes nothing, and asks for no reason. */
    public EquipmentOutcome tryOut(String room, EquipmentEntry entry) {
        var base = newest(room);
        var draft = drafting.draft(base, entry, false, today());
        return draft instanceof Sound sound ? new Possible(base, report(base, sound, entry)) : ((Unsound) draft).why();
    }

    /**
     * What a revision did to the charts that answered when it came into force, or were signed by then to answer later; empty where
     * there was no revision before it.
     */
    public Optional<EffectsReport> effects(RoomRevision revision) {
        return rooms.revisions(revision.room().id()).stream()
                .filter(other -> other.number() == revision.number() - 1)
                .findFirst()
                .map(before -> report(
                        before.room(), revision.room(), calibrations.confirmed(revision), revision.inForceFrom()));
    }

    /** How the beam model fits the tube of a revision. */
    public CalibrationReport calibration(RoomRevision revision) {
        return calibrations.of(revision);
    }

    private EffectsReport report(RoomRevision base, Sound sound, EquipmentEntry entry) {
        var confirmed = sound.measured() ? entry.confirmed() : calibrations.confirmed(base);
        return report(base.room(), sound.room(), confirmed, clock.instant());
    }

    private EffectsReport report(Room before, Room after, List<String> confirmed, Instant at) {
        var answering = AnsweringVersions.at(charts, before.id(), at).stream()
                .map(version -> ofVersion(version, before, after))
                .toList();
        return new EffectsReport(
                effects.outputs(before, after),
                GridShift.between(before, after),
                answering,
                calibrations.fitted(before.tube(), after.tube()),
                sentences(before, after, confirmed),
                calibrations.findFitted(after.tube()));
    }

    private List<String> sentences(Room before, Room after, List<String> confirmed) {
        var step = OutputStep.find(effects, before, after)
                .map(question ->
                        confirmed.contains(question.code()) ? question.confirmedSentence() : question.sentence());
        return Stream.concat(step.stream(), calibrations.sentences(after.tube(), confirmed).stream())
                .toList();
    }

    private OfVersion ofVersion(ChartVersion version, Room before, Room after) {
        var ofLast = effects.of(version.content(), before, after);
        var signed = OutputWatch.atSigning(version, rooms.revisions(before.id()));
        var then = signed.room();
        var ofAll = then.equals(before) ? ofLast : effects.of(version.content(), then, after);
        var sinceSigning = new SinceSigning(signed.number(), effects.outputs(then, after), ofAll);
        return new OfVersion(version.head(), ofLast, sinceSigning);
    }

    private RoomRevision newest(String room) {
        var revisions = rooms.revisions(room);
        return revisions.get(revisions.size() - 1);
    }

    private LocalDate today() {
        return LocalDate.ofInstant(clock.instant(), FIRST_TO_SEE_A_DAY);
    }
}
