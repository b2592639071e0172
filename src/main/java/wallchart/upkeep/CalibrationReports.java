package wallchart.upkeep;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wallchart.equipment.Calibrations;
import wallchart.equipment.MeasuredOutput;
import wallchart.equipment.RevisionHistory;
import wallchart.equipment.RoomRevision;
import wallchart.equipment.Rooms;
import wallchart.equipment.Tube;
import wallchart.physics.BeamPhysics;
import wallchart.physics.TubeCalibration;
import wallchart.physics.TubeFit;
import wallchart.quantity.Filtration;
import wallchart.upkeep.EffectsReport.FittedFiltration;

/** Makes {@link CalibrationReport}s. Thread-safe. */
final class CalibrationReports {

    private final Rooms rooms;
    private final BeamPhysics physics;
    private final Calibrations calibrations;
    private final FittedTubes fittedTubes;

    CalibrationReports(Rooms rooms, BeamPhysics physics, Calibrations calibrations) {
        this.rooms = rooms;
        this.physics = physics;
        this.calibrations = calibrations;
        this.fittedTubes = new FittedTubes(physics, calibrations);
    }

    CalibrationReport of(RoomRevision revision) {
        var tube = revision.room().tube();
        var output = tube.output();
        return new CalibrationReport(
                revision,
                calibrations.fit(tube),
                fittedTubes.find(tube),
                halfValueLayer(tube, output, output.map(MeasuredOutput::totalFiltration)),
                halfValueLayer(tube, output, calibrations.find(tube).map(TubeCalibration::totalFiltration)),
                confirmed(revision),
                sentences(tube, confirmed(revision)));
    }

    /** What is to be said of a measured tube, and what of it was confirmed. */
    List<String> sentences(Tube tube, Collection<String> confirmed) {
        var fit = calibrations.fit(tube);
        return fit instanceof TubeFit.Uncalibrated uncalibrated
                ? List.of(uncalibrated.reason())
                : ((TubeCalibration) fit).sentences(confirmed);
    }

    Optional<FittedTube> findFitted(Tube tube) {
        return fittedTubes.find(tube);
    }

    FittedFiltration fitted(Tube before, Tube after) {
        return new FittedFiltration(fitted(before), fitted(after));
    }

    private Optional<Filtration> fitted(Tube tube) {
        return calibrations.find(tube).map(TubeCalibration::totalFiltration);
    }

    private OptionalDouble halfValueLayer(Tube tube, Optional<MeasuredOutput> output, Optional<Filtration> filtration) {
        double angle = tube.anodeAngleDegrees().doubleValue();
        var modelled = output.map(MeasuredOutput::halfValueLayerAt).flatMap(kV -> filtration
                .filter(total -> physics.findObjection(kV, angle, total).isEmpty())
                .map(total -> physics.beam(kV, angle, total).halfValueLayerMillimetresAluminium()));
        return modelled.map(OptionalDouble::of).orElseGet(OptionalDouble::empty);
    }

    /** What was said when the measurement of this revision was entered, with this revision or an earlier one that has it too. */
    List<String> confirmed(RoomRevision revision) {
        var output = revision.room().tube().output();
        return output.isEmpty()
                ? List.of()
                : rooms.history(revision.room().id()).stream()
                        .filter(line -> line.revision().number() <= revision.number())
                        .filter(line -> line.revision().room().tube().output().equals(output))
                        .map(RevisionHistory::confirmed)
                        .filter(confirmed -> !confirmed.isEmpty())
                        .reduce((earlier, later) -> later)
                        .orElse(List.of());
    }
}
